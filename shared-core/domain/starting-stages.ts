import { CAUTIONS } from './cautions';
import type { PlannedStage } from './stage';
import type { StageKind } from './stage-kinds';

/**
 * The stages of the starting plans. Their minutes and lines are common practice. The minutes are for the typical piece
 * of `learned/size-estimate.ts`; a project starts with those for its own size, and the maker's own clock corrects them. A list is
 * read at the table, so it has 12 lines at most: what has to do with numbers is in the steps of the stage instead.
 */
export const PIECING: PlannedStage = {
  kind: 'piecing',
  name: 'Piece the top',
  estimateMinutes: 600,
  checklist: [
    line('Fabrics chosen, all of them prewashed or none of them'),
    line('Enough of each fabric, with the safety extra'),
    line(`Fresh blade in the rotary cutter. ${CAUTIONS.rotaryBlade}`),
    line('Strong colors tried wet on white fabric for bleeding'),
    line(
      'Border strips cut first, to width only; to length once the pressed top is measured through the middle',
    ),
    line('First block sewn and measured before the rest is cut'),
    line(CAUTIONS.iron),
    line('Seams pressed so that they nest, or open where many meet; blocks trimmed'),
    line('Layout photographed before the rows are sewn; one-way prints all upright'),
    line('Top pressed, loose threads trimmed, outer edge stay-stitched'),
  ],
};

/** A top that is slit later: where the slit runs is decided while its seams are sewn. */
export const SLIT_PIECING: PlannedStage = {
  ...PIECING,
  checklist: [...PIECING.checklist, line('Slit planned: beside the seams, or that one seam left open')],
};

export const LONGARM: PlannedStage = {
  kind: 'longarm',
  name: 'Quilting, sent out',
  estimateMinutes: 90,
  checklist: [
    gate('Top measured; backing and batting larger on every side'),
    line('Pins taken out and counted; layers not pinned or basted together'),
    line('Quilter asked how much larger the backing must be, and which way its seams run'),
    line('Top edge marked on quilt top and backing'),
    line('Quilting design, thread and density written down and packed'),
    line('Photo taken before it leaves the house'),
    line('When it is back: checked on both sides in good light'),
  ],
};

/** A top that gets a hole after the quilting. */
export const RING_LONGARM: PlannedStage = {
  ...LONGARM,
  checklist: [
    ...LONGARM.checklist,
    line('Hole and slit not cut, curved edge not trimmed: that comes after the quilting'),
    line('Quilter told where hole and slit will be, so that no motif is cut'),
  ],
};

export const HOME_QUILTING: PlannedStage = {
  kind: 'home-quilting',
  name: 'Quilt at home',
  estimateMinutes: 360,
  checklist: [
    gate('Backing and batting larger than the top on every side'),
    line('Layers smoothed and basted; pins counted'),
    line('Stitch tried on a scrap of the same layers'),
    line(`Fresh needle. ${CAUTIONS.machineNeedle}`),
    line('Pins taken out and counted again; none left for children or pets to find'),
  ],
};

const QUILTED = gate('Quilting finished and ends secured');
const TRIMMED: PlannedStage['checklist'] = [
  line(`Edge trimmed straight. ${CAUTIONS.rotaryBlade}`),
  line('Corners squared with a large ruler, then the layers basted around the edge'),
];
const SEWN_ON: PlannedStage['checklist'] = [
  line('Edge measured on the quilt itself'),
  line('Bias from a striped or one-way print cut from a single layer'),
  line('Strips joined and pressed; iron set down away from the fabric'),
  line('Hanging sleeve and label, if it gets them, sewn in with the binding'),
  line('Binding started in the middle of a side; no join meets a corner'),
  line('Curved edge: strip eased in, never stretched'),
  line('Corners and closing join lie flat'),
];

export const OUTER_BINDING: PlannedStage = {
  kind: 'outer-binding',
  name: 'Bind the outside',
  estimateMinutes: 150,
  checklist: [QUILTED, ...TRIMMED, ...SEWN_ON],
};

