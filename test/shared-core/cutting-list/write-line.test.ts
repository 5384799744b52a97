import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ListShape } from '#core/cutting-list/list-reading';
import { readCuttingList } from '#core/cutting-list/read-cutting-list';
import { LEFT_OUT, waysToSettle, writeListLine } from '#core/cutting-list/write-line';
import { type Length, lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';

const SQUARES: readonly ListShape[] = ['square', 'half-square-triangle', 'quarter-square-triangle'];
const GIVES: Readonly<Partial<Record<ListShape, number>>> = {
  'half-square-triangle': 2,
  'half-rectangle-triangle': 2,
  'quarter-square-triangle': 4,
};

const anySize = fc.integer({ min: 200, max: 800_000 }).map(lengthFromUnits);
const anyDisplay: fc.Arbitrary<LengthDisplay> = fc.record({
  system: fc.constantFrom('inch' as const, 'metric' as const),
  inchStep: fc.constantFrom(8 as const, 64 as const),
});
const anyShape = fc.constantFrom<ListShape>(...SQUARES, 'rectangle', 'strip', 'half-rectangle-triangle');

function lengthOf(shape: ListShape, width: Length, length: Length): Length | null {
  if (shape === 'strip') return null;
  return SQUARES.includes(shape) ? width : length;
}

describe('patches written as a line', () => {
  it('are read back as they are, with no mark', () => {
    const role = fc.constantFrom('Red', 'Pebble Dot', 'Fabric A');
    fc.assert(
      fc.property(
        fc.record({
          shape: anyShape,
          width: anySize,
          length: anySize,
          cut: fc.integer({ min: 1, max: 9_999 }),
          role,
        }),
        anyDisplay,
        ({ shape, width, length: other, cut, role: fabric }, display) => {
          fc.pre(width !== other);
          const length = lengthOf(shape, width, other);
          const patch = { shape, width, length, cut, role: fabric, block: null };
          const [line] = readCuttingList(writeListLine(patch, display), 'in').lines;
          expect(line?.marks).toEqual([]);
          expect(line?.patches).toEqual([{ ...patch, count: cut * (GIVES[shape] ?? 1), purpose: null }]);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('are not multiplied again under a heading for one block', () => {
    const text = 'For each Block A (make 12):\nRed: (4) 2 1/2" squares';
    const [patch] = readCuttingList(text, 'in').patches;
    const written = writeListLine(patch!, { system: 'inch', inchStep: 8 });
    expect(readCuttingList(`For each Block A (make 12):\n${written}`, 'in').patches).toEqual([patch]);
  });

  it.each([
    ['Moonlit Grove', 'fabric', '4 square'],
    ['Block A (make 12):', 'for-one-block', '48 square'],
    ['Block A (make 12)', 'for-all-blocks', '4 square'],
  ])('under “%s” are settled as %s', (heading, as, expected) => {
    const below = as === 'fabric' ? '(4) 5" squares' : 'Red: (4) 5" squares';
    const [line] = readCuttingList(`${heading}\n${below}`, 'in').lines;
    const settled = waysToSettle(line!).find((one) => one.as === as);
    const { lines, patches } = readCuttingList(`${settled?.text ?? ''}\n${below}`, 'in');
    expect(lines.flatMap(({ marks }) => marks)).toEqual([]);
    expect(patches.map(({ cut, shape }) => `${String(cut)} ${shape}`)).toEqual([expected]);
  });

  it('are no patches on a line that is left out', () => {
    const [line] = readCuttingList(`${LEFT_OUT}Red: (4) 2 1/2" squares and more`, 'in').lines;
    expect(line).toMatchObject({ kind: 'note', patches: [], marks: [] });
  });
});
