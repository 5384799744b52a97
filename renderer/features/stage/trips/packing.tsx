import type { PackingLine } from '#core/domain/trip';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { TextField } from '#renderer/ui/fields/text-field';
import layout from '#renderer/ui/page/layout.module.css';
import styles from '../stage.module.css';

interface PackingProps {
  readonly lines: readonly PackingLine[];
  readonly onChange: (lines: readonly PackingLine[]) => void;
  /** The stage or trip whose package it is. */
  readonly packageId: string;
}

/** The packing list of a package: tick what is packed, add a line, delete a line. */
export function Packing({ lines, onChange, packageId }: PackingProps) {
  const draft = useFormDraft(`packing ${packageId}`);
  const [next, setNext] = useDraftValue(draft, 'line', '');
  const add = () => {
    if (next.trim() === '') return;
    onChange([...lines, { text: next.trim(), isPacked: false }]);
    draft.forget();
  };
  return (
    <fieldset className={layout['part']}>
      <legend className={layout['legend']}>Packing list</legend>
      <ul className={styles['lines']}>
        {lines.map((line, index) => (
          <li key={`${line.text} ${String(index)}`} className={styles['line']}>
            <Checkbox
              label={line.text}
              isChecked={line.isPacked}
              onChange={(isPacked) =>
                onChange(lines.map((one, at) => (at === index ? { ...one, isPacked } : one)))
              }
            />
            <span className={styles['onlyNear']}>
              <Button
                look="quiet"
                isSmall
                aria-label={`Delete ${line.text}`}
                onClick={() => onChange(lines.filter((_one, at) => at !== index))}
              >
                Delete
              </Button>
            </span>
          </li>
        ))}
      </ul>
      <div
        className={styles['addLine']}
        onKeyDown={(event) => {
          // Enter adds this line; it must not submit the form around it.
          if (event.key !== 'Enter') return;
          event.preventDefault();
          add();
        }}
      >
        <TextField label="One more thing to pack" value={next} maximum={200} onChange={setNext} isOptional />
        <Button onClick={add} disabled={lines.length >= 40}>
          Add
        </Button>
      </div>
    </fieldset>
  );
}
