import type { Note, Table } from '../explanation';
import { fineLength, givenLength, lengthNearest, lengthUp, wordsQuantity } from '../quantities';
import type { Arc } from './arc-wedge';
import type { WedgeRingInput } from './input';
import type { WedgeRingWork } from './work';

/** What to do at the outer edge and around the hole. */
export function edgeTables(input: WedgeRingInput, work: WedgeRingWork): readonly Table[] {
  return [
    work.arcs === null ? roundEdgeTable(input, work) : arcTable(work.arcs),
    ...(input.hole === null ? [] : [holeTable(input.hole.diameter, openingOf(input, work))]),
  ];
}

function arcTable({ finished, cut }: NonNullable<WedgeRingWork['arcs']>): Table {
  const rows = (name: string, seam: Arc, edge: Arc) => [
    [wordsQuantity(`${name} arc, radius`), lengthNearest(seam.radius), lengthNearest(edge.radius)],
    [
      wordsQuantity(`${name} arc, straight from corner to corner`),
      fineLength(seam.chord, 'nearest'),
      fineLength(edge.chord, 'nearest'),
    ],
    [
      wordsQuantity(`${name} arc, height over that line`),
      fineLength(seam.sagitta, 'nearest'),
      fineLength(edge.sagitta, 'nearest'),
    ],
  ];
  return {
    title: 'Template of a wedge with arcs',
    columns: ['', 'Finished', 'Cut'],
    rows: [...rows('Outer', finished.outer, cut.outer), ...rows('Inner', finished.inner, cut.inner)],
  };
}

/** A circle along the cut edge that touches the middle of every side: what it takes off is largest at the corners. */
function roundEdgeTable({ outerRadius, seamAllowance }: WedgeRingInput, { half }: WedgeRingWork): Table {
  const radius = outerRadius + seamAllowance;
  const takes = (share: number) => radius * (Math.hypot(1, share * Math.tan(half)) - 1);
  const row = (label: string, share: number) => [wordsQuantity(label), fineLength(takes(share), 'nearest')];
  return {
    title: 'For a round edge, trimmed from the corners',
    columns: ['', 'Measure'],
    rows: [
      [wordsQuantity('Circle to cut along, from the middle'), lengthNearest(radius)],
      row('It takes off at a corner', 1),
      row('Half the way to the middle of a side', 1 / 2),
      row('At the middle of a side', 0),
    ],
  };
}

interface Opening {
  /** From the middle to the cut inner edge: at the middle of a side and at a corner. */
  readonly side: number;
  readonly corner: number;
}

function openingOf({ innerRadius, seamAllowance }: WedgeRingInput, { half, arcs }: WedgeRingWork): Opening {
  const side = Math.max(0, innerRadius - seamAllowance);
  return { side, corner: arcs === null ? side / Math.cos(half) : side };
}

function holeTable(diameter: number, { side, corner }: Opening): Table {
  const takes = (label: string, from: number) =>
    diameter / 2 < corner ? [] : [[wordsQuantity(label), fineLength(diameter / 2 - from, 'nearest')]];
  return {
    title: 'The hole',
    columns: ['', 'Measure'],
    rows: [
      [wordsQuantity('Opening that the cut wedges leave, across'), lengthUp(2 * corner)],
      [wordsQuantity('Hole, across'), lengthNearest(diameter)],
      ...takes('Cutting it takes off at the middle of a side', side),
      ...takes('At a corner', corner),
    ],
  };
}

/** When the wedges leave a larger opening than the hole. */
export function openingNote(input: WedgeRingInput, work: WedgeRingWork): readonly Note[] {
  const opening = 2 * openingOf(input, work).corner;
  if (input.hole === null || input.hole.diameter >= opening) return [];
  return [
    {
      kind: 'warning',
      says: 'The wedges leave an opening of {opening}, which is larger than the hole of {hole}. Bring the inner edge nearer to the middle.',
      values: { opening: lengthUp(opening), hole: givenLength(input.hole.diameter) },
    },
  ];
}
