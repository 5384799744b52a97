import type { Quantity, Step, Table, Term } from '../explanation';
import { lengthDown, lengthUp, percentQuantity, wordsQuantity } from '../quantities';
import type { Length } from '#core/units/length';
import {
  type BoundCurve,
  type CurveStrains,
  type Grain,
  seamRadius,
  type StrainLimits,
  strainVerdict,
  smallestRadius,
  widestSeam,
  widestStrip,
} from './strain';
import { foldReach, stripWidthFor } from '../binding/strip-width';
import { derived, term } from '../working/terms';

/** The three strains of a strip on a curve, each with its formula. */
export function strainSteps(curve: BoundCurve, strains: CurveStrains): readonly Step[] {
  const isInside = curve.side === 'inside';
  const base: Term = {
    symbol: 'q',
    means: isInside ? 'radius of the stitching, r + s' : 'radius of the stitching, R − s',
    quantity: lengthDown(seamRadius(curve)),
  };
  const reach = foldReach(curve.fold, curve.strip, curve.seam);
  const isDouble = curve.fold === 'double';
  return [
    {
      label: 'The fold, while you sew',
      formula: isDouble ? '(w ÷ 2 − s) ÷ q' : '(w − 2s) ÷ q',
      terms: [term(isDouble ? 'w ÷ 2 − s' : 'w − 2s', 'from the seam to the fold', lengthUp(reach)), base],
      result: percentQuantity(100 * strains.sewing),
      rule: derived(
        isInside
          ? 'While it is flat, the fold is on a larger circle than the stitching and has to stretch.'
          : 'While it is flat, the fold is on a smaller circle than the stitching and has to be eased.',
      ),
    },
    {
      label: 'The fabric at the edge, once folded over',
      formula: 's ÷ q',
      terms: [term('s', 'seam allowance', lengthUp(curve.seam)), base],
      result: percentQuantity(100 * strains.edge),
      rule: derived(
        isInside
          ? 'The edge is a smaller circle, so the strip is eased there.'
          : 'The edge is a larger circle, so the strip stretches there.',
      ),
    },
    {
      label: 'The fold on the back, once folded over',
      formula: 'c ÷ q',
      terms: [term('c', 'past the seam on the back', lengthUp(curve.cover)), base],
      result: percentQuantity(100 * strains.back),
      rule: derived(
        isInside
          ? 'On the back, the fold is outside the stitching and stretches.'
          : 'On the back, the fold is inside the stitching and is eased.',
      ),
    },
  ];
}

/** The three strains with a verdict each. */
export function strainTable(
  strains: CurveStrains,
  side: BoundCurve['side'],
  limits: StrainLimits,
  grain: Grain,
): Table {
  const [sewing, edge] = side === 'inside' ? ['stretched', 'eased'] : ['eased', 'stretched'];
  const row = (where: string, how: string, strain: number): readonly Quantity[] => [
    wordsQuantity(where),
    wordsQuantity(how),
    percentQuantity(100 * strain),
    wordsQuantity(strainVerdict(strain, limits, grain)),
  ];
  return {
    title: 'How far the strip has to stretch or ease',
    columns: ['Where', 'How', 'By', 'Verdict'],
    rows: [
      row('the fold, while you sew', sewing, strains.sewing),
      row('the edge, once folded over', edge, strains.edge),
      row('the fold on the back', sewing, strains.back),
    ],
  };
}

interface WhatFits {
  readonly curve: BoundCurve;
  readonly thickness: number;
  readonly limits: StrainLimits;
  readonly grain: Grain;
  readonly cutStep: Length;
}

/** For each limit: the widest strip with this seam, the smallest radius for this strip, and the widest binding that just wraps the edge. */
export function whatFitsTable({ curve, thickness, limits, grain, cutStep }: WhatFits): Table {
  const rows = limitRows(limits, grain).map(([words, percent]): readonly Quantity[] => {
    const most = percent / 100;
    const seam = widestSeam({ ...curve, thickness }, most);
    const wrapping = { seam, thickness, cover: curve.cover };
    const none = wordsQuantity('none');
    return [
      wordsQuantity(`${words}, up to ${percent}%`),
      lengthDown(widestStrip(curve, most), cutStep),
      lengthUp(smallestRadius(curve, most), cutStep),
      seam > 0 ? lengthDown(seam) : none,
      seam > 0 ? lengthDown(stripWidthFor('double', wrapping)) : none,
      seam > 0 ? lengthDown(stripWidthFor('single', wrapping)) : none,
    ];
  });
  return {
    title: 'What goes around',
    columns: [
      'Limit',
      'Widest strip with your seam',
      'Smallest radius for your strip',
      'Widest front that wraps',
      'Its double-fold strip',
      'Its single-fold strip',
    ],
    rows,
  };
}

function limitRows(limits: StrainLimits, grain: Grain): readonly (readonly [string, number])[] {
  if (grain === 'straight') return [['straight grain', limits.straight]];
  return [
    ['easily', limits.comfortable],
    ['with care', limits.hard],
    ['hard', limits.impossible],
  ];
}
