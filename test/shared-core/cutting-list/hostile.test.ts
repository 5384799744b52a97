import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCuttingList } from '#core/cutting-list/read-cutting-list';
import {
  anyMeantList,
  type Manner,
  MANNERS,
  type MeantList,
  meantPatches,
} from '#test/helpers/written-lists';

const WORDS = [
  ...[
    'cut',
    'subcut',
    'into',
    'from',
    'the',
    'each',
    'strips',
    'squares',
    'WOF',
    'x',
    'once',
    'twice',
    'on',
    'diagonal',
  ],
  ...[
    'block',
    'make',
    'for',
    'per',
    'total',
    'red',
    'fabric',
    'A',
    '(',
    ')',
    ':',
    ';',
    '-',
    '|',
    '\t',
    '\n',
    '2',
    '1/2',
  ],
  ...[
    '2 1/2"',
    '10 cm',
    '0',
    '1/0',
    '999999999999999999',
    '½',
    '1,250',
    'yd',
    'finished',
    'size',
    'half',
    'all',
    '🧵',
    '\u0000',
  ],
];

const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 300 }),
  fc.array(fc.constantFrom(...WORDS), { maxLength: 60 }).map((words) => words.join(' ')),
);

/** More of one thing than any list has. Where time grew with the square of it, none of these would end within the time of a test. */
const LONG: readonly (readonly [string, string])[] = [
  ['lines', '(4) 2 1/2" squares from the red\n'],
  ['headings of new fabrics', 'Fabric of mine:\n'],
  ['patches in one line', '(4) 2 1/2" squares, '],
  ['strips in one line', '(4) 2 1/2" x WOF strips and '],
  ['numbers', '1 '],
  ['digits', '1'],
  ['letters', 'a'],
  ['spaces', ' '],
  ['brackets', '('],
  ['verbs', 'cut '],
  ['small words', 'once to the in size into each '],
  ['fractions', '1/2 x '],
  ['bars', 'a|'],
];

describe('any text', () => {
  it('is read without an exception, with marks within its lines', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom('in' as const, 'cm' as const, 'mm' as const), (text, unit) => {
        const { lines } = readCuttingList(text, unit);
        expect(lines.map((line) => line.text).join('\n')).toBe(text.replace(/\r\n|[\r\u2028\u2029]/gu, '\n'));
        for (const { text: line, marks, patches } of lines) {
          for (const { from, to } of marks) {
            expect(from).toBeGreaterThanOrEqual(0);
            expect(to).toBeGreaterThan(from);
            expect(to).toBeLessThanOrEqual(line.length);
          }
          for (const { count, cut, width, length } of patches) {
            expect(Number.isSafeInteger(count) && count >= cut && cut > 0).toBe(true);
            expect(width > 0 && (length === null || length > 0)).toBe(true);
          }
        }
      }),
      { numRuns: 400 },
    );
  });

  it.each(LONG)('however long is read to its end: %s', (_, part) => {
    const text = part.repeat(60_000 / part.length);
    expect(
      readCuttingList(text, 'in')
        .lines.map((line) => line.text)
        .join('\n'),
    ).toBe(text);
  });

  it('names a great many fabrics apart', () => {
    const text = Array.from(
      { length: 20_000 },
      (_, index) => `Red ${String.fromCodePoint(0x4e00 + index)}: 2 squares 5"`,
    ).join('\n');
    expect(readCuttingList(text, 'in').roles).toHaveLength(20_000);
  });
});

const NOISE = [
  'each',
  'or',
  'half',
  'not',
  'extra',
  'zorple',
  'twice',
  'per',
  'minus',
  'trim',
  'about',
  '7',
  '+',
  'both',
  'unless',
];

describe('a word that does not belong there', () => {
  const sizesOf = (manner: Manner, list: MeantList) =>
    meantPatches(list, manner.hasDiagonals).map(({ shape, count }) => `${String(count)} ${shape}`);

  it('leaves the patches as they are meant, or a mark', () => {
    const place = fc.nat({ max: 10_000 });
    fc.assert(
      fc.property(
        fc.constantFrom(...MANNERS),
        anyMeantList,
        fc.constantFrom(...NOISE),
        place,
        (manner, list, noise, at) => {
          const text = manner.write(list);
          const gaps = [...text.matchAll(/ /gu)].map(({ index }) => index);
          const gap = gaps[at % gaps.length] ?? 0;
          const noisy = `${text.slice(0, gap)} ${noise}${text.slice(gap)}`;
          // Here the word belongs: the squares of each strip are counted.
          fc.pre(noise !== 'each' || !/cut (?:the )?each (?!square|once|twice)/iu.test(noisy));
          const reading = readCuttingList(noisy, 'in');
          const isMarked = reading.lines.some(({ marks }) => marks.length > 0);
          const read = reading.patches.map(({ shape, count }) => `${String(count)} ${shape}`);
          if (!isMarked)
            expect(read, reading.lines.map((line) => line.text).join('\n')).toEqual(sizesOf(manner, list));
        },
      ),
      { numRuns: 1_500 },
    );
  });
});
