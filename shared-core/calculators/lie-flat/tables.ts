import type { Quantity, Table } from '../explanation';
import { countQuantity, degreesQuantity, fineLength, wordsQuantity } from '../quantities';
import type { Correction } from './correction';
import type { LieFlatWork } from './work';

export function lieFlatTables(work: LieFlatWork): readonly Table[] {
  const { correction, halfMeasured, flatness } = work;
  return [
    angleTable(work),
    ...(flatness.shape === 'ruffle' ? [wavesTable(flatness.waves)] : []),
    ...(correction === null || halfMeasured === null ? [] : [correctionTable(correction, halfMeasured > 0)]),
  ];
}

function degrees(radians: number): Quantity {
  return degreesQuantity((radians * 180) / Math.PI);
}

/** The half has a seam less than it has wedges: its two open legs are sewn last. */
function angleTable(work: LieFlatWork): Table {
  const { lostByCutting, lostBySeams, halfExpected, halfWedges, turn, halfMeasured, missing } = work;
  const bySeams = 2 * (halfWedges - 1) * turn;
  const row = (label: string, half: number, ring: number) => [
    wordsQuantity(label),
    degrees(half),
    degrees(ring),
  ];
  return {
    title: 'Angle missing (below zero: too much)',
    columns: ['By', 'In the half that is tested', 'In the whole ring'],
    rows: [
      row('The cut', halfExpected - bySeams, lostByCutting),
      row('The seams', bySeams, lostBySeams),
      row('Both', halfExpected, lostByCutting + lostBySeams),
      ...(halfMeasured === null ? [] : [row('The test', halfMeasured, missing)]),
    ],
  };
}

function wavesTable(waves: readonly { readonly count: number; readonly height: number }[]): Table {
  return {
    title: 'How high it ruffles',
    columns: ['Around the ring', 'From low to high'],
    rows: waves.map(({ count, height }) => [
      countQuantity(count, ['wave', 'waves']),
      fineLength(height, 'nearest'),
    ]),
  };
}

function correctionTable(correction: Correction, isGap: boolean): Table {
  return {
    title: 'What to correct: one of these',
    columns: ['Way', 'Where', 'Measure'],
    rows: [...seamRows(correction, isGap), ...trimRows(correction), ...wedgeRows(correction)],
  };
}

type Row = readonly Quantity[];

function row(way: string, where: string, measure: Quantity): Row {
  return [wordsQuantity(way), wordsQuantity(where), measure];
}

/** A gap closes with less seam outside or more inside; what reaches over the line goes back the other way. */
function seamRows({ seams, canBeNarrower }: Correction, isGap: boolean): readonly Row[] {
  const by = fineLength(seams, 'nearest');
  const [narrow, wide] = isGap ? ['outer', 'inner'] : ['inner', 'outer'];
  const on = (end: string) =>
    `at the ${end} end, on each piece of fabric, running out to nothing at the other end`;
  const wider = row('Sew every seam of the half again, wider', on(wide), by);
  return canBeNarrower ? [row('Sew every seam of the half again, narrower', on(narrow), by), wider] : [wider];
}

function trimRows({ trim }: Correction): readonly Row[] {
  if (trim === null) return [];
  const way = 'Trim one open leg along the line';
  return [
    row(way, 'off its outer end', fineLength(trim.outer, 'nearest')),
    row(way, 'off its inner end', fineLength(trim.inner, 'nearest')),
  ];
}

function wedgeRows({ newWedge }: Correction): readonly Row[] {
  if (newWedge === null) return [];
  const way = 'Put one new wedge in place of another';
  return [
    row(way, 'its angle', degrees(newWedge.angle)),
    row(way, 'its long side, cut', fineLength(newWedge.long, 'nearest')),
    row(way, 'its short side, cut', fineLength(newWedge.short, 'nearest')),
  ];
}
