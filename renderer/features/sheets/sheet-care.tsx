import type { ProjectSpread } from '#core/contract/projects';
import type { StageKind } from '#core/domain/stage';
import styles from './project-sheet.module.css';

const BLADE =
  'Blade: close it whenever the cutter is put down, cut away from yourself, hand flat and clear of the edge.';
const IRON = 'Iron and steam burn: press on a heat-safe place, and switch off.';
const NEEDLES = 'Needles and pins: count them out and in, and keep them from children and pets.';
const FLAME =
  'Under or near a lit tree, a candle or a stove: keep clear of flame and heat, and follow the maker’s instructions and local fire rules.';

const CARE: Readonly<Partial<Record<StageKind, readonly string[]>>> = {
  piecing: [BLADE, IRON, NEEDLES],
  'home-quilting': [NEEDLES],
  'outer-binding': [BLADE, IRON],
  'center-cut': [BLADE],
  'inner-binding': [IRON, NEEDLES],
  'hand-finish': [IRON, NEEDLES, FLAME],
};

/** The usual cautions for what is still to be done, once each. */
export function SheetCare({ stages }: Pick<ProjectSpread, 'stages'>) {
  const ahead = stages.filter(({ state }) => state !== 'done' && state !== 'skipped');
  const lines = new Set(ahead.flatMap(({ kind }) => CARE[kind] ?? []));
  if (lines.size === 0) return null;
  return (
    <section className={styles['care']}>
      <h3>Take care</h3>
      <ul>
        {[...lines].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
