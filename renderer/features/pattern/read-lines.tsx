import { useState } from 'react';
import type { ListLine } from '#core/cutting-list/list-reading';
import { LEFT_OUT, type Settled, waysToSettle } from '#core/cutting-list/write-line';
import { lineWords, MARK_WORDS } from '#renderer/text/list-words';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import { Button } from '#renderer/ui/page/button';
import { LineForm } from './line-form';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './pattern.module.css';

interface ReadLinesProps {
  readonly projectId: string;
  readonly lines: readonly ListLine[];
  /** Fabrics of the list, to suggest. */
  readonly roles: readonly string[];
  /** Puts another text in place of a line. */
  readonly onReplace: (index: number, text: string) => void;
}

/** What was read, line by line. A line with a mark says what is open, and can be mended here. */
export function ReadLines({ projectId, lines, roles, onReplace }: ReadLinesProps) {
  const [mended, setMended] = useState<number | null>(null);
  const line = mended === null ? undefined : lines[mended];
  return (
    <>
      <ol className={styles['lines']} aria-label="Line by line">
        {lines.map((one, index) =>
          one.kind === 'blank' ? null : (
            <LineView
              key={index}
              line={one}
              onMend={() => setMended(index)}
              onSettle={(text) => onReplace(index, text)}
              onLeaveOut={() => onReplace(index, `${LEFT_OUT}${one.text.trim()}`)}
            />
          ),
        )}
      </ol>
      {mended !== null && line !== undefined && (
        <LineForm
          key={mended}
          name={`${projectId} ${String(mended)}`}
          line={line}
          roles={roles}
          onSave={(text) => onReplace(mended, text)}
          onClose={() => setMended(null)}
        />
      )}
    </>
  );
}

interface LineViewProps {
  readonly line: ListLine;
  readonly onMend: () => void;
  readonly onSettle: (text: string) => void;
  readonly onLeaveOut: () => void;
}

const SETTLED: Readonly<Record<Settled['as'], string>> = {
  fabric: 'It’s a fabric',
  'for-one-block': 'For one block',
  'for-all-blocks': 'For all blocks',
};

function LineView({ line, onMend, onSettle, onLeaveOut }: LineViewProps) {
  const { length } = useDisplay();
  const isMarked = line.marks.length > 0;
  const words = lineWords(line, length);
  return (
    <li className={classes(styles['line'], isMarked && styles['marked'])}>
      <p className={styles['text']}>
        <MarkedText line={line} />
      </p>
      {words.map((said) => (
        <p key={said} className={styles['read']}>
          <Typeset text={said} />
        </p>
      ))}
      {isMarked && (
        <>
          <ul className={styles['marks']}>
            {line.marks.map(({ code, from, to }) => (
              <li key={`${code} ${String(from)}`}>
                “{line.text.slice(from, to)}”: {MARK_WORDS[code]}
              </li>
            ))}
          </ul>
          <div className={layout['row']}>
            {waysToSettle(line).map(({ as, text }) => (
              <Button
                key={as}
                isSmall
                aria-label={`${SETTLED[as]}: “${line.text.trim()}”`}
                onClick={() => onSettle(text)}
              >
                {SETTLED[as]}
              </Button>
            ))}
            <Button isSmall aria-label={`Mend “${line.text.trim()}”`} onClick={onMend}>
              Mend this line
            </Button>
            <Button look="quiet" isSmall aria-label={`Leave out “${line.text.trim()}”`} onClick={onLeaveOut}>
              Leave it out
            </Button>
          </div>
        </>
      )}
    </li>
  );
}

/** The line with its marked parts set off. */
function MarkedText({ line: { text, marks } }: { readonly line: ListLine }) {
  const cuts = [...new Set([0, text.length, ...marks.flatMap(({ from, to }) => [from, to])])].sort(
    (one, other) => one - other,
  );
  return cuts.slice(0, -1).map((from, index) => {
    const part = text.slice(from, cuts[index + 1]);
    const isMarked = marks.some((mark) => mark.from <= from && from < mark.to);
    return isMarked ? <mark key={from}>{part}</mark> : part;
  });
}
