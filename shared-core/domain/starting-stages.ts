import type { PlannedStage } from './stage';
import type { StageKind } from './stage-kinds';

/** The stages the starting plans are made of; their minutes are common practice, to be put right by the maker's clock. */
export const PIECING: PlannedStage = {
  kind: 'piecing',
  name: 'Piece the top',
  estimateMinutes: 600,
  checklist: [
    line('Fabrics chosen, washed or not as the whole piece will be'),
    line('Enough of every fabric, with the safety extra'),
    line('Rotary cutter: fresh blade, cut away from yourself, hand flat and clear of the edge'),
    line('Blade closed whenever the cutter is put down'),
    line('First block sewn and measured before the rest is cut'),
    line('Iron and steam burn: press on a heat-safe place and switch off'),
    line('Top pressed, loose threads off, outer seams stay-stitched'),
  ],
};

export const LONGARM: PlannedStage = {
  kind: 'longarm',
  name: 'Quilting, sent out',
  estimateMinutes: 90,
  checklist: [
    gate('Top measured, backing and batting larger on every side'),
    line('Pins taken out and counted'),
    line('Top of the quilt marked on top and backing'),
    line('Pattern, thread and density written down and sent along'),
    line('Photo taken before it leaves the house'),
    line('Back: looked over on both sides in good light'),
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
    line('Fresh needle; keep fingers clear of it while the machine runs'),
    line('Pins taken out and counted again; none left for children or pets to find'),
  ],
};

export const OUTER_BINDING: PlannedStage = {
  kind: 'outer-binding',
  name: 'Bind the outside',
  estimateMinutes: 150,
  checklist: [
    gate('Quilting finished and ends secured'),
    line('Edge trimmed true; blade closed when the cutter is put down'),
    line('Edge measured on the piece itself'),
    line('Strips joined and pressed; iron put away from the fabric'),
    line('Corners and closing join lie flat'),
  ],
};

export const CENTER_CUT: PlannedStage = {
  kind: 'center-cut',
  name: 'Cut the center',
  estimateMinutes: 60,
  checklist: [
    gate('Outside is bound', 'outer-binding'),
    gate('Center measured twice, on two different days or by two ways'),
    gate('Diameter tried on a practice piece'),
    gate('Seam line stay-stitched'),
    line('Nothing but this piece lies under the line: backing smooth, table clear'),
    line('Sharp small scissors or a fresh blade; hand flat and clear of the edge'),
  ],
};

/** What a slit adds to the center cut. */
export const SLIT_LINES: PlannedStage['checklist'] = [
  gate('Slit drawn from edge to center, along a seam where there is one'),
  gate('Both sides of the slit stay-stitched'),
];

export const INNER_BINDING: PlannedStage = {
  kind: 'inner-binding',
  name: 'Bind the hole',
  estimateMinutes: 120,
  checklist: [
    gate('Center is cut', 'center-cut'),
    line('Strip cut on the bias; a narrow strip for a tight curve'),
    line('Strip tried on the practice piece'),
    line('Sewn at its natural length, never stretched; clipped only as far as the stay-stitching'),
    line('Pins counted in and out'),
  ],
};

export const HAND_FINISH: PlannedStage = {
  kind: 'hand-finish',
  name: 'Finish by hand',
  estimateMinutes: 240,
  checklist: [
    line('Binding turned and sewn down by hand'),
    line('Label sewn on'),
    line('Needles and pins counted; none left in the piece'),
    line('Pressed; iron off'),
    line('If it will lie near a lit tree, candle or stove: words of caution handed over with it'),
    line('Photographed, packed, handed over'),
  ],
};

function line(text: string): PlannedStage['checklist'][number] {
  return { text, isGate: false, closedBy: null };
}

/** Closes the stage until it is ticked, or until the stage that closes it is done. */
function gate(text: string, closedBy: StageKind | null = null): PlannedStage['checklist'][number] {
  return { text, isGate: true, closedBy };
}
