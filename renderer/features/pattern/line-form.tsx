import type { ListLine, ListPatch } from '#core/cutting-list/list-reading';
import { writeListLine } from '#core/cutting-list/write-line';
import type { Length } from '#core/units/length';
import { useFabricNames } from '#renderer/shared/fabric-names';
import { useDisplay } from '#renderer/ui/base/display';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Select } from '#renderer/ui/fields/choice';
import { LengthField } from '#renderer/ui/fields/length-field';
import { NumberField } from '#renderer/ui/fields/number-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface LineFormProps {
  readonly name: string;
  readonly line: ListLine;
  readonly roles: readonly string[];
  /** With the line, or the lines, that say what was entered. */
  readonly onSave: (text: string) => void;
  readonly onClose: () => void;
}

type CutAs = 'patch' | 'once' | 'twice' | 'strip';

interface Entered {
  readonly fabric: string;
  readonly cutAs: CutAs;
  readonly width: Length | null;
  readonly length: Length | null;
  readonly count: number | null;
}

const CUT_AS: readonly { readonly value: CutAs; readonly words: string }[] = [
  { value: 'patch', words: 'Squares or rectangles' },
  { value: 'once', words: 'Cut once on the diagonal' },
  { value: 'twice', words: 'Squares cut twice on the diagonal' },
  { value: 'strip', words: 'Strips across the fabric' },
];

/** The patches of one line as fields. What is saved takes the place of the line in the text. */
export function LineForm({ name, line, roles, onSave, onClose }: LineFormProps) {
  const draft = useFormDraft(`pattern-line ${name} ${line.text.slice(0, 60)}`);
  const [first, ...others] = line.patches;
  const [entered, setEntered] = useDraftValue(draft, 'line', enteredOf(first, line.role));
  const inStash = useFabricNames(entered.fabric);
  const { length: display } = useDisplay();
  const change = (part: Partial<Entered>) => setEntered((before) => ({ ...before, ...part }));
  const save = () => {
    const patch = patchOf(entered);
    if (patch === null) return;
    draft.forget();
    onSave([patch, ...others].map((one) => writeListLine({ ...one, block: line.block }, display)).join('\n'));
    onClose();
  };
  return (
    <DialogForm
      draft={draft}
      title="Mend this line"
      verb="Put it in place of the line"
      onSave={save}
      onClose={onClose}
      className={layout['pair']}
      before={<p className={layout['notes']}>{line.text.trim()}</p>}
    >
      <div className={layout['whole']}>
        <TextField
          label="Fabric"
          value={entered.fabric}
          maximum={120}
          suggestions={[...new Set([...roles, ...inStash])]}
          emptyProblem="Enter the fabric they are cut from."
          onChange={(fabric) => change({ fabric })}
        />
      </div>
      <div className={layout['whole']}>
        <Select
          label="What is cut"
          value={entered.cutAs}
          options={CUT_AS}
          onChange={(cutAs) => change({ cutAs })}
        />
      </div>
      <LengthField
        label="Width"
        help="Cut size, seam allowance included."
        value={entered.width}
        onCommit={(width) => change({ width })}
      />
      {entered.cutAs !== 'strip' && (
        <LengthField label="Length" value={entered.length} onCommit={(length) => change({ length })} />
      )}
      <NumberField
        label="How many to cut, in all"
        value={entered.count}
        minimum={1}
        maximum={100_000}
        isWhole
        onCommit={(count) => change({ count })}
      />
      {others.length > 0 && (
        <p className={layout['quiet']}>The other patches of this line stay, each on a line of its own.</p>
      )}
    </DialogForm>
  );
}

function enteredOf(patch: ListPatch | undefined, role: string | null): Entered {
  if (patch === undefined)
    return { fabric: role ?? '', cutAs: 'patch', width: null, length: null, count: null };
  const { shape, width, length, cut } = patch;
  const isTwice = shape === 'quarter-square-triangle';
  const isOnce = shape === 'half-square-triangle' || shape === 'half-rectangle-triangle';
  const cutAs = shape === 'strip' ? 'strip' : isTwice ? 'twice' : isOnce ? 'once' : 'patch';
  return { fabric: patch.role ?? role ?? '', cutAs, width, length, count: cut };
}

function patchOf({ fabric, cutAs, width, length, count }: Entered) {
  if (width === null || count === null || (length === null && cutAs !== 'strip')) return null;
  const role = fabric.trim();
  if (cutAs === 'strip') return { shape: 'strip' as const, width, length: null, cut: count, role };
  const isSquare = width === length;
  const once = isSquare ? ('half-square-triangle' as const) : ('half-rectangle-triangle' as const);
  const plain = isSquare ? ('square' as const) : ('rectangle' as const);
  const shape = cutAs === 'once' ? once : cutAs === 'twice' ? ('quarter-square-triangle' as const) : plain;
  return { shape, width, length, cut: count, role };
}
