import { useState } from 'react';
import type { ProjectSpread, StageEvent } from '#core/contract/projects';
import { measurementsOfProject } from '#core/domain/measurements';
import type { StageState } from '#core/domain/stage';
import { settingsOfProject } from '#core/domain/workshop';
import { useWorkshop } from '#renderer/bridge/workshop';
import { instantWords, today } from '#renderer/text/dates';
import { outlineWords } from '#renderer/text/project-words';
import { awayWords, projectStatus } from '#renderer/text/project-status';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { UnsettledFacts } from '#renderer/shared/unsettled-facts';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { LengthText, Typeset } from '#renderer/ui/answers/typeset';
import { photoAddress } from '#renderer/bridge/photo';
import { ProjectFabrics } from './project-fabric';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './spread.module.css';

/** The left page: the project to scale, its settings, its fabric, its photos and its log. */
export function ProjectLeaf({ spread }: { readonly spread: ProjectSpread }) {
  const { project, stages, swatches } = spread;
  const { length, locale } = useDisplay();
  const on = today();
  return (
    <section className={layout['leaf']} aria-label="What it is">
      <ProjectDrawing
        project={project}
        stages={stages}
        swatches={swatches}
        size={400}
        hasDimensions
        awayWords={awayWords(projectStatus(spread, on), on, locale)}
      />
      <p className={styles['outlineWords']}>
        <Typeset text={`${outlineWords(project, length)}.`} />
      </p>
      <UnsettledFacts
        projectId={project.id}
        measurements={measurementsOfProject(project, useWorkshop().settings, stages)}
      />
      <Facts spread={spread} />
      <ProjectFabrics projectId={project.id} />
      {project.notes !== '' && (
        <section>
          <h2 className={layout['heading']}>Notes</h2>
          <p className={layout['notes']}>{project.notes}</p>
        </section>
      )}
      <Photos spread={spread} />
      <Log history={spread.history} />
    </section>
  );
}

function Facts({ spread }: { readonly spread: ProjectSpread }) {
  const workshop = useWorkshop();
  const { project } = spread;
  const settings = settingsOfProject(workshop.settings, project.settingChanges);
  return (
    <dl className={styles['facts']}>
      <div>
        <dt>Seam</dt>
        <dd>
          <LengthText length={settings.seamAllowance} />
        </dd>
      </div>
      <div>
        <dt>Binding strip</dt>
        <dd>
          <LengthText length={settings.bindingStripWidth} />
        </dd>
      </div>
      {project.hole !== null && (
        <div>
          <dt>Inner strip</dt>
          <dd>
            <LengthText length={settings.innerStripWidth} />
          </dd>
        </div>
      )}
      <div>
        <dt>Fabric width</dt>
        <dd>
          <LengthText length={settings.fabricWidth} />
        </dd>
      </div>
    </dl>
  );
}

function Photos({ spread }: { readonly spread: ProjectSpread }) {
  if (spread.photos.length === 0) return null;
  return (
    <section>
      <h2 className={layout['heading']}>Photos</h2>
      <ul className={styles['photos']}>
        {spread.photos.map((photo) => (
          <li key={photo.id}>
            <img
              src={photoAddress(photo.id, 'thumbnail')}
              alt={photo.caption === '' ? 'Photo without a caption' : photo.caption}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

const SHOWN_AT_FIRST = 6;

/** What happened to the stages, newest first. */
function Log({ history }: { readonly history: readonly StageEvent[] }) {
  const [isWhole, setIsWhole] = useState(false);
  const { locale } = useDisplay();
  if (history.length === 0) return null;
  const shown = isWhole ? history : history.slice(0, SHOWN_AT_FIRST);
  return (
    <section>
      <h2 className={layout['heading']}>Log</h2>
      <ol className={styles['log']}>
        {shown.map((event) => (
          <li key={`${event.stageId} ${String(event.at)} ${event.to}`}>
            <span className={layout['quiet']}>{instantWords(event.at, locale)}</span>
            <span>
              {event.stageName}: {LOG_WORDS[event.to]}
              {event.why !== '' && <em> ({event.why})</em>}
            </span>
          </li>
        ))}
      </ol>
      {history.length > SHOWN_AT_FIRST && (
        <Button look="quiet" isSmall onClick={() => setIsWhole(!isWhole)}>
          {isWhole ? 'Show less' : `Show all ${String(history.length)}`}
        </Button>
      )}
    </section>
  );
}

const LOG_WORDS: Readonly<Record<StageState, string>> = {
  planned: 'moved back to planned',
  'in-hand': 'started',
  out: 'sent to the quilter',
  done: 'done',
  skipped: 'skipped',
};
