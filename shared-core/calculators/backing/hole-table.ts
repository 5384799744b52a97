import type { Quantity, Table } from '../explanation';
import { lengthDown, lengthNearest, wordsQuantity } from '../quantities';
import type { BackingInput } from './input';
import { type SeamByHole, seamsByHole } from './seams';
import type { BackingDetails, PanelWay } from './work';

/** The seams of the chosen way that a hole has near it. */
export function holeSeams(input: BackingInput, details: BackingDetails, best: PanelWay) {
  return seamsByHole(input, best, best.panelsRun === 'up' ? details.width : details.length);
}

/** Where each seam is beside the hole; nothing without a hole or a seam. */
export function holeTables(input: BackingInput, details: BackingDetails, best: PanelWay): readonly Table[] {
  const seams = holeSeams(input, details, best);
  if (seams.length === 0) return [];
  const edge = best.panelsRun === 'up' ? 'From the left edge of the backing' : 'From its top edge';
  return [
    {
      title: 'Seams and the hole',
      columns: [edge, 'From the middle', 'Clear of the hole by'],
      rows: seams.map((seam) => [
        lengthNearest(seam.fromEdge),
        lengthDown(seam.fromMiddle),
        clearQuantity(seam),
      ]),
    },
  ];
}

function clearQuantity({ clear }: SeamByHole): Quantity {
  return clear < 0 ? wordsQuantity('crosses it') : lengthDown(clear);
}
