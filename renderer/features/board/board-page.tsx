import { useLayoutEffect, useRef, useState } from 'react';
import type { ProjectGlance } from '#core/contract/projects';
import type { ProjectId } from '#core/domain/ids';
import { useRead, useWrite } from '#renderer/bridge/query';
import { ButtonLink } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { BoardCard } from './board-card';
import { type BoardColumn, boardOf, columnOf, type Place, placeBeside, placeInColumn } from './view-model';
import styles from './board.module.css';

const BEGIN = (
  <ButtonLink look="main" to="/projects/new">
    Begin a piece
  </ButtonLink>
);

/** All open pieces by the stage they stand at; a piece is moved on or back by dragging it, or by keys. */
export function BoardPage() {
  const { value: list, problem } = useRead('project:list', { archived: false });
  const moving = useWrite('project:stand-at');
  const [dragged, setDragged] = useState<ProjectGlance | null>(null);
  const keepFocus = useFocusAfterMove(list?.items);
  if (list === undefined) {
    return (
      <Page title="Board">
        <ProblemNotice problem={problem} />
      </Page>
    );
  }
  const move = (glance: ProjectGlance, place: Place | undefined) => {
    if (place === undefined) return;
    keepFocus(glance.project.id);
    void moving.write({ projectId: glance.project.id, stageId: place.stage?.id ?? null });
  };
  const drop = (column: BoardColumn) => {
    if (dragged !== null && columnOf(dragged) !== column.name) {
      move(dragged, placeInColumn(dragged, column.name));
    }
    setDragged(null);
  };
  return (
    <Page
      title="Board"
      under="Drag a piece to the stage it stands at, or move it with Alt and an arrow key."
      action={BEGIN}
      aside={<ButtonLink to="/">Bench</ButtonLink>}
    >
      <ProblemNotice problem={moving.problem} />
      {list.items.length === 0 ? (
        <EmptyState title="The board is clear">
          <p>Open projects stand here in a column for each stage of the shop.</p>
        </EmptyState>
      ) : (
        <div className={styles['board']}>
          {boardOf(list.items).map((column) => {
            const takes =
              dragged !== null &&
              columnOf(dragged) !== column.name &&
              placeInColumn(dragged, column.name) !== undefined;
            return (
              <section
                key={column.name}
                className={classes(
                  styles['column'],
                  column.glances.length === 0 && styles['bare'],
                  takes && styles['takes'],
                )}
                aria-label={column.words}
                onDragOver={(event) => {
                  if (takes) event.preventDefault();
                }}
                onDrop={() => drop(column)}
              >
                <h2 className={styles['heading']}>
                  <span>
                    {column.words} <span className={styles['count']}>{column.glances.length}</span>
                  </span>
                </h2>
                <ul className={styles['cards']}>
                  {column.glances.map((glance) => (
                    <BoardCard
                      key={glance.project.id}
                      glance={glance}
                      isBusy={moving.isWriting}
                      onDrag={setDragged}
                      onMove={(by) => move(glance, placeBeside(glance, by))}
                    />
                  ))}
                </ul>
              </section>
            );
          })}
        </div>
      )}
    </Page>
  );
}

/** A card that changes its column is drawn anew; the focus goes along with it. */
function useFocusAfterMove(items: readonly ProjectGlance[] | undefined): (id: ProjectId) => void {
  const moved = useRef<ProjectId | null>(null);
  useLayoutEffect(() => {
    if (moved.current === null) return;
    document.querySelector<HTMLElement>(`[data-card="${moved.current}"] a`)?.focus();
    moved.current = null;
  }, [items]);
  return (id) => {
    moved.current = id;
  };
}
