import { useState } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { ProjectGlance } from '#core/contract/projects';
import { settingsOfProject } from '#core/domain/workshop';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { pieceWords } from '#renderer/text/piece-words';
import { nowWords, standingLines, standingOf } from '#renderer/text/standing';
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
import { matchesSearch } from './search';
import styles from './projects.module.css';

const ROW_HEIGHT = 104;

/** All pieces of the notebook, open or put away. */
export function ProjectsPage() {
  const [params, setParams] = useSearchParams();
  const archived = params.get('which') === 'away';
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
          Begin a piece
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
          placeholder="name, for whom, stage"
        />
        <Choice
          label="Which"
          value={archived ? 'away' : 'open'}
          options={[
            { value: 'open', words: 'Open' },
            { value: 'away', words: 'Put away' },
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
      <EmptyState title="Nothing by that word">
        <p>
          Search by a part of the name, for whom it is, or a stage.{' '}
          {archived ? '' : 'It may also have been put away.'}
        </p>
      </EmptyState>
    );
  }
  return archived ? (
    <EmptyState title="Nothing put away yet">
      <p>Finished pieces can be put away from their own page; they keep all their notes and numbers.</p>
    </EmptyState>
  ) : (
    <EmptyState title="No open pieces">
      <p>Begin a piece, and it will be here and on the bench.</p>
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
  const standing = standingOf(glance, on);
  const lines = project.isArchived ? [] : standingLines(glance, standing, on, locale);
  return (
    <div className={styles['row']}>
      <span className={styles['rowDrawing']}>
        <ProjectDrawing piece={project} stages={stages} swatches={swatches} size={84} />
      </span>
      <div>
        <Link to={`/projects/${project.id}`} className={styles['rowName']}>
          {project.name}
        </Link>
        <p className={styles['quiet']}>
          <Typeset
            text={`${project.forWhom === '' ? '' : `For ${project.forWhom}. `}${pieceWords(project, length)}.`}
          />
        </p>
      </div>
      <div>
        <p>{nowWords(standing, stages)}</p>
        {lines.map((line) => (
          <p key={line.text} className={classes(styles['quiet'], line.isAlert && styles['alert'])}>
            {line.text}
          </p>
        ))}
      </div>
    </div>
  );
}
