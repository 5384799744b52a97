import { costOfArea } from '#core/units/known-cost';
import type { PieceToAdd, TableReading } from '#core/domain/stash-table';
import { KIND_WORDS, pieceSize } from '#renderer/features/stash/fabric-words';
import { Button } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';
import { costWords } from '#renderer/text/cost-words';
import { partialDateWords, today } from '#renderer/text/dates';
import { type Display, useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import styles from './import.module.css';

interface ImportPreviewProps {
  readonly reading: TableReading;
  readonly onMore: () => void;
}

/** What the import would add, and the rows as they were read. */
export function ImportPreview({ reading, onMore }: ImportPreviewProps) {
  const display = useDisplay();
  const { adds, faultyRows, alreadyHere, repeats, repeatCount } = reading;
  const summary = `${counted(adds.pieces, 'piece')} of fabric, ${counted(adds.fabrics, 'new fabric')}${worthWords(adds, display)}`;
  return (
    <section className={layout['stack']} aria-label="What will be added">
      <h2 className={layout['heading']}>What will be added</h2>
      <p className={styles['summary']} role="status">
        {`${summary}, from ${counted(reading.lines - faultyRows, 'row')}`}
      </p>
      {faultyRows > 0 && <p>{`${counted(faultyRows, 'row')} left out: a cell can’t be read.`}</p>}
      {alreadyHere > 0 && <p>{`${counted(alreadyHere, 'row')} already in your stash.`}</p>}
      {repeatCount > 0 && (
        <p>
          {`${counted(repeatCount, 'repeated row')}: ${repeats
            .slice(0, 5)
            .map(({ line, sameAs }) => `row ${String(line)} matches row ${String(sameAs)}`)
            .join(', ')}${repeatCount > 5 ? ' and more' : ''}.`}
        </p>
      )}
      {reading.preview.length > 0 && <Rows reading={reading} />}
      {reading.preview.length < reading.lines - reading.faultyRows && (
        <Button isSmall onClick={onMore}>
          Show more rows
        </Button>
      )}
    </section>
  );
}

/** What the new pieces cost, and how many of them have no cost in the table. */
function worthWords({ pieces, costMinor, unpriced }: TableReading['adds'], display: Display): string {
  if (pieces === unpriced) return unpriced === 0 ? '' : ', all without a price';
  const cost = costWords({ minor: costMinor, unpricedArea: 0 }, display);
  return `, worth ${cost}${unpriced === 0 ? '' : ` (${counted(unpriced, 'piece')} without a price)`}`;
}

function Rows({ reading }: { readonly reading: TableReading }) {
  const display = useDisplay();
  return (
    <div className={styles['scroller']} role="region" aria-label="Rows of the table" tabIndex={0}>
      <table className={styles['table']}>
        <caption>
          {reading.preview.length < reading.lines - reading.faultyRows
            ? `The first ${String(reading.preview.length)} rows as they were read`
            : 'Every row as it was read'}
        </caption>
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
              <th scope="row">
                <span className={styles['swatch']} style={{ backgroundColor: details.swatch }} />
                {details.name}
              </th>
              <td>{details.colorWords}</td>
              <td>{piece === null ? 'none' : KIND_WORDS[piece.kind].name}</td>
              <td>{piece !== null && <Typeset text={sizeWords(piece, display)} />}</td>
              <td>{piece !== null && costWords(costOfArea(piece.costMinor, piece.length), display)}</td>
              <td>{piece !== null && partialDateWords(piece.on, display.locale, today())}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Of several pieces alike, how many and the size of one. */
function sizeWords(piece: PieceToAdd, { length }: Display): string {
  const { unitLength } = piece;
  if (unitLength === null) return pieceSize(piece, length);
  const count = Math.round(piece.length / unitLength);
  return `${String(count)} of ${pieceSize({ ...piece, length: unitLength }, length)}`;
}

function counted(count: number, one: string): string {
  return `${String(count)} ${count === 1 ? one : `${one}s`}`;
}
