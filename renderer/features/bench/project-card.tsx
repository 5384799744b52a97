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
import type { BenchProject } from './bench-groups';
import styles from './bench.module.css';

interface ProjectProps {
  readonly item: BenchProject;
  /** Undefined until it is worked out. */
  readonly schedule: PlannedDates['plan'] | undefined;
  readonly workshopSettings: Settings;
  readonly on: CalendarDate;
}

/** The project to work on now, drawn large. Its action is the main action of the page. */
export function FirstProject({ item, schedule, workshopSettings, on }: ProjectProps) {
  const { project, stages, swatches } = item.glance;
  const { locale } = useDisplay();
  return (
    <SettingsDisplay settings={settingsOfProject(workshopSettings, project.settingChanges)}>
      <section className={styles['first']} aria-label="Now">
        <ProjectDrawing
          project={project}
          stages={stages}
          swatches={swatches}
          size={280}
          awayWords={awayWords(item.status, on, locale)}
        />
        <div className={styles['firstWords']}>
          <p className={styles['nowStage']}>{nowWords(item.status, stages)}</p>
          <h2 className={styles['firstName']}>
            <Link to={`/projects/${project.id}`}>{project.name}</Link>
          </h2>
          <Lines item={item} schedule={schedule} on={on} />
          <ProjectFacts item={item} />
        </div>
      </section>
    </SettingsDisplay>
  );
}

/** One project of a group: its drawing and name, how it is doing, and its next move. */
export function ProjectCard({ item, schedule, workshopSettings, on }: ProjectProps) {
  const { project, stages, swatches } = item.glance;
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
            awayWords={awayWords(item.status, on, locale)}
          />
        </span>
        <div className={styles['cardWords']}>
          <h3 className={styles['cardName']}>
            <Link to={`/projects/${project.id}`}>{project.name}</Link>
          </h3>
          <p>{nowWords(item.status, stages)}</p>
          <Lines item={item} schedule={schedule} on={on} />
          <div className={styles['cardAction']}>
            <ProjectAction item={item} look="plain" />
          </div>
        </div>
      </li>
    </SettingsDisplay>
  );
}

function Lines({ item, schedule, on }: Omit<ProjectProps, 'workshopSettings'>) {
  const { locale } = useDisplay();
  const { project, stages } = item.glance;
  const dates = schedule?.projects.find(({ id }) => id === project.id);
  const lines = [
    ...statusLines(item.glance, item.status, on, locale),
    ...(dates === undefined ? [] : scheduleLines(dates, stages, { locale, on })),
  ];
  return lines.map((line) => (
    <p key={line.text} className={classes(styles['line'], line.isAlert && styles['alert'])}>
      {line.text}
    </p>
  ));
}

function ProjectFacts({ item }: { readonly item: BenchProject }) {
  const display = useDisplay().length;
  const { project, stages } = item.glance;
  const forWhom = project.forWhom === '' ? '' : `For ${project.forWhom}. `;
  return (
    <p className={styles['line']}>
      <Typeset text={`${forWhom}${outlineWords(project, display)}. ${progressCount(stages)}.`} />
    </p>
  );
}
