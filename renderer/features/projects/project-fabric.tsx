import type { FabricCost } from '#core/contract/stash';
import type { ProjectId } from '#core/domain/ids';
import { formatArea } from '#core/units/format-area';
import { formatMoney } from '#core/units/format-money';
import { lengthFromUnits } from '#core/units/length';
import { moneyFromMinor } from '#core/units/money';
import { Link } from 'react-router';
import { useRead } from '#renderer/bridge/query';
import { useDisplay } from '#renderer/ui/base/display';
import { LengthText } from '#renderer/ui/answers/typeset';
import styles from './spread.module.css';

/** The fabric a piece has used and what it cost, from the ledger alone, and what is set aside for it. */
export function ProjectFabrics({ projectId }: { readonly projectId: ProjectId }) {
  const { length, currency, locale } = useDisplay();
  const { value: used } = useRead('ledger:of-project', { projectId });
  if (used === undefined) return null;
  const byFabric = new Map<
    string,
    { readonly swatch: string; readonly name: string; readonly area: number; readonly costMinor: number }
  >();
  for (const booking of used.bookings) {
    const before = byFabric.get(booking.fabricId);
    byFabric.set(booking.fabricId, {
      swatch: booking.swatch,
      name: booking.fabricName,
      area: (before?.area ?? 0) + booking.usedArea,
      costMinor: (before?.costMinor ?? 0) + booking.costMinor,
    });
  }
  const lines = [...byFabric].filter(([, line]) => line.area !== 0);
  const money = (minor: number) => formatMoney(moneyFromMinor(minor, currency), locale);
  return (
    <section>
      <h2 className={styles['heading']}>Fabric</h2>
      {lines.length === 0 && used.held.length === 0 ? (
        <p className={styles['quiet']}>None used yet. A cut is booked on the stage where it happens.</p>
      ) : (
        <ul className={styles['fabric']}>
          {lines.map(([id, line]) => (
            <li key={id}>
              <span className={styles['swatch']} style={{ backgroundColor: line.swatch }} />
              <span>{line.name}</span>
              <span className={styles['quiet']}>{formatArea(line.area, length)}</span>
              <span>{money(line.costMinor)}</span>
            </li>
          ))}
          {used.held.map(({ piece, fabric, held }) => (
            <li key={`held ${piece.id}`}>
              <span className={styles['swatch']} style={{ backgroundColor: fabric.swatch }} />
              <span>{fabric.name}</span>
              <span className={styles['quiet']}>set aside</span>
              <LengthText length={lengthFromUnits(held)} />
            </li>
          ))}
          {lines.length > 0 && (
            <li className={styles['total']}>
              <span />
              <span>Together</span>
              <span className={styles['quiet']}>{formatArea(used.usedArea, length)}</span>
              <strong>{money(used.costMinor)}</strong>
            </li>
          )}
        </ul>
      )}
      <p>
        <Link to={`/shopping?project=${projectId}`}>Which fabric fits</Link>
      </p>
      {lines.length > 0 && <p className={styles['quiet']}>{otherCosts(used.cost, money)}</p>}
    </section>
  );
}

/** The same fabric counted in the other ways: by what came in first, and at what it would cost now. */
function otherCosts({ firstInMinor, againMinor }: FabricCost, money: (minor: number) => string): string {
  const again = againMinor === null ? '' : `; to buy it again, ${money(againMinor)}`;
  return `By the very pieces cut. First in, first out: ${money(firstInMinor)}${again}.`;
}
