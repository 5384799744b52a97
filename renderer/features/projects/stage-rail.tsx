import { useState } from 'react';
import type { ProjectSpread, StageGlance } from '#core/contract/projects';
import type { Project } from '#core/domain/project';
import type { Stage } from '#core/domain/stage';
import { useRead, useWrite } from '#renderer/bridge/query';
import { classes } from '#renderer/ui/base/classes';
import { Button } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { AddStageDialog } from './add-stage-dialog';
import styles from './spread.module.css';
import { CurrentStageDetails, StageHead } from './stage-details';
import { StageDialog } from './stage-dialog';
import { StageThread } from './stage-thread';
import { SwitchPlanDialog } from './switch-plan-dialog';

interface StageRailProps {
  readonly project: Project;
  readonly stages: ProjectSpread['stages'];
  readonly now: StageGlance | null;
}

type OpenDialog =
  { readonly kind: 'none' | 'add' | 'plan' } | { readonly kind: 'stage'; readonly stageId: Stage['id'] };

/** The right page: the stages of the project in order, with details of the current one. */
export function StageRail({ project, stages, now }: StageRailProps) {
  const [dialog, setDialog] = useState<OpenDialog>({ kind: 'none' });
  const [dragged, setDragged] = useState<Stage | null>(null);
  const { value: estimates } = useRead('stage:estimates', { projectId: project.id });
  const reordering = useWrite('stage:reorder');
  const moveTo = (stage: Stage, position: number) => {
    if (position >= 0 && position < stages.length && position !== stage.position) {
      void reordering.write({ stageId: stage.id, position });
    }
  };
  const opened = dialog.kind === 'stage' ? stages.find(({ id }) => id === dialog.stageId) : undefined;
  const close = () => setDialog({ kind: 'none' });
  return (
    <section className={layout['leaf']} aria-label="What is next">
      <ol className={styles['rail']}>
        {stages.map((stage, index) => (
          <li
            key={stage.id}
            className={classes(styles['stage'], stage === now && styles['now'])}
            aria-current={stage === now ? 'step' : undefined}
            draggable
            onDragStart={() => setDragged(stage)}
            onDragEnd={() => setDragged(null)}
            onDragOver={(event) => {
              if (dragged !== null) event.preventDefault();
            }}
            onDrop={() => {
              if (dragged !== null) moveTo(dragged, index);
            }}
            onKeyDown={(event) => {
              if (!event.altKey || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
              event.preventDefault();
              moveTo(stage, index + (event.key === 'ArrowUp' ? -1 : 1));
            }}
          >
            <StageThread state={stage.state} isNext={stage === now} />
            <div className={styles['stageWords']}>
              <StageHead stage={stage} minutes={estimates?.[stage.id]?.minutes ?? 0} />
              {stage === now && <CurrentStageDetails stage={stage} stages={stages} />}
            </div>
            <Button
              look="quiet"
              isSmall
              aria-label={`Change the stage ${stage.name}`}
              onClick={() => setDialog({ kind: 'stage', stageId: stage.id })}
            >
              Change
            </Button>
          </li>
        ))}
      </ol>
      <div className={layout['row']}>
        <Button isSmall onClick={() => setDialog({ kind: 'add' })}>
          Add a stage
        </Button>
        <Button isSmall onClick={() => setDialog({ kind: 'plan' })}>
          Switch plan
        </Button>
      </div>
      <ProblemNotice problem={reordering.problem} />
      {dialog.kind === 'add' && <AddStageDialog projectId={project.id} stages={stages} onClose={close} />}
      {dialog.kind === 'plan' && <SwitchPlanDialog project={project} onClose={close} />}
      {opened !== undefined && (
        <StageDialog
          stage={opened}
          count={stages.length}
          onMoveTo={(to) => moveTo(opened, to)}
          onClose={close}
        />
      )}
    </section>
  );
}
