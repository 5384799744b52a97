import type { Table } from '#core/calculators/explanation';
import { InlineQuantity } from './typeset';
import styles from './figure-table.module.css';

/** A table of quantities; the first column names the row. */
export function FigureTable({ table }: { readonly table: Table }) {
  return (
    <div className={styles['scroller']}>
      <table className={styles['table']}>
        <caption className={styles['caption']}>{table.title}</caption>
        <thead>
          <tr>
            {table.columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, rowIndex) => (
            <tr key={rowIndex}>
              {row.map((quantity, column) =>
                column === 0 ? (
                  <th key={column} scope="row">
                    <InlineQuantity quantity={quantity} />
                  </th>
                ) : (
                  <td key={column}>
                    <InlineQuantity quantity={quantity} />
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
