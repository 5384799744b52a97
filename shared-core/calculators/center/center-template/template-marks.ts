import type { Point } from '#core/geometry/point';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import type { DiagramPart } from '#core/calculators/diagram';

interface TemplateGrid {
  readonly columns: number;
  readonly rows: number;
  readonly overlap: number;
  readonly window: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

interface Tile {
  readonly column: number;
  readonly row: number;
}

const ARM = lengthFromInches(1 / 8);

/**
 * A line down the middle of every overlap, with two crosses on it. Both sheets have them at the same place of the template: cut one
 * sheet along its line, lay it on the line of the other, and the drawing continues.
 */
export function overlapMarks(grid: TemplateGrid, tile: Tile): readonly DiagramPart[] {
  const { window, overlap } = grid;
  const [left, top] = [window.x + overlap / 2, window.y + overlap / 2];
  const [right, bottom] = [window.x + window.width - overlap / 2, window.y + window.height - overlap / 2];
  return [
    ...(tile.column > 0 ? verticalMark(left, window) : []),
    ...(tile.column < grid.columns - 1 ? verticalMark(right, window) : []),
    ...(tile.row > 0 ? horizontalMark(top, window) : []),
    ...(tile.row < grid.rows - 1 ? horizontalMark(bottom, window) : []),
  ];
}

function verticalMark(x: number, { y, height }: TemplateGrid['window']): readonly DiagramPart[] {
  return [
    { part: 'line', from: { x, y }, to: { x, y: y + height }, tone: 'plan' },
    ...[1 / 4, 3 / 4].flatMap((part) => cross({ x, y: y + part * height })),
  ];
}

function horizontalMark(y: number, { x, width }: TemplateGrid['window']): readonly DiagramPart[] {
  return [
    { part: 'line', from: { x, y }, to: { x: x + width, y }, tone: 'plan' },
    ...[1 / 4, 3 / 4].flatMap((part) => cross({ x: x + part * width, y })),
  ];
}

function cross({ x, y }: Point): readonly DiagramPart[] {
  return [
    { part: 'line', from: { x: x - ARM, y: y - ARM }, to: { x: x + ARM, y: y + ARM }, tone: 'mark' },
    { part: 'line', from: { x: x - ARM, y: y + ARM }, to: { x: x + ARM, y: y - ARM }, tone: 'mark' },
  ];
}

const ONE_INCH = lengthFromInches(1);
const TWENTY_FIVE_MILLIMETERS = lengthFromMillimeters(25);

/** At the bottom of a sheet, below the drawing: a square of 1 in, one of 25 mm, and the name of the sheet. */
export function testSquares(
  paper: { readonly width: number; readonly height: number },
  margin: number,
  name: string,
): readonly DiagramPart[] {
  const bottom = paper.height - margin;
  const squareAt = (x: number, side: number): DiagramPart => ({
    part: 'polygon',
    points: [
      { x, y: bottom - side },
      { x: x + side, y: bottom - side },
      { x: x + side, y: bottom },
      { x, y: bottom },
    ],
    tone: 'mark',
  });
  const label = (x: number, text: string, anchor: 'start' | 'middle' | 'end'): DiagramPart => ({
    part: 'label',
    at: { x, y: bottom - ONE_INCH / 2 },
    text,
    anchor,
  });
  const second = margin + 1.25 * ONE_INCH;
  return [
    squareAt(margin, ONE_INCH),
    label(margin + ONE_INCH / 2, '1 in', 'middle'),
    squareAt(second, TWENTY_FIVE_MILLIMETERS),
    label(second + TWENTY_FIVE_MILLIMETERS / 2, '25 mm', 'middle'),
    label(paper.width - margin, name, 'end'),
  ];
}
