import { useState } from 'react';
import type { ProjectSpread, StageEvent } from '#core/contract/projects';
import type { StageState } from '#core/domain/stage';
import { settingsOfProject } from '#core/domain/workshop';
import { useWorkshop } from '#renderer/bridge/workshop';
import { instantWords, today } from '#renderer/text/dates';
import { pieceWords } from '#renderer/text/piece-words';
import { awayWords, standingOf } from '#renderer/text/standing';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { LengthText, Typeset } from '#renderer/ui/answers/typeset';
import { photoAddress } from '#renderer/bridge/photo';
import { ProjectFabrics } from './project-fabric';
import styles from './spread.module.css';

/** The left page: the piece to scale, its facts, its fabric, and its journal. */
export function PieceLeaf({ spread }: { readonly spread: ProjectSpread }) {
  const { project, stages, swatches } = spread;
  const { length, locale } = useDisplay();
  const on = today();
  return (
    <section className={styles['leaf']} aria-label="What it is">
      <ProjectDrawing
        piece={project}
        stages={stages}
        swatches={swatches}
        size={400}
        hasDimensions
        awayWords={awayWords(standingOf(spread, on), on, locale)}
      />
      <p className={styles['pieceWords']}>
        <Typeset text={`${pieceWords(project, length)}.`} />
      </p>
      <Facts spread={spread} />
      <ProjectFabrics projectId={project.id} />
      {project.notes !== '' && (
        <section>
          <h2 className={styles['heading']}>Notes</h2>
          <p className={styles['notes']}>{project.notes}</p>
        </section>
      )}
      <Photos spread={spread} />
      <Journal history={spread.history} />
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
      <h2 className={styles['heading']}>Photos</h2>
      <ul className={styles['photos']}>
        {spread.photos.map((photo) => (
          <li key={photo.id}>
            <img
              src={photoAddress(photo.id, 'thumbnail')}
              alt={photo.caption === '' ? 'Photo without words' : photo.caption}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

const SHOWN_AT_FIRST = 6;

/** What happened, newest first, as one would write it in the margin. */
function Journal({ history }: { readonly history: readonly StageEvent[] }) {
  const [isWhole, setIsWhole] = useState(false);
  const { locale } = useDisplay();
  if (history.length === 0) return null;
  const shown = isWhole ? history : history.slice(0, SHOWN_AT_FIRST);
  return (
    <section>
      <h2 className={styles['heading']}>Journal</h2>
      <ol className={styles['journal']}>
        {shown.map((event) => (
          <li key={`${event.stageId} ${String(event.at)} ${event.to}`}>
            <span className={styles['quiet']}>{instantWords(event.at, locale)}</span>
            <span>
              {event.stageName}: {JOURNAL_WORDS[event.to]}
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

const JOURNAL_WORDS: Readonly<Record<StageState, string>> = {
  planned: 'put back to planned',
  'in-hand': 'begun',
  out: 'sent out',
  done: 'done',
  skipped: 'skipped',
};
