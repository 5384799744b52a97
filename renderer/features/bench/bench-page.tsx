import { usePlannedDates } from '#renderer/bridge/dates';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { ButtonLink } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { CheckIn } from './check-in';
import { BenchVerdict } from './bench-verdict';
import { ProjectAction } from './project-action';
import { FirstProject, ProjectCard } from './project-card';
import { benchOf, benchSummary, GROUP_WORDS } from './bench-groups';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './bench.module.css';

/** What to work on now, and how all the other projects are doing. */
export function BenchPage() {
  const { value: list, problem } = useRead('project:list', { archived: false });
  const glances = list?.items;
  const { settings } = useWorkshop();
  const on = today();
  const { value: dates } = usePlannedDates(on);
  if (glances === undefined) {
    return (
      <Page title="Bench">
        <ProblemNotice problem={problem} />
      </Page>
    );
  }
  const { first, groups, counts } = benchOf(glances, on);
  if (first === null) return <EmptyBench />;
  return (
    <Page
      title="Bench"
      under={benchSummary(counts)}
      action={<ProjectAction item={first} look="main" />}
      aside={
        <>
          <ButtonLink to="/line-up">Line-up</ButtonLink>
          <ButtonLink to="/projects/new">New project</ButtonLink>
        </>
      }
    >
      {dates !== undefined && <BenchVerdict dates={dates} glances={glances} on={on} />}
      <FirstProject item={first} schedule={dates?.plan} workshopSettings={settings} on={on} />
      <CheckIn glances={glances} silentDays={settings.silentDays} on={on} />
      <div className={styles['groups']}>
        {groups.map(({ situation, projects }) => (
          <section
            key={situation}
            className={classes(layout['stack'], projects.length > 1 && styles['wideGroup'])}
            aria-labelledby={`group-${situation}`}
          >
            <h2 id={`group-${situation}`} className={styles['groupName']}>
              {situation === first.status.situation
                ? `Also ${GROUP_WORDS[situation].toLowerCase()}`
                : GROUP_WORDS[situation]}
            </h2>
            <ul className={styles['cards']}>
              {projects.map((item) => (
                <ProjectCard
                  key={item.glance.project.id}
                  item={item}
                  schedule={dates?.plan}
                  workshopSettings={settings}
                  on={on}
                />
              ))}
            </ul>
          </section>
        ))}
      </div>
    </Page>
  );
}

function EmptyBench() {
  const begin = (
    <ButtonLink look="main" to="/projects/new">
      New project
    </ButtonLink>
  );
  return (
    <Page title="Bench" action={begin}>
      <EmptyState title="The bench is clear">
        <p>
          Open projects appear here with their next step: what is late, what is in progress, and what is at
          the quilter and until when.
        </p>
      </EmptyState>
    </Page>
  );
}
