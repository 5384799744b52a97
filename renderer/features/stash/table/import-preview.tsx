import { costOfArea } from '#core/units/known-cost';
import type { TableReading } from '#core/domain/stash-table';
import { KIND_WORDS, pieceSize } from '#renderer/features/stash/fabric-words';
import layout from '#renderer/ui/page/layout.module.css';
import { costWords } from '#renderer/text/cost-words';
import { partialDateWords, today } from '#renderer/text/dates';
import { cellProblemWords, faultPlace } from '#renderer/text/table-words';
import { type Display, useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import styles from './import.module.css';

/** What the import would add, the cells that cannot be read, and the first rows as they were read. */
export function ImportPreview({ reading }: { readonly reading: TableReading }) {
  const display = useDisplay();
  const { adds, faultCount, faults, alreadyHere, repeats, repeatCount } = reading;
  const summary = `${counted(adds.pieces, 'piece')} of fabric, ${counted(adds.fabrics, 'new fabric')}${worthWords(adds, display)}`;
  return (
    <section className={layout['stack']} aria-label="What will be added">
      <h2 className={layout['heading']}>What will be added</h2>
      <p className={styles['summary']} role="status">
        {faultCount > 0
          ? `Nothing yet: ${counted(faultCount, 'cell')} can’t be read`
          : `${summary}, from ${counted(reading.lines, 'row')}`}
      </p>
      {alreadyHere > 0 && <p>{`${counted(alreadyHere, 'row')} already in your stash.`}</p>}
      {repeatCount > 0 && (
        <p>
          {`${counted(repeatCount, 'repeated row')}: ${repeats
            .slice(0, 5)
            .map(({ line, sameAs }) => `row ${String(line)} matches row ${String(sameAs)}`)
            .join(', ')}${repeatCount > 5 ? ' and more' : ''}.`}
        </p>
      )}
      {faultCount > 0 && (
        <ul className={styles['faults']} aria-label="Cells that can’t be read">
          {faults.map((fault, index) => (
            <li key={index}>
              <strong>{faultPlace(fault)}</strong>
              <span>
                <Typeset text={cellProblemWords(fault.problem)} />
              </span>
            </li>
          ))}
          {faultCount > faults.length && <li>{`and ${String(faultCount - faults.length)} more`}</li>}
        </ul>
      )}
      {reading.preview.length > 0 && <FirstRows reading={reading} />}
    </section>
  );
}

/** What the new pieces cost, and how many of them have no cost in the table. */
function worthWords({ pieces, costMinor, unpriced }: TableReading['adds'], display: Display): string {
  if (pieces === unpriced) return unpriced === 0 ? '' : ', all without a price';
  const cost = costWords({ minor: costMinor, unpricedArea: 0 }, display);
  return `, worth ${cost}${unpriced === 0 ? '' : ` (${counted(unpriced, 'piece')} without a price)`}`;
}

function FirstRows({ reading }: { readonly reading: TableReading }) {
  const display = useDisplay();
  return (
    <div className={styles['scroller']}>
      <table className={styles['table']}>
        <caption>The first rows as they were read</caption>
        <thead>
          <tr>
            {['Name', 'Color words', 'Kind', 'Size', 'Cost', 'Bought on'].map((title) => (
              <th key={title} scope="col">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {reading.preview.map(({ details, piece }, index) => (
            <tr key={index}>
              <th scope="row">{details.name}</th>
              <td>{details.colorWords}</td>
              <td>{piece === null ? 'none' : KIND_WORDS[piece.kind].name}</td>
              <td>{piece !== null && <Typeset text={pieceSize(piece, display.length)} />}</td>
              <td>{piece !== null && costWords(costOfArea(piece.costMinor, piece.length), display)}</td>
              <td>{piece !== null && partialDateWords(piece.on, display.locale, today())}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function counted(count: number, one: string): string {
  return `${String(count)} ${count === 1 ? one : `${one}s`}`;
}
