import type { ProjectFabric } from '#core/contract/stash';
import { formatArea } from '#core/units/format-area';
import { lengthFromUnits } from '#core/units/length';
import { useDisplay } from '#renderer/ui/base/display';
import { LengthText, Typeset } from '#renderer/ui/answers/typeset';
import { fabricLines } from './sheet-lines';
import styles from '../paper/sheet.module.css';

/** The fabrics of the project, with what is set aside and what is used; nothing when there are none. */
export function SheetFabric({ fabric }: { readonly fabric: ProjectFabric }) {
  const { length } = useDisplay();
  const lines = fabricLines(fabric);
  if (lines.length === 0) return null;
  const isAnyHeld = lines.some(({ held }) => held.length > 0);
  const isAnyUsed = lines.some(({ usedArea }) => usedArea !== 0);
  return (
    <section className={styles['fabric']}>
      <h2>Fabric</h2>
      <table className={styles['table']}>
        <thead>
          <tr>
            <th scope="col">Fabric</th>
            {isAnyHeld && <th scope="col">Set aside</th>}
            {isAnyUsed && <th scope="col">Used</th>}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.fabricId}>
              <th scope="row">
                <span className={styles['swatch']} style={{ backgroundColor: line.swatch }} />
                {line.name}
              </th>
              {isAnyHeld && (
                <td>
                  {line.held.map((piece) => (
                    <div key={piece.pieceId}>
                      <LengthText length={lengthFromUnits(piece.width)} /> ×{' '}
                      <LengthText length={lengthFromUnits(piece.length)} rounding="down" />
                    </div>
                  ))}
                </td>
              )}
              {isAnyUsed && (
                <td>{line.usedArea === 0 ? '' : <Typeset text={formatArea(line.usedArea, length)} />}</td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
