import { describe, expect, it } from 'vitest';
import type { ListPatch, MarkCode } from '#core/cutting-list/list-reading';
import { readCuttingList } from '#core/cutting-list/read-cutting-list';
import { lengthInInches } from '#core/units/length';

/** `24 half-square-triangle 3.875x3.875 red` */
function inWords({ shape, width, length, count, role }: ListPatch): string {
  const long = length === null ? 'WOF' : String(lengthInInches(length));
  return `${String(count)} ${shape} ${String(lengthInInches(width))}x${long} ${role ?? '?'}`;
}

function patchesOf(text: string): readonly string[] {
  return readCuttingList(text, 'in').patches.map(inWords);
}

function marksOf(text: string): readonly string[] {
  return readCuttingList(text, 'in').lines.flatMap(({ marks, text: line }) =>
    marks.map(({ code, from, to }) => `${code}: ${line.slice(from, to)}`),
  );
}

describe('phrases of the trade', () => {
  it.each<[string, readonly string[]]>([
    ['Red: cut four 3 1/2" squares', ['4 square 3.5x3.5 red']],
    ['Red: (4)3½"squares', ['4 square 3.5x3.5 red']],
    ['Red: 4x 3½" squares', ['4 square 3.5x3.5 red']],
    ['Red: 12–2½" squares', ['12 square 2.5x2.5 red']],
    ['Red: cut 12 2½-in. squares', ['12 square 2.5x2.5 red']],
    ['Red: 4½" squares ×12', ['12 square 4.5x4.5 red']],
    ['Red: 12 ea 4½" squares', ['12 square 4.5x4.5 red']],
    ['Red – cut the following:\n(4) 5" squares', ['4 square 5x5 red']],
    ['Red: 12 sq. 2.5"', ['12 square 2.5x2.5 red']],
    ['Red: 12 (2 1/2") squares', ['12 square 2.5x2.5 red']],
    ['Red: cut 5 strips at 2.5" by WOF', ['5 strip 2.5xWOF red']],
    ['Red: 2 1/2" x WOF strips (7) for the binding', ['7 strip 2.5xWOF red']],
    ['Light blue print 24 squares 3"', ['24 square 3x3 light blue print']],
    ['24 squares 3" - light blue', ['24 square 3x3 light blue']],
    ['Cut 4 squares 5" from red and 6 squares 4" from blue.', ['4 square 5x5 red', '6 square 4x4 blue']],
    [
      'Red: cut 3 strips 4 1/2" wide by WOF, then cut those into 24 squares 4 1/2" x 4 1/2"',
      ['24 square 4.5x4.5 red'],
    ],
    ['Red: (3) strips 2 1/2" x WOF; subcut each strip into (16) squares', ['48 square 2.5x2.5 red']],
    [
      'Red: cut (2) 4 1/2" x WOF strips and (3) 2 1/2" x WOF strips. Subcut the 4 1/2" strips into (16) squares. Subcut the 2 1/2" strips into (24) 4 1/2" pieces.',
      ['16 square 4.5x4.5 red', '24 rectangle 2.5x4.5 red'],
    ],
    [
      'Red: (2) 7 1/4" squares, cut in half twice on the diagonal',
      ['8 quarter-square-triangle 7.25x7.25 red'],
    ],
    ['Red: (8) 3" x 5" rectangles, cut in half diagonally', ['16 half-rectangle-triangle 3x5 red']],
    [
      'Red: (1) 10 1/2" square (center); (4) 3" squares (corners)',
      ['1 square 10.5x10.5 red', '4 square 3x3 red'],
    ],
    ['For each Block A (make 12):\nRed: (4) 2 1/2" squares', ['48 square 2.5x2.5 red']],
    [
      'Block A (make 12), for all blocks:\nRed: (4) 2 1/2" squares\nRed: (2) 3" squares per block',
      ['4 square 2.5x2.5 red', '24 square 3x3 red'],
    ],
    [
      'Fabric A (red): 1 yd\nCutting\nA: (4) 3" squares\nFrom the red cut (2) 5" squares',
      ['4 square 3x3 Fabric A', '2 square 5x5 Fabric A'],
    ],
    ['Binding: cut 7 strips, 2 1/4" x WOF', ['7 strip 2.25xWOF Binding']],
    ['All strips are cut across the width of fabric\nRed: (5) 2 1/2" strips', ['5 strip 2.5xWOF red']],
  ])('%s', (text, patches) => {
    expect(patchesOf(text).map((one) => one.toLowerCase())).toEqual(patches.map((one) => one.toLowerCase()));
    expect(marksOf(text)).toEqual([]);
  });

  it.each([
    ['Background: 1 5/8 yd', [{ what: 'fabric', role: 'Background', length: 58.5 }]],
    ['2 yards white background', [{ what: 'fabric', role: 'white background', length: 72 }]],
    ['Red (1 1/2 yd / 1.4 m)', [{ what: 'fabric', role: 'Red', length: 54 }]],
    ['Finished size: 54" x 66"', [{ what: 'finished-size', width: 54, length: 66 }]],
    ['Finished block size 9 in', [{ what: 'block-size', width: 9, length: 9 }]],
    ['Red: (6) fat quarters', [{ what: 'fat-quarters', role: 'Red', count: 6 }]],
  ])('states: %s', (text, stated) => {
    const read = readCuttingList(text, 'in');
    const inInches = read.stated.map((one) => ({
      ...one,
      ...('length' in one ? { length: lengthInInches(one.length) } : {}),
      ...('width' in one ? { width: lengthInInches(one.width) } : {}),
    }));
    expect(inInches).toEqual(stated);
    expect(marksOf(text)).toEqual([]);
  });

  it('keeps the strips that patches are cut from beside the patches', () => {
    const [line] = readCuttingList('Red: cut (3) 2 1/2" x WOF strips; subcut into (48) squares', 'in').lines;
    expect(line?.strips.map(({ count, width, length }) => [count, lengthInInches(width), length])).toEqual([
      [3, 2.5, null],
    ]);
  });

  it('takes a size without a unit in the unit that is asked for, and says so', () => {
    const text = 'Red: 12 squares 6,5';
    expect(readCuttingList(text, 'cm').patches[0]?.width).toBe(
      readCuttingList('Red: 12 squares 65 mm', 'in').patches[0]?.width,
    );
    expect(readCuttingList(text, 'cm').hasBareSizes).toBe(true);
    expect(readCuttingList('Red: 12 squares 6,5 cm', 'in').hasBareSizes).toBe(false);
  });
});

