import { useState } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { ProjectGlance } from '#core/contract/projects';
import { settingsOfProject } from '#core/domain/workshop';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { outlineWords } from '#renderer/text/project-words';
import { nowWords, statusLines, projectStatus } from '#renderer/text/project-status';
import { ButtonLink } from '#renderer/ui/page/button';
import { Choice } from '#renderer/ui/fields/choice';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { TextField } from '#renderer/ui/fields/text-field';
import { Typeset } from '#renderer/ui/answers/typeset';
import { VirtualList } from '#renderer/ui/page/virtual-list';
import { matchesSearch } from './project-search';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './projects.module.css';

const ROW_HEIGHT = 104;

/** All projects, open or archived. */
export function ProjectsPage() {
  const [params, setParams] = useSearchParams();
  const archived = params.get('which') === 'archived';
  // The address follows the field, not the other way round: it changes too late for the next key.
  const [search, setSearch] = useState(params.get('search') ?? '');
  const { value: list, problem } = useRead('project:list', { archived });
  const found = list?.items.filter((glance) => matchesSearch(glance, search)) ?? [];
  const setParam = (name: string, value: string) => {
    setParams(
      (before) => {
        before.set(name, value);
        return before;
      },
      { replace: true },
    );
  };
  return (
    <Page
      title="Projects"
      action={
        <ButtonLink look="main" to="/projects/new">
          New project
        </ButtonLink>
      }
    >
      <div className={styles['finder']}>
        <TextField
          label="Find"
          value={search}
          onChange={(text) => {
            setSearch(text);
            setParam('search', text);
          }}
          placeholder="name, who it’s for, stage"
        />
        <Choice
          label="Show"
          value={archived ? 'archived' : 'open'}
          options={[
            { value: 'open', words: 'Open' },
            { value: 'archived', words: 'Archived' },
          ]}
          onChange={(which) => setParam('which', which)}
        />
      </div>
      <ProblemNotice problem={problem} />
      {list !== undefined && found.length === 0 && (
        <NothingFound isSearch={search !== ''} archived={archived} />
      )}
      <VirtualList label="Projects" items={found} keyOf={({ project }) => project.id} estimate={ROW_HEIGHT}>
        {(glance) => <ProjectRow glance={glance} />}
      </VirtualList>
    </Page>
  );
}

function NothingFound({ isSearch, archived }: { readonly isSearch: boolean; readonly archived: boolean }) {
  if (isSearch) {
    return (
      <EmptyState title="No project found">
        <p>
          Search by the beginning of a word in the name, the person it’s for, or a stage.{' '}
          {archived ? '' : 'It may also be archived.'}
        </p>
      </EmptyState>
    );
  }
  return archived ? (
    <EmptyState title="No archived projects">
      <p>You can archive a finished project on its own page. It keeps all its notes and numbers.</p>
    </EmptyState>
  ) : (
    <EmptyState title="No open projects">
      <p>Start a project, and it shows up here and on the bench.</p>
    </EmptyState>
  );
}

function ProjectRow({ glance }: { readonly glance: ProjectGlance }) {
  const { settings } = useWorkshop();
  return (
    <SettingsDisplay settings={settingsOfProject(settings, glance.project.settingChanges)}>
      <RowContent glance={glance} />
    </SettingsDisplay>
  );
}

function RowContent({ glance }: { readonly glance: ProjectGlance }) {
  const { project, stages, swatches } = glance;
  const { length, locale } = useDisplay();
  const on = today();
  const status = projectStatus(glance, on);
  const lines = project.isArchived ? [] : statusLines(glance, status, on, locale);
  return (
    <div className={styles['row']}>
      <span className={styles['rowDrawing']}>
        <ProjectDrawing project={project} stages={stages} swatches={swatches} size={84} />
      </span>
      <div>
        <Link to={`/projects/${project.id}`} className={layout['name']}>
          {project.name}
        </Link>
        <p className={layout['quiet']}>
          <Typeset
            text={`${project.forWhom === '' ? '' : `For ${project.forWhom}. `}${outlineWords(project, length)}.`}
          />
        </p>
      </div>
      <div>
        <p>{nowWords(status, stages)}</p>
        {lines.map((line) => (
          <p key={line.text} className={classes(layout['quiet'], line.isAlert && layout['alert'])}>
            {line.text}
          </p>
        ))}
      </div>
    </div>
  );
}
