import type { ProjectId, StageId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import type { Stage } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { STAGE_STATE_WORDS } from '#renderer/text/stage-words';
import { awayWords, statusLines, projectStatus } from '#renderer/text/project-status';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { UnsettledFacts } from '#renderer/shared/unsettled-facts';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { Checklist } from './checklist';
import { HowItIsDone } from './how-it-is-done';
import { Numbers } from './calculators/numbers';
import { Photos } from './photos';
import { Quilters } from './trips/quilters';
import { StageAction } from './stage-action';
import { StageClock } from './clock/stage-clock';
import { StageFabric } from './fabric/stage-fabric';
import { StageNotes } from './stage-notes';
import { StagePattern } from './stage-pattern';
import { StageOptions } from './stage-options';
import { reservedTrip } from './trips/trip-details';
import { Trips } from './trips/trips';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './stage.module.css';

interface StagePageProps {
  readonly projectId: ProjectId;
  readonly stageId: StageId;
}

/** One stage of a project: its numbers, checklist, fabric, time and notes, and the action that moves it on. */
export function StagePage({ projectId, stageId }: StagePageProps) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  const { settings } = useWorkshop();
  const { locale } = useDisplay();
  const back = { to: `/projects/${projectId}`, words: spread?.project.name ?? 'Back to the project' };
  const stage = spread?.stages.find((one) => one.id === stageId);
  if (spread === undefined || stage === undefined) {
    const gone = spread === undefined ? problem : ({ code: 'not-found', kind: 'stage' } as const);
    return (
      <Page title="Stage" back={back}>
        <ProblemNotice problem={gone} />
      </Page>
    );
  }
  const on = today();
  const measurements = measurementsOfProject(spread.project, settings, spread.stages);
  const standing = projectStatus(spread, on);
  const lines = standing.now?.id === stage.id ? statusLines(spread, standing, on, locale) : [];
  return (
    <SettingsDisplay settings={measurements.settings}>
      <Page
        title={stage.name}
        back={back}
        under={[STAGE_STATE_WORDS[stage.state], ...lines.map(({ text }) => text)].join(' · ')}
        action={<StageAction stage={stage} spread={spread} measurements={measurements} />}
        aside={<StageOptions stage={stage} />}
      >
        <div className={classes(layout['spread'], styles['columns'])}>
          <div className={layout['leaf']}>
            {stageKindRecord(stage.kind).usesHoleTemplate && (
              <UnsettledFacts projectId={projectId} measurements={measurements} />
            )}
            <Numbers stage={stage} measurements={measurements} />
            <HowItIsDone stage={stage} stages={spread.stages} measurements={measurements} />
          </div>
          <div className={layout['leaf']}>
            <div className={styles['drawing']}>
              <ProjectDrawing
                project={spread.project}
                stages={spread.stages}
                swatches={spread.swatches}
                size={210}
                awayWords={awayWords(standing, on, locale)}
              />
            </div>
            {isToBeSent(stage) && (
              <Quilters
                stage={stage}
                reserved={reservedTrip(stage, spread.trips)}
                measurements={measurements}
              />
            )}
            <Trips
              stage={stage}
              trips={spread.trips.filter((trip) => trip.stageId === stageId)}
              photos={spread.photos}
            />
            <StageClock stage={stage} />
            <Checklist stage={stage} stages={spread.stages} />
            {stage.kind === 'piecing' && <StagePattern stage={stage} />}
            <StageFabric stage={stage} />
            <StageNotes stage={stage} />
            <Photos
              stage={stage}
              photos={spread.photos.filter((photo) => photo.stageId === stageId && photo.tripId === null)}
            />
          </div>
        </div>
      </Page>
    </SettingsDisplay>
  );
}

/** Whether the stage goes to a longarm quilter and has not been sent yet. */
function isToBeSent({ kind, state }: Stage): boolean {
  return stageKindRecord(kind).isSentOut && (state === 'planned' || state === 'in-hand');
}
