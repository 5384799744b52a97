import type { ProjectSpread } from '#core/contract/projects';
import { CAUTIONS } from '#core/domain/cautions';
import { isOver } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';
import styles from '../paper/sheet.module.css';

/** The cautions for the stages that are still to come, once each. */
export function SheetCautions({ stages }: Pick<ProjectSpread, 'stages'>) {
  const ahead = stages.filter((stage) => !isOver(stage));
  const cautions = [...new Set(ahead.flatMap(({ kind }) => stageKindRecord(kind).cautions))];
  if (cautions.length === 0) return null;
  return (
    <section className={styles['cautions']}>
      <h3>Caution</h3>
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>{CAUTIONS[caution]}</li>
        ))}
      </ul>
    </section>
  );
}
