import type { Quantity, Step, Table, Term } from '../explanation';
import {
  fineLength,
  lengthDown,
  lengthNearest,
  lengthUp,
  percentQuantity,
  wordsQuantity,
} from '../quantities';
import type { Length } from '#core/units/length';
import {
  type BoundCurve,
  type CurveStrains,
  seamRadius,
  seamsForStrip,
  type StrainLimits,
  strainVerdict,
  smallestRadius,
  widestSeam,
  widestStrip,
} from './strain';
import { coverOf, foldReach, stripWidthFor } from '../binding/strip-width';
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
  const cover = coverOf(curve.fold, curve.strip, curve);
  const isDouble = curve.fold === 'double';
  return [
    {
      label: 'While you sew: how much the fold stands up',
      formula: isDouble ? '(w ÷ 2 − s) ÷ q' : '(w − 2s) ÷ q',
      terms: [term(isDouble ? 'w ÷ 2 − s' : 'w − 2s', 'from the seam to the fold', lengthUp(reach)), base],
      result: percentQuantity(100 * strains.sewing),
      rule: derived(
        isInside
          ? 'To lie flat, the fold would have to stretch to a larger circle than the stitching. It stands up instead.'
          : 'To lie flat, the fold would have to be eased to a smaller circle than the stitching. It stands up instead.',
      ),
    },
    {
      label: 'The fabric at the edge, once turned',
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
      label: 'The fold on the back, once turned',
      formula: 'c ÷ q',
      terms: [
        term(
          'c',
          `past the seam on the back: ${isDouble ? 'w ÷ 2 − 3s − t' : 'w − 4s − t'}`,
          lengthNearest(cover),
        ),
        base,
      ],
      result: percentQuantity(100 * strains.back),
      rule: derived(
        isInside
          ? 'On the back, the fold is outside the stitching and stretches.'
          : 'On the back, the fold is inside the stitching and is eased.',
      ),
    },
  ];
}

/** The three strains. Only the two of the turned strip have a verdict. */
export function strainTable(strains: CurveStrains, side: BoundCurve['side'], limits: StrainLimits): Table {
  const { sewing, edge, back } = strains;
  const [fold, rim] = side === 'inside' ? ['stretched', 'eased'] : ['eased', 'stretched'];
  const row = (where: string, how: string, strain: number, verdict: string): readonly Quantity[] => [
    wordsQuantity(where),
    wordsQuantity(how),
    percentQuantity(100 * strain),
    wordsQuantity(verdict),
  ];
  return {
    title: 'How far the strip has to stretch or ease',
    columns: ['Where', 'How', 'By', 'Verdict'],
    rows: [
      row('while you sew: the fold', 'stands up', sewing, 'held by hand'),
      row('turned: the edge', rim, edge, strainVerdict({ edge, back: 0 }, limits)),
      row('turned: the fold on the back', fold, back, strainVerdict({ edge: 0, back }, limits)),
    ],
  };
}

export interface WhatFits {
  readonly curve: BoundCurve;
  readonly cover: number;
  readonly limits: StrainLimits;
  readonly cutStep: Length;
}

/** For each limit: strips for this seam, seams for this strip, and the widest front with the strips that wrap it. */
export function whatFitsTable({ curve, cover, limits, cutStep }: WhatFits): Table {
  const none = wordsQuantity('none');
  const rows = limitRows(limits).map(([words, percent]): readonly Quantity[] => {
    const most = percent / 100;
    const strip = widestStrip(curve, most);
    const seams = seamsForStrip(curve, most);
    const front = widestSeam({ ...curve, cover }, most);
    const wrapping = { seam: front, thickness: curve.thickness, cover };
    return [
      wordsQuantity(`${words}, up to ${percent}%`),
      strip === null ? none : lengthDown(strip, cutStep),
      seams === null ? none : fineLength(seams.least, 'up'),
      seams === null ? none : fineLength(seams.most, 'down'),
      lengthUp(smallestRadius(curve, most), cutStep),
      front > 0 ? fineLength(front, 'down') : none,
      front > 0 ? lengthDown(stripWidthFor('double', wrapping)) : none,
      front > 0 ? lengthDown(stripWidthFor('single', wrapping)) : none,
    ];
  });
  return {
    title: 'What goes around',
    columns: [
      'Limit',
      'Widest strip with your seam',
      'Narrowest seam for your strip',
      'Widest seam for your strip',
      'Smallest radius for your strip',
      'Widest front that wraps',
      'Its double-fold strip',
      'Its single-fold strip',
    ],
    rows,
  };
}

function limitRows(limits: StrainLimits): readonly (readonly [string, number])[] {
  return [
    ['easily', limits.comfortable],
    ['with care', limits.hard],
    ['hard', limits.impossible],
  ];
}

/**
 * The front turned as narrow as the seam, halfway, and so wide that the fold comes to lie on the stitching. With a front f the
 * edge gives by f ÷ q and the fold passes the stitching by what the strip leaves, less 2(f − s). Null if the fold does not reach.
 */
export function frontTable(curve: BoundCurve, limits: StrainLimits): Table | null {
  const spare = coverOf(curve.fold, curve.strip, curve);
  if (spare < 0) return null;
  const base = seamRadius(curve);
  const rows = [0, 1 / 2, 1].map((share): readonly Quantity[] => {
    const front = curve.seam + (share * spare) / 2;
    const cover = (1 - share) * spare;
    const turned = { edge: front / base, back: cover / base };
    return [
      lengthNearest(front),
      percentQuantity(100 * turned.edge),
      lengthDown(cover),
      percentQuantity(100 * turned.back),
      wordsQuantity(strainVerdict(turned, limits)),
    ];
  });
  return {
    title: 'The front turned narrow or wide',
    columns: ['Front', 'The edge gives', 'Past the stitching on the back', 'The fold gives', 'Verdict'],
    rows,
  };
}
