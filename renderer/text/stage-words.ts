import type { StageGlance } from '#core/contract/projects';
import { currentStage, type Stage, type StageState } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';

/** A state as it is shown beside a stage's name. */
export const STAGE_STATE_WORDS: Readonly<Record<StageState, string>> = {
  planned: 'planned',
  'in-hand': 'in progress',
  out: 'at the quilter',
  done: 'done',
  skipped: 'skipped',
};

/** The next move of a stage. `here` takes one press; `on-its-page` needs the stage's own page. */
export type StageMove =
  | { readonly how: 'here'; readonly verb: string; readonly to: StageState }
  | { readonly how: 'on-its-page'; readonly verb: string };

type MovableStage = Pick<StageGlance, 'kind' | 'state' | 'name' | 'isGateShut'>;

/** The next move of a stage, as a verb on a button; null for a stage that is over. */
export function stageMove(stage: MovableStage): StageMove | null {
  const { start, finish, isSentOut, isIrreversible } = stageKindRecord(stage.kind);
  switch (stage.state) {
    case 'planned':
      return stage.isGateShut
        ? {
            how: 'on-its-page',
            verb: isIrreversible ? 'Check before cutting' : 'Check before you start',
          }
        : { how: 'here', verb: named(start, stage), to: 'in-hand' };
    case 'in-hand':
      return isSentOut
        ? { how: 'on-its-page', verb: finish }
        : { how: 'here', verb: named(finish, stage), to: 'done' };
    case 'out':
      return { how: 'on-its-page', verb: 'It is back' };
    case 'done':
    case 'skipped':
      return null;
  }
}

/** "3 of 6 stages done", skipped ones left out of both numbers. */
export function progressCount(stages: readonly Pick<Stage, 'state'>[]): string {
  const needed = stages.filter((stage) => stage.state !== 'skipped');
  const done = needed.filter((stage) => stage.state === 'done').length;
  if (needed.length === 0) return 'No stages yet';
  return done === needed.length
    ? 'All stages done'
    : `${String(done)} of ${String(needed.length)} stages done`;
}

/** How far a project is, in words for a screen reader. */
export function progressWords(stages: readonly Pick<Stage, 'state' | 'name'>[]): string {
  const now = currentStage(stages);
  const rest = stages
    .filter((stage) => stage !== now && stage.state === 'planned')
    .map((stage) => stage.name);
  const nowWords = now === null ? '' : ` Now: ${now.name}, ${STAGE_STATE_WORDS[now.state]}.`;
  const restWords = rest.length === 0 ? '' : ` Then: ${rest.join(', ')}.`;
  return `${progressCount(stages)}.${nowWords}${restWords}`;
}

/** A stage of the maker's own is called by its name. */
function named(verb: string, { kind, name }: Pick<MovableStage, 'kind' | 'name'>): string {
  return kind === 'other' ? `${verb}: ${name}` : verb;
}
