import type { Quantity, Table } from '#core/calculators/explanation';
import {
  degreesQuantity,
  fineLength,
  lengthDown,
  lengthNearest,
  wordsQuantity,
} from '#core/calculators/quantities';
import type { HoleCircles, PatchClearance } from './work';

export function clearanceTable(details: PatchClearance): Table {
  const row = (words: string, radius: number, left: number): readonly Quantity[] => [
    wordsQuantity(words),
    lengthNearest(radius),
    lengthDown(left),
  ];
  const { cutRadius, seamRadius, clearanceAtCut, clearanceAtSeam, clearanceAtBack } = details;
  return {
    title: 'Fabric left in the patch',
    columns: ['At', 'Radius', 'Left'],
    rows: [
      row('the cut edge', cutRadius, clearanceAtCut),
      row('the seam line', seamRadius, clearanceAtSeam),
      row('the fold on the back', details.backRadius, clearanceAtBack),
      row('the seam line, if the center is off', seamRadius, details.worstClearance),
    ],
  };
}

/**
 * Marks on a project folded twice, all one radius from the folded corner, measured along both folds. They are rounded toward the
 * corner: a hole cut too small can still be made larger.
 */
export function quarterTable({ cutRadius }: HoleCircles): Table {
  return {
    title: 'Quarter template: the cut line on the project folded twice',
    columns: ['Angle from one fold', 'Along that fold', 'Away from it', 'From the folded corner'],
    rows: [0, 15, 30, 45, 60, 75, 90].map((degrees): readonly Quantity[] => {
      const angle = (degrees * Math.PI) / 180;
      return [
        degreesQuantity(degrees),
        fineLength(cutRadius * Math.cos(angle), 'down'),
        fineLength(cutRadius * Math.sin(angle), 'down'),
        fineLength(cutRadius, 'down'),
      ];
    }),
  };
}
