import { roundDownTo } from '#core/units/rounding';
import type { Table } from '../explanation';
import { howToTable, type HowToStep } from '../how-to';
import {
  countQuantity,
  degreesQuantity,
  fineLength,
  givenLength,
  lengthNearest,
  lengthUp,
  wordsQuantity,
} from '../quantities';
import type { WedgeRingInput } from './input';
import type { WedgeRingWork } from './work';

/** Nothing for arcs, which have a table of their own. */
export function wedgeTables(input: WedgeRingInput, work: WedgeRingWork): readonly Table[] {
  return work.arcs === null ? [wedgeTable(input, work)] : [];
}

function wedgeTable({ cutStep }: WedgeRingInput, { finished, cut }: WedgeRingWork): Table {
  const side = (label: string, of: 'long' | 'short') => [
    wordsQuantity(label),
    lengthNearest(finished[of]),
    fineLength(cut[of], 'up'),
  ];
  const height = [wordsQuantity('Height'), lengthNearest(finished.height), lengthUp(cut.height, cutStep)];
  return {
    title: 'One wedge',
    columns: ['', 'Finished', 'Cut'],
    rows: [side('Long side', 'long'), side('Short side', 'short'), height],
  };
}

function stripRows({ set, strip, strips }: WedgeRingWork): readonly HowToStep[] {
  if (set === null)
    return [
      ['Cut this many strips across the fabric.', countQuantity(strips, ['strip', 'strips'])],
      ['Cut each strip this wide.', givenLength(strip)],
    ];
  return [
    ['Cut this many strips across the fabric for every band.', countQuantity(strips, ['strip', 'strips'])],
    [
      'Sew one of each band to each other in their order. This many sets come out.',
      countQuantity(strips, ['set', 'sets']),
    ],
    ['A set measures this from edge to edge, pressed.', givenLength(strip)],
  ];
}

/** From the first cut to the closed ring. Small errors are found and corrected in the halves, before the last two seams. */
export function ringMethodTable({ wedges, seamAllowance }: WedgeRingInput, work: WedgeRingWork): Table {
  const smaller = roundDownTo(wedges / 2, 1);
  const of = (count: number) => countQuantity(count, ['wedge', 'wedges']);
  const steps: readonly HowToStep[] = [
    ...stripRows(work),
    ['Cut the wedges, with this angle between their legs.', degreesQuantity((360 * work.half) / Math.PI)],
    [
      'Sew the wedges in pairs, always from the same end, with this seam allowance.',
      givenLength(seamAllowance),
    ],
    ['This many pairs come from all the wedges.', countQuantity(smaller, ['pair', 'pairs'])],
    ['Sew pairs to each other, then those again, until you have two halves. One half has', of(smaller)],
    ['The other half has', of(wedges - smaller)],
    [
      'Test the first half on a ruler, where a straight line is 180°: the angle between its two open legs must be this.',
      degreesQuantity((360 * smaller) / wedges),
    ],
    [
      'If it is not, sew a seam again or trim a leg, and keep this whole seam allowance on it.',
      givenLength(seamAllowance),
    ],
    ['Sew the two halves to each other.', countQuantity(2, ['seam', 'seams'])],
  ];
  return howToTable(steps);
}
