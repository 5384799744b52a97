import type { CellFault, TableReading } from '#core/domain/stash-table';
import { columnTitle } from '#core/stash/table/column-titles';
import { cellProblemWords, faultPlace } from '#renderer/text/table-words';
import { type FormDraft, useDraftValue } from '#renderer/ui/base/draft';
import { Typeset } from '#renderer/ui/answers/typeset';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './import.module.css';

interface CellsToMendProps {
  readonly draft: FormDraft;
  readonly reading: TableReading;
  readonly onMend: (line: number, column: number, text: string) => void;
}

/** The cells that cannot be read, each with a field to write it anew. Rows that are not mended are left out. */
export function CellsToMend({ draft, reading, onMend }: CellsToMendProps) {
  const { faults, faultCount, faultyRows } = reading;
  if (faultCount === 0) return null;
  return (
    <section className={layout['stack']} aria-label="Cells that can’t be read">
      <h2 className={layout['heading']}>
        {faultCount === 1 ? '1 cell can’t be read' : `${String(faultCount)} cells can’t be read`}
      </h2>
      <p className={layout['quiet']}>
        {`Write them anew here, or leave ${faultyRows === 1 ? 'the row' : `the ${String(faultyRows)} rows`} out. An empty cell means that it is not known.`}
      </p>
      <ul className={styles['faults']}>
        {faults.map((fault) => (
          <Cell
            key={`${String(fault.line)} ${fault.at ?? ''} ${fault.field}`}
            draft={draft}
            fault={fault}
            onMend={onMend}
          />
        ))}
        {faultCount > faults.length && <li>{`and ${String(faultCount - faults.length)} more`}</li>}
      </ul>
    </section>
  );
}

function Cell({
  draft,
  fault,
  onMend,
}: Pick<CellsToMendProps, 'draft' | 'onMend'> & { readonly fault: CellFault }) {
  const { line, column, at, field, text, problem } = fault;
  // Another table has other text in this place, and then starts over.
  const [written, setWritten] = useDraftValue(draft, `cell ${String(line)} ${String(column)} ${text}`, text);
  // A data file has no columns to mend, and a column that is not there cannot be filled in.
  const canMend = at === null && column > 0;
  return (
    <li>
      <strong>{faultPlace(fault)}</strong>
      <span>
        <Typeset text={cellProblemWords(problem)} />
      </span>
      {canMend && (
        <form
          className={layout['row']}
          onSubmit={(event) => {
            event.preventDefault();
            onMend(line, column, written);
          }}
        >
          <TextField
            label={`${columnTitle(field)}, row ${String(line)}`}
            value={written}
            maximum={5_000}
            onChange={setWritten}
          />
          <Button isSmall type="submit">
            Use this
          </Button>
        </form>
      )}
    </li>
  );
}
