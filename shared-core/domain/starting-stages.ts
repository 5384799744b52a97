import { CAUTIONS } from './cautions';
import type { PlannedStage } from './stage';
import type { StageKind } from './stage-kinds';

/** The stages of the starting plans. Their minutes are common practice; the maker's own clock corrects them. */
export const PIECING: PlannedStage = {
  kind: 'piecing',
  name: 'Piece the top',
  estimateMinutes: 600,
  checklist: [
    line('Fabrics chosen, all of them prewashed or none of them'),
    line('Enough of each fabric, with the safety extra'),
    line(`Fresh blade in the rotary cutter. ${CAUTIONS.rotaryBlade}`),
    line('Strong colors tried wet on white fabric for bleeding'),
    line('First block sewn and measured before the rest is cut'),
    line(CAUTIONS.iron),
    line('Top pressed, loose threads trimmed, outer edge stay-stitched'),
  ],
};

export const LONGARM: PlannedStage = {
  kind: 'longarm',
  name: 'Quilting, sent out',
  estimateMinutes: 90,
  checklist: [
    gate('Top measured; backing and batting larger on every side'),
    line('Pins taken out and counted; layers not pinned or basted together'),
    line('Quilter asked how much larger the backing must be'),
    line('Top edge marked on quilt top and backing'),
    line('Quilting design, thread and density written down and packed'),
    line('Photo taken before it leaves the house'),
    line('When it is back: checked on both sides in good light'),
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

export const OUTER_BINDING: PlannedStage = {
  kind: 'outer-binding',
  name: 'Bind the outside',
  estimateMinutes: 150,
  checklist: [
    gate('Quilting finished and ends secured'),
    line(`Edge trimmed straight. ${CAUTIONS.rotaryBlade}`),
    line('Corners squared with a large ruler, then the layers basted around the edge'),
    line('Edge measured on the quilt itself'),
    line('Binding started in the middle of a side; no join meets a corner'),
    line('Strips joined and pressed; iron set down away from the fabric'),
    line('Corners and closing join lie flat'),
  ],
};

export const CENTER_CUT: PlannedStage = {
  kind: 'center-cut',
  name: 'Cut the center',
  estimateMinutes: 60,
  checklist: [
    gate('Outside is bound', 'outer-binding'),
    gate('Center measured twice, on two days or in two ways'),
    gate('Diameter tried on a practice piece'),
    gate('Stay-stitched within the seam allowance, just beside the seam line'),
    line('Nothing but this quilt under the line: backing smooth, table clear'),
    line(`Small sharp scissors or a fresh blade. ${CAUTIONS.rotaryBlade}`),
  ],
};

/** What a slit adds to the center cut. */
export const SLIT_LINES: PlannedStage['checklist'] = [
  line('Slit drawn from edge to center; where it would follow a seam, cut beside the seam'),
  gate('Both sides of the slit stay-stitched'),
  line('Closure of the slit chosen (ties, buttons, tape) before its binding is turned'),
];

/** Where one binding goes around the edge, the slit and the hole: the cut comes first, the binding after it. */
export const CUT_BEFORE_BINDING: PlannedStage = {
  ...CENTER_CUT,
  name: 'Trim the edge, cut slit and hole',
  checklist: [gate('Quilting finished and ends secured'), ...withoutClosedBy(CENTER_CUT), ...SLIT_LINES],
};

export const BIND_IN_ONE: PlannedStage = {
  ...OUTER_BINDING,
  name: 'Bind edge, slit and hole in one',
  checklist: [gate('Slit and hole are cut', 'center-cut'), ...OUTER_BINDING.checklist],
};

export const INNER_BINDING: PlannedStage = {
  kind: 'inner-binding',
  name: 'Bind the hole',
  estimateMinutes: 120,
  checklist: [
    gate('Center is cut', 'center-cut'),
    line('Strip cut on the bias'),
    line('Strip tried on the practice piece'),
    line('Sewn at its natural length, never stretched; clipped only as far as the stay-stitching'),
    line('Pins counted in and out'),
  ],
};

/** Where the binding is sewn to the drawn lines: nothing is cut until it holds the edge. */
export const BIND_DRAWN_LINES: PlannedStage = {
  ...INNER_BINDING,
  name: 'Sew the binding to the drawn hole and slit',
  checklist: [
    gate('Quilting finished and ends secured'),
    gate('Center measured twice, on two days or in two ways'),
    gate('Diameter tried on a practice piece'),
    gate('Hole and slit drawn and basted, not cut'),
    line('Strip cut on the bias'),
    line('Strip sewn along both sides of the slit and around the hole, at its natural length'),
    line('Pins counted in and out'),
  ],
};

export const CUT_AFTER_BINDING: PlannedStage = {
  ...CENTER_CUT,
  name: 'Cut slit and hole inside the binding',
  checklist: [
    gate('Binding is sewn to the drawn lines', 'inner-binding'),
    ...CENTER_CUT.checklist.filter(({ isGate }) => !isGate),
    line('Closure of the slit chosen (ties, buttons, tape) before its binding is turned'),
  ],
};

export const HAND_FINISH: PlannedStage = {
  kind: 'hand-finish',
  name: 'Finish by hand',
  estimateMinutes: 240,
  checklist: [
    line('Binding turned and sewn down by hand'),
    line('Label sewn on'),
    line('Needles and pins counted; none left in the quilt'),
    line('Marks taken out as the pen says, and dry, before any iron'),
    line('Pressed, with a cool iron where the batting is polyester; iron off'),
    line('If it will be used near a lit tree, candle or stove: a written caution packed with it'),
    line('Photographed, packed, handed over'),
  ],
};

/** The lines of a stage that wait for no other stage. */
function withoutClosedBy({ checklist }: PlannedStage): PlannedStage['checklist'] {
  return checklist.filter(({ closedBy }) => closedBy === null);
}

function line(text: string): PlannedStage['checklist'][number] {
  return { text, isGate: false, closedBy: null };
}

/** The stage waits until the line is ticked, or until a stage of the kind `closedBy` is done. */
function gate(text: string, closedBy: StageKind | null = null): PlannedStage['checklist'][number] {
  return { text, isGate: true, closedBy };
}
