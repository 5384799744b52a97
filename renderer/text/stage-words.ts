import type { StageGlance } from '#core/contract/projects';
import { currentStage, type Stage, type StageKind, type StageState } from '#core/domain/stage';

export const STAGE_KIND_WORDS: Readonly<Record<StageKind, string>> = {
  piecing: 'Piecing',
  longarm: 'Quilting, sent out',
  'home-quilting': 'Quilting at home',
  'outer-binding': 'Outer binding',
  'center-cut': 'Center cut',
  'inner-binding': 'Inner binding',
  'hand-finish': 'Hand finish',
  other: 'Something else',
};

/** A state as it stands beside a stage's name. */
export const STAGE_STATE_WORDS: Readonly<Record<StageState, string>> = {
  planned: 'planned',
  'in-hand': 'in hand',
  out: 'away',
  done: 'done',
  skipped: 'skipped',
};

/** The one thing that moves a stage on. `here` is done with one press; the other needs the stage's own page. */
export type StageMove =
  | { readonly how: 'here'; readonly verb: string; readonly to: StageState }
  | { readonly how: 'on-its-page'; readonly verb: string };

type MovableStage = Pick<StageGlance, 'kind' | 'state' | 'name' | 'isGateShut'>;

const START: Readonly<Record<StageKind, string>> = {
  piecing: 'Start piecing',
  longarm: 'Get it ready to send',
  'home-quilting': 'Start quilting',
  'outer-binding': 'Start the outer binding',
  'center-cut': 'Cut the center',
  'inner-binding': 'Start the inner binding',
  'hand-finish': 'Start the hand finish',
  other: 'Start',
};

const FINISH: Readonly<Record<StageKind, string>> = {
  piecing: 'The top is done',
  longarm: 'Send it out',
  'home-quilting': 'Quilting is done',
  'outer-binding': 'The edge is bound',
  'center-cut': 'The center is cut',
  'inner-binding': 'The hole is bound',
  'hand-finish': 'It is finished',
  other: 'Done',
};

/** The move that a stage waits for, as a verb on a button; null for one that is over. */
export function stageMove(stage: MovableStage): StageMove | null {
  switch (stage.state) {
    case 'planned':
      return stage.isGateShut
        ? {
            how: 'on-its-page',
            verb: stage.kind === 'center-cut' ? 'Check before cutting' : 'Check before you start',
          }
        : { how: 'here', verb: named(START, stage), to: 'in-hand' };
    case 'in-hand':
      return stage.kind === 'longarm'
        ? { how: 'on-its-page', verb: FINISH.longarm }
        : { how: 'here', verb: named(FINISH, stage), to: 'done' };
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

/** How far a piece is, in one sentence for a reader who does not see the drawing. */
export function progressWords(stages: readonly Pick<Stage, 'state' | 'name'>[]): string {
  const now = currentStage(stages);
  const rest = stages
    .filter((stage) => stage !== now && stage.state === 'planned')
    .map((stage) => stage.name);
  const nowWords = now === null ? '' : ` Now: ${now.name}, ${STAGE_STATE_WORDS[now.state]}.`;
  const restWords = rest.length === 0 ? '' : ` Then: ${rest.join(', ')}.`;
  return `${progressCount(stages)}.${nowWords}${restWords}`;
}

function named(words: Readonly<Record<StageKind, string>>, stage: MovableStage): string {
  return stage.kind === 'other' ? `${words.other}: ${stage.name}` : words[stage.kind];
}
