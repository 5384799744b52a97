import type { Quantity, Table } from '../explanation';
import { countQuantity, givenLength, wordsQuantity } from '../quantities';
import { type SetWay, setWays } from './bands';
import type { WedgeRingInput } from './input';
import type { WedgeRingWork } from './work';

/** Nothing without bands. */
export function bandTables(input: WedgeRingInput, work: WedgeRingWork): readonly Table[] {
  return work.set === null ? [] : [bandTable(work.set.bands), waysTable(input, work)];
}

/** Turned around, the wedge has its outermost band at the inner edge. The band in the middle of an odd number stays. */
function bandTable(bands: NonNullable<WedgeRingWork['set']>['bands']): Table {
  return {
    title: 'Bands from the inside out',
    columns: ['Band', 'Fabric', 'Finished', 'Strip, cut', 'In a reversed wedge'],
    rows: bands.map(({ fabric, finished, cut }, index) => [
      countQuantity(index + 1, ['', '']),
      wordsQuantity(fabric),
      givenLength(finished),
      givenLength(cut),
      wordsQuantity(bands.at(-1 - index)?.fabric ?? fabric),
    ]),
  };
}

const WAYS: Readonly<Record<SetWay['way'], string>> = {
  'both-orders': 'Head to tail, both orders in one ring',
  'same-way-up': 'All the same way up, one order',
  'second-ring': 'Head to tail, one order in the ring, the rest for a second one',
};

function waysTable({ wedges }: WedgeRingInput, work: WedgeRingWork): Table {
  const ways = setWays(wedges, { oneWay: work.perStripOneWay, headToTail: work.perStripHeadToTail });
  return {
    title: 'Ways to cut the strip sets',
    columns: ['Way', 'From a set', 'Strip sets', 'With bands in order', 'Reversed'],
    rows: ways.map(({ way, perSet, sets, inOrder, reversed }): readonly Quantity[] => [
      wordsQuantity(WAYS[way]),
      wedgesQuantity(perSet),
      countQuantity(sets, ['set', 'sets']),
      wedgesQuantity(inOrder),
      wedgesQuantity(reversed),
    ]),
  };
}

function wedgesQuantity(count: number): Quantity {
  return countQuantity(count, ['wedge', 'wedges']);
}
