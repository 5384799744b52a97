import type { ProjectGlance, StageGlance } from '#core/contract/projects';
import { useRead, useWrite } from '#renderer/bridge/query';
import { STAGE_STATE_WORDS } from '#renderer/text/stage-words';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './clock.module.css';

/** Asks which stage to start the clock on: stages in progress first, then those that can start. */
export function StartClockDialog({ onClose }: { readonly onClose: () => void }) {
  const glances = useRead('project:list', { archived: false }).value?.items ?? [];
  const starting = useWrite('clock:start');
  const choices = workableStages(glances);
  const start = async (stage: StageGlance) => {
    const started = await starting.write({ stageId: stage.id });
    if (started.ok) onClose();
  };
  return (
    <Dialog title="Start the clock" onClose={onClose} foot={<Button onClick={onClose}>Cancel</Button>}>
      {choices.length === 0 && <p>No stage is in progress, and none can start.</p>}
      <ul className={layout['lines']}>
        {choices.map(({ stage, project }) => (
          <li key={stage.id} className={styles['line']}>
            <span className={styles['words']}>
              <span>
                {stage.name} · {STAGE_STATE_WORDS[stage.state]}
              </span>
              <span className={styles['project']}>{project.name}</span>
            </span>
            <Button
              isSmall
              disabled={starting.isWriting}
              aria-label={`Start on ${stage.name}, ${project.name}`}
              onClick={() => void start(stage)}
            >
              Start
            </Button>
          </li>
        ))}
      </ul>
      <ProblemNotice problem={starting.problem} />
    </Dialog>
  );
}

interface Workable {
  readonly stage: StageGlance;
  readonly project: ProjectGlance['project'];
}

function workableStages(glances: readonly ProjectGlance[]): readonly Workable[] {
  const all = glances.flatMap(({ project, stages }) => {
    const first = stages.find(({ state }) => state === 'planned');
    return stages
      .filter((stage) => stage.state === 'in-hand' || (stage === first && !stage.isGateShut))
      .map((stage) => ({ stage, project }));
  });
  return all.toSorted(
    (one, other) => Number(other.stage.state === 'in-hand') - Number(one.stage.state === 'in-hand'),
  );
}
