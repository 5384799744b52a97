import { Link } from 'react-router';
import type { ProjectFabric } from '#core/contract/stash';
import type { ProjectId } from '#core/domain/ids';
import { formatArea } from '#core/units/format-area';
import { lengthFromUnits } from '#core/units/length';
import { addCosts, type KnownCost } from '#core/units/known-cost';
import { useRead } from '#renderer/bridge/query';
import { costWords, unpricedWords } from '#renderer/text/cost-words';
import { LengthText } from '#renderer/ui/answers/typeset';
import { type Display, useDisplay } from '#renderer/ui/base/display';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './spread.module.css';

/** The fabric a project has used and what it cost, and what is set aside for it. */
export function ProjectFabrics({ projectId }: { readonly projectId: ProjectId }) {
  const display = useDisplay();
  const { length } = display;
  const { value: used } = useRead('ledger:of-project', { projectId });
  if (used === undefined) return null;
  const lines = fabricsUsed(used);
  return (
    <section>
      <h2 className={layout['heading']}>Fabric</h2>
      {lines.length === 0 && used.held.length === 0 ? (
        <p className={layout['quiet']}>None used yet. Record a cut on the stage where you make it.</p>
      ) : (
        <ul className={styles['fabric']}>
          {lines.map((line) => (
            <li key={line.fabricId}>
              <span className={styles['swatch']} style={{ backgroundColor: line.swatch }} />
              <span>{line.name}</span>
              <span className={layout['quiet']}>{formatArea(line.area, length)}</span>
              <span>{costWords(line.cost, display)}</span>
            </li>
          ))}
          {used.held.map(({ piece, fabric, held }) => (
            <li key={`held ${piece.id}`}>
              <span className={styles['swatch']} style={{ backgroundColor: fabric.swatch }} />
              <span>{fabric.name}</span>
              <span className={layout['quiet']}>set aside</span>
              <LengthText length={lengthFromUnits(held)} />
            </li>
          ))}
          {lines.length > 0 && (
            <li className={styles['total']}>
              <span />
              <span>Total</span>
              <span className={layout['quiet']}>{formatArea(used.usedArea, length)}</span>
              <strong>{costWords(used.paid, display)}</strong>
            </li>
          )}
        </ul>
      )}
      <p>
        <Link to={`/shopping?project=${projectId}`}>What to buy for it</Link>
      </p>
      {lines.length > 0 && <p className={layout['quiet']}>{costNotes(used, display)}</p>}
    </section>
  );
}

interface FabricUsed {
  readonly fabricId: string;
  readonly swatch: string;
  readonly name: string;
  readonly area: number;
  readonly cost: KnownCost;
}

/** The area and cost of each fabric used, in the order of its first booking. */
function fabricsUsed({ bookings }: ProjectFabric): readonly FabricUsed[] {
  const used = new Map<string, FabricUsed>();
  for (const { fabricId, swatch, fabricName, usedArea, cost } of bookings) {
    const before = used.get(fabricId);
    used.set(fabricId, {
      fabricId,
      swatch,
      name: fabricName,
      area: (before?.area ?? 0) + usedArea,
      cost: before === undefined ? cost : addCosts([before.cost, cost]),
    });
  }
  return [...used.values()].filter(({ area }) => area !== 0);
}

/** What has no price, and the cost counted in the two other ways: the oldest fabric first, and at today's prices. */
function costNotes({ paid, cost: { firstIn, replacementMinor } }: ProjectFabric, display: Display): string {
  const again =
    replacementMinor === null
      ? ''
      : `; to buy it again: ${costWords({ minor: replacementMinor, unpricedArea: 0 }, display)}`;
  const oldestFirst = `Oldest fabric first: ${costWords(firstIn, display)}${again}.`;
  const unpriced = unpricedWords(paid, display.length);
  return ['Cost of the pieces you cut.', unpriced, oldestFirst].filter((words) => words !== '').join(' ');
}
