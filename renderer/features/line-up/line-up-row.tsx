import { useState } from 'react';
import { Link } from 'react-router';
import type { ProjectGlance, StageGlance } from '#core/contract/projects';
import { useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import {
  awayWords,
  dueLine,
  projectStatus,
  stageLines,
  type StatusLine,
} from '#renderer/text/project-status';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { SeamLine } from './seam-line';
import { currentStop, stageInTheWay, stopsOf } from './stage-line';
import { needleWords, stopName } from './stop-words';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './line-up.module.css';

/** One project: drawn and named at the left, its stages as a line of stitches, its due day at the right. */
export function LineUpRow({ glance }: { readonly glance: ProjectGlance }) {
  const { project, stages, swatches } = glance;
  const { locale } = useDisplay();
  const on = today();
  const status = projectStatus(glance, on);
  const stops = stopsOf(glance);
  const mover = useMoveToStop(glance);
  const due = dueLine(glance, status, on, locale);
  return (
    <div className={styles['row']}>
      <span className={styles['drawing']}>
        <ProjectDrawing project={project} swatches={swatches} size={52} isSilent />
      </span>
      <div className={styles['words']}>
        <Link
          to={`/projects/${project.id}`}
          title={project.name}
          className={classes(layout['name'], styles['name'])}
        >
          {project.name}
        </Link>
        <StatusLines lines={stageLines(status, on, locale)} />
        <StepButtons
          projectName={project.name}
          names={stops.map(stopName)}
          stop={mover.stop}
          isBusy={mover.isBusy}
          onMove={mover.moveTo}
        />
      </div>
      <SeamLine
        label={`Stage of ${project.name}`}
        valueWords={needleWords(stops, mover.stop, status, { locale, on })}
        stops={stops}
        stop={mover.stop}
        awayWords={awayWords(status, on, locale)}
        isBusy={mover.isBusy}
        onMove={mover.moveTo}
      />
      <div className={styles['due']}>{due !== null && <StatusLines lines={[due]} />}</div>
      {mover.problem !== null && (
        <div className={styles['problem']}>
          <ProblemNotice problem={mover.problem} />
          {mover.inTheWay !== null && (
            <ButtonLink isSmall to={`/projects/${project.id}/stages/${mover.inTheWay.id}`}>
              Open “{mover.inTheWay.name}”
            </ButtonLink>
          )}
        </div>
      )}
      {stages.length === 0 && <p className={styles['problem']}>This project has no stages yet.</p>}
    </div>
  );
}

/** Moves a project to another stop. The needle is there at once, and goes back if the move is refused. */
function useMoveToStop(glance: ProjectGlance) {
  const moving = useWrite('project:move-to-stage');
  const [target, setTarget] = useState<number | null>(null);
  const [inTheWay, setInTheWay] = useState<StageGlance | null>(null);
  const stops = stopsOf(glance);
  const moveTo = async (stop: number) => {
    const goal = stops[stop];
    if (goal === undefined || moving.isWriting) return;
    setTarget(stop);
    setInTheWay(stageInTheWay(glance, stop));
    await moving.write({ projectId: glance.project.id, stageId: goal?.id ?? null });
    setTarget(null);
  };
  return {
    stop: target ?? currentStop(glance),
    moveTo: (stop: number) => void moveTo(stop),
    isBusy: moving.isWriting,
    problem: moving.problem,
    inTheWay,
  };
}

interface StepButtonsProps {
  readonly projectName: string;
  readonly names: readonly string[];
  readonly stop: number;
  readonly isBusy: boolean;
  readonly onMove: (stop: number) => void;
}

function StepButtons({ projectName, names, stop, isBusy, onMove }: StepButtonsProps) {
  const button = (words: string, to: number) =>
    names[to] !== undefined && (
      <Button
        look="quiet"
        isSmall
        disabled={isBusy}
        aria-label={`${words}: ${projectName} to ${names[to]}`}
        onClick={() => onMove(to)}
      >
        {words}
      </Button>
    );
  return (
    <span className={styles['steps']}>
      {button('Previous stage', stop - 1)}
      {button('Next stage', stop + 1)}
    </span>
  );
}

function StatusLines({ lines }: { readonly lines: readonly StatusLine[] }) {
  return lines.map((line) => (
    <p key={line.text} className={classes(layout['quiet'], line.isAlert && layout['alert'])}>
      {line.text}
    </p>
  ));
}
