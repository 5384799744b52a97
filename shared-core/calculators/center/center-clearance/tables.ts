import type { Quantity, Table } from '#core/calculators/explanation';
import { degreesQuantity, lengthDown, lengthNearest, wordsQuantity } from '#core/calculators/quantities';
import type { CenterClearanceDetails } from './input';

export function clearanceTable(details: CenterClearanceDetails): Table {
  const row = (words: string, radius: number, left: number): readonly Quantity[] => [
    wordsQuantity(words),
    lengthNearest(radius),
    lengthDown(left),
  ];
  const { cutRadius, seamRadius, clearanceAtCut, clearanceAtSeam, clearanceAtBack } = details;
  return {
    title: 'Fabric of the patch that is left',
    columns: ['At', 'Radius', 'Left'],
    rows: [
      row('the cut edge', cutRadius, clearanceAtCut),
      row('the seam line', seamRadius, clearanceAtSeam),
      row('the fold on the back', seamRadius + clearanceAtSeam - clearanceAtBack, clearanceAtBack),
      row('the seam line, center off by your accuracy', seamRadius, details.worstClearance),
    ],
  };
}

/** Marks on a piece folded twice: each lies the same way from the folded corner, here measured along both folds. */
export function quarterTable({ cutRadius }: CenterClearanceDetails): Table {
  return {
    title: 'Quarter template: the cut line on a piece folded twice',
    columns: ['From one fold', 'Along that fold', 'Up from it', 'From the folded corner'],
    rows: [0, 15, 30, 45, 60, 75, 90].map((degrees): readonly Quantity[] => {
      const angle = (degrees * Math.PI) / 180;
      return [
        degreesQuantity(degrees),
        lengthNearest(cutRadius * Math.cos(angle)),
        lengthNearest(cutRadius * Math.sin(angle)),
        lengthNearest(cutRadius),
      ];
    }),
  };
}
