import { useRead } from '#renderer/bridge/query';
import { ButtonLink } from '#renderer/ui/page/button';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { VirtualList } from '#renderer/ui/page/virtual-list';
import { LineUpRow } from './line-up-row';

const NEW_PROJECT = (
  <ButtonLink look="main" to="/projects/new">
    New project
  </ButtonLink>
);

/** In CSS pixels, before a row is measured. */
const ROW_HEIGHT = 92;

/** All open projects, one row each, to see and move the stage each one is at. */
export function LineUpPage() {
  const { value: list, problem } = useRead('project:list', { archived: false });
  if (list === undefined) {
    return (
      <Page title="Line-up">
        <ProblemNotice problem={problem} />
      </Page>
    );
  }
  if (list.items.length === 0) {
    return (
      <Page title="Line-up" action={NEW_PROJECT}>
        <EmptyState title="No open projects">
          <p>Each open project has a row here, with a stitch for each of its stages.</p>
        </EmptyState>
      </Page>
    );
  }
  return (
    <Page
      title="Line-up"
      under="Slide a needle along its line to move that project to another stage, or select the needle and press an arrow key."
      action={NEW_PROJECT}
    >
      <VirtualList
        label="Open projects"
        items={list.items}
        keyOf={({ project }) => project.id}
        estimate={ROW_HEIGHT}
      >
        {(glance) => <LineUpRow glance={glance} />}
      </VirtualList>
    </Page>
  );
}