const CENTER_MEASURED = gate('Center measured twice, on two days or in two ways');
const HOLE_TRIED = gate('Diameter tried on a practice piece');
const WIDEST_MEASURED = line('Whatever has to pass through measured at its widest: foot, legs, crank, knob');
const LINES_HELD = line('Quilting lines that are cut through held by a short stitch beside the cut');
const CAREFUL_CUT: PlannedStage['checklist'] = [
  line('Nothing but this quilt under the line: backing smooth, table clear'),
  line(`Small sharp scissors or a fresh blade. ${CAUTIONS.rotaryBlade}`),
];
const READY_TO_CUT: PlannedStage['checklist'] = [
  CENTER_MEASURED,
  HOLE_TRIED,
  gate('Stay-stitched within the seam allowance, just beside the seam line'),
  WIDEST_MEASURED,
  LINES_HELD,
  ...CAREFUL_CUT,
];
/** Ties and tape go into the seam of the binding, so the closure is chosen before that is sewn. */
const CLOSURE = line(
  'Closure of the slit: ties or tape caught in the binding, buttons or snaps sewn on later',
);

export const CENTER_CUT: PlannedStage = {
  kind: 'center-cut',
  name: 'Cut the center',
  estimateMinutes: 60,
  checklist: [gate('Outside is bound', 'outer-binding'), ...READY_TO_CUT],
};

/** Where one binding goes around the edge, the slit and the hole: the cut comes first, the binding after it. */
export const CUT_BEFORE_BINDING: PlannedStage = {
  ...CENTER_CUT,
  name: 'Trim the edge, cut slit and hole',
  estimateMinutes: 90,
  checklist: [
    QUILTED,
    ...TRIMMED,
    ...READY_TO_CUT,
    line('Slit drawn from edge to center; where it would follow a seam, cut beside the seam'),
    gate('Both sides of the slit stay-stitched'),
  ],
};

export const BIND_IN_ONE: PlannedStage = {
  ...OUTER_BINDING,
  name: 'Bind edge, slit and hole in one',
  estimateMinutes: 210,
  checklist: [
    gate('Slit and hole are cut', 'center-cut'),
    ...SEWN_ON,
    line('Around the hole: strip just taut, never pulled hard'),
    CLOSURE,
  ],
};

export const INNER_BINDING: PlannedStage = {
  kind: 'inner-binding',
  name: 'Bind the hole',
  estimateMinutes: 120,
  checklist: [
    gate('Center is cut', 'center-cut'),
    line('Strip cut on the bias and steamed into a curve'),
    line('Strip tried on the practice piece'),
    line('Sewn just taut, never pulled hard; clipped only as far as the stay-stitching'),
    line('Pins counted in and out'),
  ],
};

/** Where the binding is sewn to the drawn lines: nothing is cut until it holds the edge. */
export const BIND_DRAWN_LINES: PlannedStage = {
  ...INNER_BINDING,
  name: 'Sew the binding to the drawn hole and slit',
  checklist: [
    QUILTED,
    CENTER_MEASURED,
    WIDEST_MEASURED,
    HOLE_TRIED,
    gate('Hole and slit drawn and basted, not cut'),
    line('Strip cut on the bias and steamed into a curve'),
    line('Strip sewn along both sides of the slit and, just taut, around the hole'),
    CLOSURE,
    line('Pins counted in and out'),
  ],
};

export const CUT_AFTER_BINDING: PlannedStage = {
  ...CENTER_CUT,
  name: 'Cut slit and hole inside the binding',
  checklist: [gate('Binding is sewn to the drawn lines', 'inner-binding'), ...CAREFUL_CUT],
};

export const HAND_FINISH: PlannedStage = {
  kind: 'hand-finish',
  name: 'Finish by hand',
  estimateMinutes: 240,
  checklist: [
    line('Binding turned and sewn down by hand, or by machine if it is washed often'),
    line('Label sewn on, if it did not go in with the binding'),
    line('Needles and pins counted; none left in the quilt'),
    line('Marks taken out as the pen says, and dry, before any iron'),
    line('Pressed, with a cool iron where the batting is polyester; iron off'),
    line('If it will be used near a lit tree, candle or stove: a written caution packed with it'),
    line('Care card written; a color-catching sheet for the first wash packed with it'),
    line('Photographed, packed, handed over'),
  ],
};

function line(text: string): PlannedStage['checklist'][number] {
  return { text, isGate: false, closedBy: null };
}

/** The stage waits until the line is ticked, or until a stage of the kind `closedBy` is done. */
function gate(text: string, closedBy: StageKind | null = null): PlannedStage['checklist'][number] {
  return { text, isGate: true, closedBy };
}
