import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { ShoppingList } from '#core/contract/shopping';
import type { ProjectId, ShoppingLineId } from '#core/domain/ids';
import type { SavedShoppingLine } from '#core/domain/shopping';
import { type Result, success } from '#core/result';
import { coverNeeds } from '#core/stash/shopping/cover-needs';
import { shoppingLines } from '#core/stash/shopping/shopping-lines';
import { yardageStep } from '#core/units/format-length';
import { recordChange } from '../history/changes';
import { settingsInUse } from '../workshop/settings-in-use';
import {
  allRows,
  insertRow,
  oneRow,
  type ReadableStore,
  updateRow,
  write,
  type WritableStore,
} from '../base/handles';
import { findFabric, findProject, notFound } from '../base/lookups';
import { idOf, idOrNullOf, textOf, textOrNullOf } from '../base/rows';
import { needsOfProjects } from './needs';
import { stashOnHand } from './stash-on-hand';

/** What to buy, worked out from the projects and the stash as they are now. */
export function listShopping(store: ReadableStore): ShoppingList {
  const settings = settingsInUse(store);
  const { needs, leftOut } = needsOfProjects(store, settings.fabricWidth);
  const { fabrics, pieces, used } = stashOnHand(
    store,
    needs.flatMap(({ fabricId }) => fabricId ?? []),
  );
  const step = yardageStep({ system: settings.unitSystem, inchStep: settings.inchStep });
  return {
    lines: shoppingLines(coverNeeds(needs, pieces, used), fabrics, step),
    own: ownLines(store),
    leftOut,
  };
}

function ownLines(store: ReadableStore): readonly SavedShoppingLine[] {
  const sql = `SELECT shopping_line.*, project.name AS project_name FROM shopping_line
    LEFT JOIN project ON project.id = project_id AND project.deleted_at IS NULL ORDER BY added_at, shopping_line.id`;
  return allRows(store, sql).map((row) => ({
    id: idOf<ShoppingLineId>(row, 'id'),
    words: textOf(row, 'words'),
    howMuch: textOf(row, 'how_much'),
    supplier: textOf(row, 'supplier'),
    projectId: idOrNullOf<ProjectId>(row, 'project_id'),
    projectName: textOrNullOf(row, 'project_name'),
  }));
}

type Choice = ChannelInput<'shopping:choose'>['choice'];
type NeedNamed = Omit<ChannelInput<'shopping:choose'>, 'choice'>;

export function chooseForNeed(
  store: ReadableStore,
  { choice, ...need }: ChannelInput<'shopping:choose'>,
): Result<Changed, Problem> {
  const project = findProject(store, need.projectId);
  if (!project.ok) return project;
  const fabric = choice?.kind === 'fabric' ? findFabric(store, choice.fabricId) : null;
  if (fabric?.ok === false) return fabric;
  return recordChange(store, choiceWords(choice, need.name, project.value.name), (writable) => {
    saveChoice(writable, need, choice);
    return success({});
  });
}

function choiceWords(choice: Choice, name: string, project: string): string {
  switch (choice?.kind) {
    case 'leave-out':
      return `Took “${name}” for “${project}” off the shopping list`;
    case 'fabric':
    case 'new-fabric':
      return `Chose a fabric for “${name}” of “${project}”`;
    case undefined:
      return `Put “${name}” for “${project}” back on the shopping list`;
  }
}

/** Saves what was chosen for a need, in place of an earlier choice. */
export function saveChoice(store: WritableStore, need: NeedNamed, choice: Choice): void {
  const { projectId, source, name } = need;
  const before = oneRow(
    store,
    'SELECT id FROM need_choice WHERE project_id = ? AND source = ? AND name = ?',
    projectId,
    source,
    name,
  );
  if (choice === null) {
    if (before !== undefined) write(store, 'DELETE FROM need_choice WHERE id = ?', textOf(before, 'id'));
    return;
  }
  const columns = { choice: choice.kind, fabric_id: choice.kind === 'fabric' ? choice.fabricId : null };
  if (before !== undefined) updateRow(store, 'need_choice', textOf(before, 'id'), columns);
  else {
    const id = store.clockAndIds.newId();
    insertRow(store, 'need_choice', { id, project_id: projectId, source, name, ...columns });
  }
}

/** Adds a shopping line of the maker's own, or changes one. */
export function saveShoppingLine(
  store: ReadableStore,
  { lineId, details }: ChannelInput<'shopping:save-line'>,
): Result<ChannelOutput<'shopping:save-line'>, Problem> {
  if (lineId !== null && findLine(store, lineId) === null) return notFound('shopping-line');
  if (details.projectId !== null) {
    const project = findProject(store, details.projectId);
    if (!project.ok) return project;
  }
  const columns = {
    words: details.words,
    how_much: details.howMuch,
    supplier: details.supplier,
    project_id: details.projectId,
  };
  const words =
    lineId === null
      ? `Added “${details.words}” to the shopping list`
      : `Changed “${details.words}” on the shopping list`;
  return recordChange(store, words, (writable) => {
    const id = lineId ?? (store.clockAndIds.newId() as ShoppingLineId);
    if (lineId !== null) updateRow(writable, 'shopping_line', id, columns);
    else insertRow(writable, 'shopping_line', { id, ...columns, added_at: store.clockAndIds.now() });
    return success({ lineId: id });
  });
}

export function deleteShoppingLine(
  store: ReadableStore,
  { lineId }: ChannelInput<'shopping:delete-line'>,
): Result<Changed, Problem> {
  const words = findLine(store, lineId);
  if (words === null) return notFound('shopping-line');
  return recordChange(store, `Deleted “${words}” from the shopping list`, (writable) => {
    write(writable, 'DELETE FROM shopping_line WHERE id = ?', lineId);
    return success({});
  });
}

/** The words of a shopping line; null if there is no such line. */
export function findLine(store: ReadableStore, id: ShoppingLineId): string | null {
  const row = oneRow(store, 'SELECT words FROM shopping_line WHERE id = ?', id);
  return row === undefined ? null : textOf(row, 'words');
}
