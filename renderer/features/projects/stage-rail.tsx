import { useState } from 'react';
import { Link } from 'react-router';
import type { ProjectSpread, StageGlance } from '#core/contract/projects';
import type { Project } from '#core/domain/project';
import { openGateItems, type Stage } from '#core/domain/stage';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { useRead, useWrite } from '#renderer/bridge/query';
import { STAGE_STATE_WORDS } from '#renderer/text/stage-words';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { AddStageDialog } from './add-stage-dialog';
import { FollowPlanDialog } from './follow-plan-dialog';
import { StageDialog } from './stage-dialog';
import { StageThread } from './stage-thread';
import styles from './spread.module.css';

interface StageRailProps {
  readonly project: Project;
  readonly stages: ProjectSpread['stages'];
  readonly now: StageGlance | null;
}

type Asking =
  { readonly about: 'none' | 'new' | 'plan' } | { readonly about: 'stage'; readonly stageId: Stage['id'] };

/** The right page: the way through the workshop, with the stage the piece stands at opened. */
export function StageRail({ project, stages, now }: StageRailProps) {
  const [asking, setAsking] = useState<Asking>({ about: 'none' });
  const [dragged, setDragged] = useState<Stage | null>(null);
  const { value: estimates } = useRead('stage:estimates', { projectId: project.id });
  const reordering = useWrite('stage:reorder');
  const moveTo = (stage: Stage, position: number) => {
    if (position >= 0 && position < stages.length && position !== stage.position) {
      void reordering.write({ stageId: stage.id, position });
    }
  };
  const asked = asking.about === 'stage' ? stages.find((stage) => stage.id === asking.stageId) : undefined;
  const close = () => setAsking({ about: 'none' });
  return (
    <section className={styles['leaf']} aria-label="What is next">
      <ol className={styles['rail']}>
        {stages.map((stage, place) => (
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
              if (dragged !== null) moveTo(dragged, place);
            }}
            onKeyDown={(event) => {
              if (!event.altKey || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
              event.preventDefault();
              moveTo(stage, place + (event.key === 'ArrowUp' ? -1 : 1));
            }}
          >
            <StageThread state={stage.state} isNext={stage === now} />
            <div className={styles['stageWords']}>
              <StageHead stage={stage} minutes={estimates?.[stage.id]?.minutes ?? 0} />
              {stage === now && <NowDetails stage={stage} stages={stages} />}
            </div>
            <Button
              look="quiet"
              isSmall
              aria-label={`Change the stage ${stage.name}`}
              onClick={() => setAsking({ about: 'stage', stageId: stage.id })}
            >
              Change
            </Button>
          </li>
        ))}
      </ol>
      <div>
        <Button isSmall onClick={() => setAsking({ about: 'new' })}>
          Add a stage
        </Button>{' '}
        <Button isSmall onClick={() => setAsking({ about: 'plan' })}>
          Follow another plan
        </Button>
      </div>
      <ProblemNotice problem={reordering.problem} />
      {asking.about === 'new' && <AddStageDialog projectId={project.id} stages={stages} onClose={close} />}
      {asking.about === 'plan' && <FollowPlanDialog projectId={project.id} onClose={close} />}
      {asked !== undefined && (
        <StageDialog
          stage={asked}
          count={stages.length}
          onMoveTo={(to) => moveTo(asked, to)}
          onClose={close}
        />
      )}
    </section>
  );
}

interface StageHeadProps {
  readonly stage: Stage;
  /** What it will take; 0 for not known. */
  readonly minutes: number;
}

function StageHead({ stage, minutes }: StageHeadProps) {
  const estimate = minutes === 0 ? '' : ` · about ${formatMinutes(minutesFromWhole(minutes))}`;
  const isOver = stage.state === 'done' || stage.state === 'skipped';
  return (
    <>
      <Link to={`/projects/${stage.projectId}/stages/${stage.id}`} className={styles['stageName']}>
        {stage.name}
      </Link>
      <p className={styles['quiet']}>
        {STAGE_STATE_WORDS[stage.state]}
        {!isOver && estimate}
        {stage.isBeside && ' · beside the one before'}
      </p>
    </>
  );
}

const SHOWN_LINES = 4;

/** Of the stage the piece stands at: what holds it, what is still open, what was noted. */
function NowDetails({ stage, stages }: { readonly stage: Stage; readonly stages: readonly Stage[] }) {
  const stillShut = openGateItems(stage, stages);
  const gate = stage.state === 'planned' ? stillShut : [];
  const open = stage.checklist.filter((item) => !item.isTicked && (!item.isGate || stillShut.includes(item)));
  return (
    <div className={styles['nowDetails']}>
      {stage.heldUpBy !== '' && (
        <p>
          <strong>Held up:</strong> {stage.heldUpBy}
        </p>
      )}
      {gate.length > 0 && (
        <>
          <p>Not before:</p>
          <ul>
            {gate.map((item) => (
              <li key={item.id}>{item.text}</li>
            ))}
          </ul>
        </>
      )}
      {gate.length === 0 && open.length > 0 && (
        <ul>
          {open.slice(0, SHOWN_LINES).map((item) => (
            <li key={item.id}>{item.text}</li>
          ))}
          {open.length > SHOWN_LINES && <li>and {open.length - SHOWN_LINES} more on its page</li>}
        </ul>
      )}
      {stage.notes !== '' && <p className={styles['stageNotes']}>{stage.notes}</p>}
    </div>
  );
}
