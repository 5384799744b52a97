import type { Diagram, DiagramPart } from '../diagram';
import type { LongStripsInput } from './input';
import type { LongStripsDetails } from './work';

/** So many rows of strips are drawn at most; the rest of the fabric looks the same. */
const MOST_ROWS = 12;

/** The fabric with the strips side by side along it. Its width is across the drawing. */
export function longStripsDiagram(input: LongStripsInput, { width, along }: LongStripsDetails): Diagram {
  const rows = along.rows
    .flatMap(({ rows: alike, ...row }) => Array.from({ length: Math.min(alike, MOST_ROWS) }, () => row))
    .slice(0, MOST_ROWS);
  const height = rows.reduce((sum, { length }) => sum + length, 0);
  let top = 0;
  const strips = rows.flatMap(({ strips: count, length }) => {
    const at = top;
    top += length;
    return Array.from({ length: count }, (_, index): DiagramPart => ({
      part: 'polygon',
      points: rectangle(index * width, at, (index + 1) * width, at + length),
      tone: index % 2 === 0 ? 'fabric' : 'fabric-alternate',
    }));
  });
  const dimension = { part: 'dimension', offset: (0 - input.fabricWidth) / 12 } as const;
  const fabric = input.fabricWidth;
  return {
    title: 'The strips along the fabric',
    width: fabric,
    height,
    parts: [
      { part: 'polygon', points: rectangle(0, 0, fabric, height), tone: 'leftover' },
      ...strips,
      { ...dimension, from: { x: 0, y: height }, to: { x: fabric, y: height }, length: fabric },
      { ...dimension, from: { x: fabric, y: height }, to: { x: fabric, y: 0 }, length: height },
    ],
  };
}

function rectangle(left: number, top: number, right: number, bottom: number) {
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}
