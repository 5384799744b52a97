import { type FabricDetails, printDirectionSchema } from '#core/domain/stash';
import { lengthFromMeters, lengthFromInches } from '#core/units/length';
import { PlaceField } from '#renderer/features/stash/place-field';
import { DIRECTION_WORDS } from '#renderer/features/stash/direction-words';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Choice } from '#renderer/ui/fields/choice';
import { LengthField } from '#renderer/ui/fields/length-field';
import { TextField } from '#renderer/ui/fields/text-field';
import layout from '#renderer/ui/page/layout.module.css';
import { ColorField } from './color-field';
import styles from './fabric-form.module.css';

const DIRECTIONS = printDirectionSchema.options.map((value) => ({ value, words: DIRECTION_WORDS[value] }));

/** Ten meters, the limit of the contract. */
const WIDEST_FABRIC = lengthFromMeters(10);

const FIBERS = ['cotton', 'linen', 'wool', 'cotton and linen', 'bamboo', 'polyester'];

interface FabricFieldsProps {
  readonly details: FabricDetails;
  readonly onChange: (details: FabricDetails) => void;
}

/** The fields for the name and the looks of a fabric. */
export function LooksFields({ details, onChange }: FabricFieldsProps) {
  const text = textProps({ details, onChange });
  return (
    <div className={layout['fields']}>
      <div className={layout['whole']}>
        <TextField
          label="Name"
          value={details.name}
          maximum={120}
          autoFocus
          emptyProblem="Give the fabric a name, such as Rust leaves."
          onChange={(name) => onChange({ ...details, name })}
        />
      </div>
      <TextField label="Color in words" placeholder="rust, warm brown" {...text('colorWords')} />
      <TextField label="Print" placeholder="small leaves" {...text('print')} />
      <ColorField
        label="Color in drawings"
        value={details.swatch}
        onChange={(swatch) => onChange({ ...details, swatch })}
      />
      <div className={layout['whole']}>
        <Choice
          label="Print direction"
          value={details.direction}
          options={DIRECTIONS}
          onChange={(direction) => onChange({ ...details, direction })}
        />
      </div>
    </div>
  );
}

/** The fields for all other details of a fabric. */
export function MoreFields({ details, onChange }: FabricFieldsProps) {
  const text = textProps({ details, onChange });
  return (
    <div className={layout['fields']}>
      <LengthField
        label="Usable width"
        help="Between the selvages."
        value={details.width}
        minimum={lengthFromInches(1)}
        maximum={WIDEST_FABRIC}
        onCommit={(width) => width !== null && onChange({ ...details, width })}
      />
      <TextField label="Fiber" suggestions={FIBERS} {...text('fiber')} />
      <div className={styles['tickBeside']}>
        <Checkbox
          label="Washed"
          isChecked={details.isWashed}
          onChange={(isWashed) => onChange({ ...details, isWashed })}
        />
      </div>
      <PlaceField
        label="Stored in"
        value={details.place}
        onChange={(place) => onChange({ ...details, place })}
      />
      <TextField label="Shop" {...text('supplier')} />
      <div className={layout['whole']}>
        <TextField
          label="Notes"
          isOptional
          isLong
          value={details.notes}
          maximum={5_000}
          onChange={(notes) => onChange({ ...details, notes })}
        />
      </div>
    </div>
  );
}

/** The properties that the short text fields share. */
function textProps({ details, onChange }: FabricFieldsProps) {
  return (name: 'print' | 'colorWords' | 'fiber' | 'supplier') => ({
    value: details[name],
    maximum: 120,
    isOptional: true,
    onChange: (words: string) => onChange({ ...details, [name]: words }),
  });
}
