import { Link } from 'react-router';
import { settingsOfProject, type Settings } from '#core/domain/workshop';
import type { PlannedDates } from '#core/contract/dates';
import type { CalendarDate } from '#core/units/calendar-date';
import { outlineWords } from '#renderer/text/project-words';
import { scheduleLines } from '#renderer/text/schedule-words';
import { awayWords, nowWords, statusLines } from '#renderer/text/project-status';
import { progressCount } from '#renderer/text/stage-words';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { Typeset } from '#renderer/ui/answers/typeset';
import { ProjectAction } from './project-action';
import type { BenchProject } from './view-model';
import styles from './bench.module.css';

interface ProjectProps {
  readonly piece: BenchProject;
  /** Undefined until it is worked out. */
  readonly plan: PlannedDates['plan'] | undefined;
  readonly workshopSettings: Settings;
  readonly on: CalendarDate;
}

/** The piece to turn to now, large. Its action is the main action of the page. */
export function FirstProject({ piece, plan, workshopSettings, on }: ProjectProps) {
  const { project, stages, swatches } = piece.glance;
  const { locale } = useDisplay();
  return (
    <SettingsDisplay settings={settingsOfProject(workshopSettings, project.settingChanges)}>
      <section className={styles['first']} aria-label="Now">
        <ProjectDrawing
          project={project}
          stages={stages}
          swatches={swatches}
          size={280}
          awayWords={awayWords(piece.standing, on, locale)}
        />
        <div className={styles['firstWords']}>
          <p className={styles['nowStage']}>{nowWords(piece.standing, stages)}</p>
          <h2 className={styles['firstName']}>
            <Link to={`/projects/${project.id}`}>{project.name}</Link>
          </h2>
          <Lines piece={piece} plan={plan} on={on} />
          <ProjectFacts piece={piece} />
        </div>
      </section>
    </SettingsDisplay>
  );
}

/** One piece of a group: seen, named, where it stands, and what moves it on. */
export function ProjectCard({ piece, plan, workshopSettings, on }: ProjectProps) {
  const { project, stages, swatches } = piece.glance;
  const { locale } = useDisplay();
  return (
    <SettingsDisplay settings={settingsOfProject(workshopSettings, project.settingChanges)}>
      <li className={styles['card']}>
        <span className={styles['cardDrawing']}>
          <ProjectDrawing
            project={project}
            stages={stages}
            swatches={swatches}
            size={132}
            awayWords={awayWords(piece.standing, on, locale)}
          />
        </span>
        <div className={styles['cardWords']}>
          <h3 className={styles['cardName']}>
            <Link to={`/projects/${project.id}`}>{project.name}</Link>
          </h3>
          <p>{nowWords(piece.standing, stages)}</p>
          <Lines piece={piece} plan={plan} on={on} />
          <div className={styles['cardAction']}>
            <ProjectAction piece={piece} look="plain" />
          </div>
        </div>
      </li>
    </SettingsDisplay>
  );
}

function Lines({ piece, plan, on }: Omit<ProjectProps, 'workshopSettings'>) {
  const { locale } = useDisplay();
  const { project, stages } = piece.glance;
  const dates = plan?.projects.find(({ id }) => id === project.id);
  const lines = [
    ...statusLines(piece.glance, piece.standing, on, locale),
    ...(dates === undefined ? [] : scheduleLines(dates, stages, { locale, on })),
  ];
  return lines.map((line) => (
    <p key={line.text} className={classes(styles['line'], line.isAlert && styles['alert'])}>
      {line.text}
    </p>
  ));
}

function ProjectFacts({ piece }: { readonly piece: BenchProject }) {
  const display = useDisplay().length;
  const { project, stages } = piece.glance;
  const forWhom = project.forWhom === '' ? '' : `For ${project.forWhom}. `;
  return (
    <p className={styles['line']}>
      <Typeset text={`${forWhom}${outlineWords(project, display)}. ${progressCount(stages)}.`} />
    </p>
  );
}
