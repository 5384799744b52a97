import { describe, expect, it } from 'vitest';
import {
  type CenterTemplate,
  planCenterTemplate,
} from '#core/calculators/center/center-template/center-template';
import type { DiagramPart } from '#core/calculators/diagram';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import { asked, plan } from './asked-template';

type Line = Extract<DiagramPart, { part: 'line' }>;
const linesOf = (parts: readonly DiagramPart[], tone: string): readonly Line[] =>
  parts.filter((part): part is Line => part.part === 'line' && part.tone === tone);
const inInches = (units: number) => Number((units / UNITS_PER_INCH).toFixed(4));
const ends = ({ from, to }: Line) => [from.x, from.y, to.x, to.y].map(inInches);

/** Where a line lies as seen from the center: how far its ends are from it, and in which direction each. */
function seenFromCenter({ center }: CenterTemplate, { from, to }: Line) {
  const polar = ({ x, y }: Line['from']) => ({
    distance: inInches(Math.hypot(x - center.x, y - center.y)),
    degrees: Math.round((Math.atan2(y - center.y, x - center.x) * 180) / Math.PI + 360) % 360,
  });
  return { from: polar(from), to: polar(to) };
}

describe('the whole template', () => {
  it('is as large as its seam line plus 1/8 in on every side, with the center in the middle', () => {
    const { width, height, center } = plan();
    expect([width, height, center.x, center.y].map(inInches)).toEqual([7.25, 7.25, 3.625, 3.625]);
  });

  it('has a cross from edge to edge through the center', () => {
    const [across, down] = linesOf(plan().parts, 'mark').map(ends);
    expect(across).toEqual([0, 3.625, 7.25, 3.625]);
    expect(down).toEqual([3.625, 0, 3.625, 7.25]);
  });

  it('has a 1/8 in tick every 15° that ends at the cut line from inside', () => {
    const template = plan();
    const ticks = linesOf(template.parts, 'mark').slice(2);
    const seen = ticks.map((tick) => seenFromCenter(template, tick));
    expect(seen.map(({ to }) => to.degrees)).toEqual(Array.from({ length: 24 }, (_, index) => index * 15));
    for (const { from, to } of seen) {
      expect([from.distance, to.distance]).toEqual([3.125, 3.25]);
      expect(from.degrees).toBe(to.degrees);
    }
  });
});

describe('the quarter template for a project folded twice', () => {
  it('is as large as the radius of its seam line plus 1/8 in on every side', () => {
    const { width, height, center } = plan({ part: 'quarter' });
    expect([width, height, center.x, center.y].map(inInches)).toEqual([3.75, 3.75, 0.125, 0.125]);
  });

  it('has both folds, drawn from the corner to the seam line', () => {
    expect(linesOf(plan({ part: 'quarter' }).parts, 'fold').map(ends)).toEqual([
      [0.125, 0.125, 3.625, 0.125],
      [0.125, 0.125, 0.125, 3.625],
    ]);
  });

  it('has arcs from fold to fold with a tick every 15°', () => {
    const template = plan({ part: 'quarter' });
    const arcs = template.parts.filter((part) => part.part === 'arc');
    expect(arcs.map(({ fromDegrees, toDegrees }) => [fromDegrees, toDegrees])).toEqual([
      [0, 90],
      [0, 90],
    ]);
    const ticks = linesOf(template.parts, 'mark').map((tick) => seenFromCenter(template, tick).to);
    expect(ticks.map(({ degrees }) => degrees)).toEqual([0, 15, 30, 45, 60, 75, 90]);
    expect(ticks.every(({ distance }) => distance === 3.25)).toBe(true);
  });
});

describe('joined sheets', () => {
  // A 14 in hole: 14 3/4 in across; windows of 7 1/2 by 8 3/4 in that overlap by 1/2 in: three by two sheets of letter.
  const joined = () => plan({ holeDiameter: inches(14) });
  const sheet = (name: string) => joined().pages.find((page) => page.name === name)!;

  it('are as many as the size needs', () => {
    const { columns, rows } = joined();
    expect([columns, rows]).toEqual([3, 2]);
    expect(inInches(sheet('A1').window.width)).toBe(7.5);
    expect(inInches(sheet('A1').window.height)).toBe(8.75);
  });

  it('have a line down the middle of each overlap with a neighbor', () => {
    const [left, right, top, bottom] = [
      [0.75, 0.5, 0.75, 9.25],
      [7.75, 0.5, 7.75, 9.25],
      [0.5, 0.75, 8, 0.75],
      [0.5, 9, 8, 9],
    ];
    const lines = (name: string) => linesOf(sheet(name).marks, 'plan').map(ends);
    expect(lines('A1')).toEqual([right, bottom]);
    expect(lines('A2')).toEqual([left, right, bottom]);
    expect(lines('A3')).toEqual([left, bottom]);
    expect(lines('B1')).toEqual([right, top]);
    expect(lines('B3')).toEqual([left, top]);
    expect(plan().pages.flatMap(({ marks }) => linesOf(marks, 'plan'))).toEqual([]);
  });

  it('have two crosses with 1/8 in arms on each line, a quarter of its length from the ends', () => {
    const crosses = linesOf(sheet('A1').marks, 'mark').map(ends);
    const crossAt = (x: number, y: number) => [
      [x - 0.125, y - 0.125, x + 0.125, y + 0.125],
      [x - 0.125, y + 0.125, x + 0.125, y - 0.125],
    ];
    expect(crosses).toEqual([
      ...crossAt(7.75, 2.6875),
      ...crossAt(7.75, 7.0625),
      ...crossAt(2.375, 9),
      ...crossAt(6.125, 9),
    ]);
  });
});

describe('the bottom of a sheet', () => {
  const marks = () => plan().pages[0]!.marks;

  it('has the 1 in square at the left and the 25 mm square beside it', () => {
    const squares = marks()
      .filter((part) => part.part === 'polygon')
      .map(({ points }) => points);
    const side = inInches(25 * 320);
    const square = (x: number, size: number) => [
      [x, 10.5 - size],
      [x + size, 10.5 - size],
      [x + size, 10.5],
      [x, 10.5],
    ];
    expect(squares.map((points) => points.map(({ x, y }) => [x, y].map(inInches)))).toEqual([
      square(0.5, 1),
      square(1.75, side).map((point) => point.map((at) => Number(at.toFixed(4)))),
    ]);
  });

  it('has the size written in each square and the name of the sheet at the right', () => {
    const labels = marks().filter((part) => part.part === 'label');
    expect(labels.map(({ text, at, anchor }) => [text, inInches(at.x), inInches(at.y), anchor])).toEqual([
      ['1 in', 1, 10, 'middle'],
      ['25 mm', 2.2421, 10, 'middle'],
      ['A1', 8, 10, 'end'],
    ]);
  });
});

it('is refused with the number of sheets it would take: 15 by 13 for a 100 in hole', () => {
  expect(planCenterTemplate({ ...asked, holeDiameter: inches(100) })).toEqual({
    ok: false,
    error: { code: 'too-many-sheets', sheets: 195 },
  });
});
