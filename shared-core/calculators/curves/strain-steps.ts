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
import { derived } from '../working/terms';

/** The three strains of a strip on a curve, each with its formula; `cover` is what the fold passes the seam by on the back. */
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
      terms: [
        {
          symbol: isDouble ? 'w ÷ 2 − s' : 'w − 2s',
          means: 'from the seam to the fold',
          quantity: lengthUp(reach),
        },
        base,
      ],
      result: percentQuantity(100 * strains.sewing),
      rule: derived(
        isInside
          ? 'Laid flat, the fold runs on a larger circle than the stitching and has to stretch.'
          : 'Laid flat, the fold runs on a smaller circle than the stitching and has to be eased.',
      ),
    },
    {
      label: 'The fabric at the edge, once turned',
      formula: 's ÷ q',
      terms: [{ symbol: 's', means: 'seam allowance', quantity: lengthUp(curve.seam) }, base],
      result: percentQuantity(100 * strains.edge),
      rule: derived(
        isInside
          ? 'The edge is a smaller circle: the strip is eased there.'
          : 'The edge is a larger circle: the strip stretches there.',
      ),
    },
    {
      label: 'The fold on the back, once turned',
      formula: 'c ÷ q',
      terms: [
        {
          symbol: 'c',
          means: 'past the seam on the back',
          quantity: lengthUp(curve.cover),
        },
        base,
      ],
      result: percentQuantity(100 * strains.back),
      rule: derived(
        isInside
          ? 'On the back the fold lies outside the stitching and stretches.'
          : 'On the back the fold lies inside the stitching and is eased.',
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
    title: 'How far the strip has to give',
    columns: ['Where', 'How', 'By', 'Verdict'],
    rows: [
      row('the fold, while you sew', sewing, strains.sewing),
      row('the edge, once turned', edge, strains.edge),
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

/** For each limit: the widest strip with this seam, the smallest radius for this strip, and the widest binding that just wraps. */
export function whatFitsTable({ curve, thickness, limits, grain, cutStep }: WhatFits): Table {
  const rows = limitRows(limits, grain).map(([words, percent]): readonly Quantity[] => {
    const most = percent / 100;
    const seam = widestSeam({ ...curve, thickness }, most);
    const wrapping = { seam, thickness, cover: curve.cover };
    const none = wordsQuantity('none');
    return [
      wordsQuantity(`${words}, up to ${percent} %`),
      lengthDown(widestStrip(curve, most), cutStep),
      lengthUp(smallestRadius(curve, most), cutStep),
      seam > 0 ? lengthDown(seam) : none,
      seam > 0 ? lengthDown(stripWidthFor('double', wrapping)) : none,
      seam > 0 ? lengthDown(stripWidthFor('single', wrapping)) : none,
    ];
  });
  return {
    title: 'What goes round',
    columns: [
      'Limit',
      'Widest strip with your seam',
      'Smallest radius for your strip',
      'Widest front that wraps',
      'its double-fold strip',
      'its single-fold strip',
    ],
    rows,
  };
}

function limitRows(limits: StrainLimits, grain: Grain): readonly (readonly [string, number])[] {
  if (grain === 'straight') return [['straight grain', limits.straight]];
  return [
    ['lies by itself', limits.comfortable],
    ['with care', limits.hard],
    ['hard', limits.impossible],
  ];
}