describe('what leaves something open is marked', () => {
  it.each<[string, MarkCode]>([
    ['Red: cut 4 1/2" squares', 'no-count'],
    ['Red: 12 squares', 'no-size'],
    ['Red: cut 4 squares 3 1/2" x 4 1/2"', 'sides-differ'],
    ['Red: 3 x 2 1/2" strips', 'number-unclear'],
    ['(4) 5" squares', 'no-fabric'],
    ['From the red and the blue cut (4) 5" squares', 'fabric-unclear'],
    ['From each color cut (4) 5" squares', 'fabric-unclear'],
    ['Queen: (96) 5" squares', 'fabric-unclear'],
    ['Light red: 1 yd\nDark red: 1 yd\nFrom the red cut (4) 5" squares', 'fabric-unclear'],
    ['Red:\nBinding: cut 7 strips 2 1/4" x WOF', 'fabric-unclear'],
    ['Red: (8) 3" squares, cut in half diagonally for 32 triangles', 'count-differs'],
    ['Red: (8) 3" squares (16 total)', 'count-differs'],
    ['Red: (1) strip 2 1/2" x WOF; subcut into (48) 2 1/2" squares', 'more-than-strips-give'],
    ['Red:\nSubcut into (48) 2 1/2" squares', 'no-strips'],
    ['Red: (5) 2 1/2" strips', 'strip-length-missing'],
    ['Block 1 (make 12)\nRed: (4) 5" squares', 'each-or-all'],
    ['For each block:\nRed: (4) 5" squares', 'block-count-missing'],
    ['Red: (2) 7 1/4" squares. Cut on the diagonal.', 'once-or-twice'],
    ['Red: (4) 6 7/8" squares and (2) 7 1/4" squares; cut each twice on the diagonal', 'which-patches'],
    ['Red:\n(4) 6 7/8" squares\n(2) 7 1/4" squares\nCut all squares once on the diagonal', 'which-patches'],
    ['Enjoy your new wall hanging', 'name-unclear'],
    ['Red: (4) 5" squares or (8) 4" squares', 'not-understood'],
    ['Red: (4) 5" squares (optional)', 'not-understood'],
    ['Red: fussy cut 6 flowers 4 1/2" square', 'not-understood'],
    ['Red: (4) squares 5" finished', 'not-understood'],
    ['Red: cut 12 diamonds 2 1/2" wide', 'not-understood'],
    ['Red: cut 4 squares 5", then trim to 4 1/2"', 'not-understood'],
    ['Red: (4) 6 1/2" x LOF strips', 'not-understood'],
  ])('%s', (text, code) => {
    expect(marksOf(text).map((mark) => mark.split(':')[0])).toContain(code);
  });

  it('lets no fabric of a heading reach past a line that may be another heading', () => {
    const text = 'Red:\n(4) 5" squares\nMoonlit Grove\n(8) 4" squares';
    expect(patchesOf(text)).toEqual(['4 square 5x5 Red', '8 square 4x4 ?']);
  });

  it('takes no fabric over from a line that is in question itself', () => {
    const text = 'From precut 10" squares, cut 4 squares 5"\n(8) 4" squares';
    expect(marksOf(text)).toContain('no-fabric: (8) 4" squares');
  });

  it('lets a line without a fabric be in question after a line that left its heading', () => {
    const text = 'Red:\nFrom the blue cut (4) 5" squares\n(8) 4" squares';
    expect(marksOf(text)).toEqual(['fabric-unclear: (8) 4" squares']);
  });
});
