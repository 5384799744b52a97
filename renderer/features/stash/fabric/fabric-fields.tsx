import type { FabricDetails, PrintDirection } from '#core/domain/stash';
import { lengthFromInches, lengthFromUnits, UNITS_PER_METER } from '#core/units/length';
import { PlaceField } from '#renderer/features/stash/place-field';
import styles from '#renderer/features/stash/stash.module.css';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Choice } from '#renderer/ui/fields/choice';
import { LengthField } from '#renderer/ui/fields/length-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { ColorField } from './color-field';

const DIRECTIONS: readonly { readonly value: PrintDirection; readonly words: string }[] = [
  { value: 'any', words: 'No direction' },
  { value: 'one-way', words: 'One way up' },
  { value: 'two-way', words: 'Up and down alike' },
];

/** Ten meters, as the store takes it. */
const WIDEST_FABRIC = lengthFromUnits(10 * UNITS_PER_METER);

const FIBERS = ['cotton', 'linen', 'wool', 'cotton and linen', 'bamboo', 'polyester'];

interface FabricFieldsProps {
  readonly details: FabricDetails;
  readonly onChange: (details: FabricDetails) => void;
}

/** By what a fabric is known: its name and its looks. */
export function LooksFields({ details, onChange }: FabricFieldsProps) {
  const text = textProps({ details, onChange });
  return (
    <div className={styles['fields']}>
      <div className={styles['whole']}>
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
      <div className={styles['whole']}>
        <Choice
          label="Which way the print runs"
          value={details.direction}
          options={DIRECTIONS}
          onChange={(direction) => onChange({ ...details, direction })}
        />
      </div>
    </div>
  );
}

/** What else is worth knowing of a fabric. */
export function MoreFields({ details, onChange }: FabricFieldsProps) {
  const text = textProps({ details, onChange });
  return (
    <div className={styles['fields']}>
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
          label="It has been washed"
          isChecked={details.isWashed}
          onChange={(isWashed) => onChange({ ...details, isWashed })}
        />
      </div>
      <PlaceField
        label="Where it lies"
        value={details.place}
        onChange={(place) => onChange({ ...details, place })}
      />
      <TextField label="From whom" {...text('supplier')} />
      <div className={styles['whole']}>
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

/** What the short texts of a fabric share. */
function textProps({ details, onChange }: FabricFieldsProps) {
  return (name: 'print' | 'colorWords' | 'fiber' | 'supplier') => ({
    value: details[name],
    maximum: 120,
    isOptional: true,
    onChange: (words: string) => onChange({ ...details, [name]: words }),
  });
}
