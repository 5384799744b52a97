import type { Caution } from './cautions';
import type { WorkMeasure } from './clock';

/** What a stage of one kind is: every list of kinds elsewhere is worked out from these properties. */
export interface StageKindRecord {
  /** The kind by name, as on a list to choose from. */
  readonly words: string;
  /** The verb on the button that starts it, and the one that ends it. */
  readonly start: string;
  readonly finish: string;
  /** The project leaves the house: the stage has trips, and waiting for the quilter is part of it. */
  readonly isSentOut: boolean;
  /** What it cuts cannot be undone, so its page and its gate say so. */
  readonly isIrreversible: boolean;
  /** The template of the hole is printed from its page. */
  readonly usesHoleTemplate: boolean;
  /** Patches are cut in it: the cutting plan of the project is opened from its page, and its cuts are booked on it. */
  readonly cutsPatches: boolean;
  /** What of the project its hours grow with, as long as nothing better is known; null: they are the same for every size. */
  readonly growsWith: 'area' | 'edge' | 'hole' | 'every-edge' | null;
  /** What of its work can be counted for an estimate by the maker's own rates. */
  readonly estimatedBy: readonly WorkMeasure[];
  /** The one whose rate must be known, since the others say too little without it; null: any of them will do. */
  readonly mainMeasure: WorkMeasure | null;
  /** Its hand sewing is measured on the project where no saved answer says how much there is. */
  readonly isSewnByHand: boolean;
  /** The measure offered first when time is logged; null: none. */
  readonly usuallyCounted: WorkMeasure | null;
  /** What to be careful with, on every sheet and page that shows the stage. */
  readonly cautions: readonly Caution[];
}

const AT_HOME = {
  isSentOut: false,
  isIrreversible: false,
  usesHoleTemplate: false,
  cutsPatches: false,
  growsWith: null,
  estimatedBy: [],
  mainMeasure: null,
  isSewnByHand: false,
  usuallyCounted: null,
} as const;

/**
 * The kinds of stages, in the order of a project's usual way. A new kind is one record here and a migration that adds its
 * word to the CHECK of `stage` and `checklist_item`.
 */
export const STAGE_KINDS = {
  piecing: {
    ...AT_HOME,
    words: 'Piecing',
    start: 'Start piecing',
    finish: 'The top is done',
    cutsPatches: true,
    growsWith: 'area',
    estimatedBy: ['blocks', 'cuts'],
    mainMeasure: 'blocks',
    usuallyCounted: 'blocks',
    cautions: ['rotaryBlade', 'usedBlades', 'iron', 'machineNeedle', 'pins'],
  },
  longarm: {
    ...AT_HOME,
    words: 'Quilting, sent out',
    start: 'Get it ready to send',
    finish: 'Send it out',
    isSentOut: true,
    cautions: ['rotaryBlade', 'iron', 'machineNeedle', 'pins'],
  },
  'home-quilting': {
    ...AT_HOME,
    words: 'Quilting at home',
    start: 'Start quilting',
    finish: 'Quilting is done',
    growsWith: 'area',
    cautions: ['rotaryBlade', 'iron', 'machineNeedle', 'usedBlades', 'pins'],
  },
  'outer-binding': {
    ...AT_HOME,
    words: 'Outer binding',
    start: 'Start the outer binding',
    finish: 'The edge is bound',
    growsWith: 'edge',
    cautions: ['rotaryBlade', 'usedBlades', 'iron', 'machineNeedle', 'pins'],
  },
  'center-cut': {
    ...AT_HOME,
    words: 'Center cut',
    start: 'Cut the center',
    finish: 'The center is cut',
    isIrreversible: true,
    usesHoleTemplate: true,
    cautions: ['rotaryBlade', 'scissors', 'machineNeedle', 'usedBlades', 'pins'],
  },
  'inner-binding': {
    ...AT_HOME,
    words: 'Inner binding',
    start: 'Start the inner binding',
    finish: 'The hole is bound',
    growsWith: 'hole',
    usesHoleTemplate: true,
    usuallyCounted: 'hand',
    cautions: ['rotaryBlade', 'iron', 'machineNeedle', 'pins'],
  },
  'hand-finish': {
    ...AT_HOME,
    words: 'Hand finish',
    start: 'Start the hand finish',
    finish: 'It is finished',
    growsWith: 'every-edge',
    estimatedBy: ['hand'],
    mainMeasure: 'hand',
    isSewnByHand: true,
    usuallyCounted: 'hand',
    cautions: ['handNeedle', 'pins', 'iron', 'flame', 'tree'],
  },
  other: {
    ...AT_HOME,
    words: 'Something else',
    start: 'Start',
    finish: 'Done',
    estimatedBy: ['blocks', 'hand', 'cuts'],
    cautions: [],
  },
} as const satisfies Readonly<Record<string, StageKindRecord>>;

export type StageKind = keyof typeof STAGE_KINDS;

/** The record of a kind, with the properties that all kinds have. */
export function stageKindRecord(kind: StageKind): StageKindRecord {
  return STAGE_KINDS[kind];
}
