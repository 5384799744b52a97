import type { ProjectGlance, StageGlance } from '#core/contract/projects';
import { currentStage, type StageKind, stageKind } from '#core/domain/stage';
import { STAGE_KIND_WORDS } from '#renderer/text/stage-words';

export type ColumnName = StageKind | 'finished';

export interface BoardColumn {
  readonly name: ColumnName;
  readonly words: string;
  readonly glances: readonly ProjectGlance[];
}

/** Where a piece stands on the board. */
export function columnOf({ stages }: Pick<ProjectGlance, 'stages'>): ColumnName {
  return currentStage(stages)?.kind ?? 'finished';
}

/** One column for each kind of stage that any piece has in its plan, in the order of the shop, and one for what is finished. */
export function boardOf(glances: readonly ProjectGlance[]): readonly BoardColumn[] {
  const kinds = stageKind.options.filter((kind) =>
    glances.some(({ stages }) => stages.some((stage) => stage.kind === kind && stage.state !== 'skipped')),
  );
  const names: readonly ColumnName[] = [...kinds, 'finished'];
  return names.map((name) => ({
    name,
    words: name === 'finished' ? 'Finished' : STAGE_KIND_WORDS[name],
    glances: glances.filter((glance) => columnOf(glance) === name),
  }));
}

/** Where a piece would stand: at one of its stages, or past the last one (null). */
export type Place = { readonly stage: StageGlance } | { readonly stage: null };

/** The places a piece can stand at, in order: its stages without those skipped, and then finished. */
export function placesOf({ stages }: Pick<ProjectGlance, 'stages'>): readonly Place[] {
  return [...stages.filter(({ state }) => state !== 'skipped').map((stage) => ({ stage })), { stage: null }];
}

/** One place on (1) or back (-1); undefined at either end. */
export function placeBeside(glance: Pick<ProjectGlance, 'stages'>, by: -1 | 1): Place | undefined {
  const places = placesOf(glance);
  const now = currentStage(glance.stages);
  const at = places.findIndex(({ stage }) => stage?.id === now?.id);
  return places[at + by];
}

/** The place of a column in a piece's own plan: the next one of its kind, else the last before; undefined where it has none. */
export function placeInColumn(glance: Pick<ProjectGlance, 'stages'>, column: ColumnName): Place | undefined {
  if (column === 'finished') return { stage: null };
  const now = currentStage(glance.stages);
  const places = placesOf(glance);
  const at = places.findIndex(({ stage }) => stage?.id === now?.id);
  const isThere = ({ stage }: Place) => stage?.kind === column;
  return places.slice(at).find(isThere) ?? places.slice(0, at).findLast(isThere);
}
