import type { TableReading } from '#core/domain/stash-table';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { KIND_WORDS, pieceSize } from '#renderer/features/stash/fabric-words';
import shared from '#renderer/features/stash/stash.module.css';
import { cellProblemWords, faultPlace } from '#renderer/text/table-words';
import { useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import styles from './bring-in.module.css';

/** What would be added, what is in the way of it, and the first lines as they were read. */
export function BringInPreview({ reading }: { readonly reading: TableReading }) {
  const { currency, locale } = useDisplay();
  const { adds, faultCount, faults, alreadyHere, repeats, repeatCount } = reading;
  const cost = formatMoney(moneyFromMinor(adds.costMinor, currency), locale);
  const would = `${counted(adds.pieces, 'piece')}, ${counted(adds.fabrics, 'new fabric')}, ${cost} of value`;
  return (
    <section className={shared['stack']} aria-label="What would be added">
      <h2 className={styles['heading']}>What would be added</h2>
      <p className={styles['would']} role="status">
        {faultCount > 0
          ? `Nothing yet: ${counted(faultCount, 'cell')} cannot be read`
          : `${would}, from ${counted(reading.lines, 'line')}`}
      </p>
      {alreadyHere > 0 && <p>{`${counted(alreadyHere, 'line')} of it here already.`}</p>}
      {repeatCount > 0 && (
        <p>
          {`${counted(repeatCount, 'line')} standing twice: ${repeats
            .slice(0, 5)
            .map(({ line, sameAs }) => `${String(line)} as ${String(sameAs)}`)
            .join(', ')}${repeatCount > 5 ? ' and more' : ''}.`}
        </p>
      )}
      {faultCount > 0 && (
        <ul className={styles['faults']} aria-label="Cells that cannot be read">
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
      {reading.preview.length > 0 && <FirstLines reading={reading} />}
    </section>
  );
}

function FirstLines({ reading }: { readonly reading: TableReading }) {
  const { length, currency, locale } = useDisplay();
  return (
    <div className={styles['scroller']}>
      <table className={styles['table']}>
        <caption>The first of them as they were read</caption>
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
              <td>{piece === null ? 'no piece' : KIND_WORDS[piece.kind].name}</td>
              <td>{piece !== null && <Typeset text={pieceSize(piece, length)} />}</td>
              <td>{piece !== null && formatMoney(moneyFromMinor(piece.costMinor, currency), locale)}</td>
              <td>{piece?.on}</td>
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
