import fc from 'fast-check';
import type { ListShape } from '#core/cutting-list/list-reading';

/** A cutting list as it is meant, to be written in one manner or another. Sizes in eighths of an inch, or in millimeters. */
export interface MeantList {
  readonly fabrics: readonly MeantFabric[];
}

interface MeantFabric {
  readonly role: string;
  /** Squares cut from strips, at least as many strips as they take. */
  readonly side: number;
  readonly squares: number;
  /** Rectangles as wide as the squares. */
  readonly long: number;
  readonly rectangles: number;
  /** Squares cut on the diagonal. */
  readonly triangleSide: number;
  readonly triangleSquares: number;
  readonly diagonals: 1 | 2;
}

export interface MeantPatch {
  readonly shape: ListShape;
  readonly width: number;
  readonly length: number;
  readonly count: number;
  readonly role: string;
}

const ROLES = [
  'Pebble Dot',
  'Marlow Stripe',
  'Quill Gray solid',
  'Night Fern print',
  'Ember Batik',
  'Salt White',
];

export const anyMeantList: fc.Arbitrary<MeantList> = fc.record({
  fabrics: fc.uniqueArray(
    fc.record({
      role: fc.constantFrom(...ROLES),
      side: fc.integer({ min: 9, max: 60 }),
      squares: fc.integer({ min: 1, max: 200 }),
      long: fc.integer({ min: 61, max: 120 }),
      rectangles: fc.integer({ min: 1, max: 60 }),
      triangleSide: fc.integer({ min: 16, max: 90 }),
      triangleSquares: fc.integer({ min: 1, max: 40 }),
      diagonals: fc.constantFrom(1 as const, 2 as const),
    }),
    { minLength: 1, maxLength: 4, selector: ({ role }) => role },
  ),
});

/** What the list asks for; a manner without diagonals leaves out the triangles. */
export function meantPatches({ fabrics }: MeantList, hasDiagonals: boolean): readonly MeantPatch[] {
  return fabrics.flatMap((fabric) => {
    const { role, side, squares, long, rectangles, triangleSide: leg, triangleSquares, diagonals } = fabric;
    const triangles: MeantPatch = {
      shape: diagonals === 1 ? 'half-square-triangle' : 'quarter-square-triangle',
      width: leg,
      length: leg,
      count: 2 * diagonals * triangleSquares,
      role,
    };
    return [
      { shape: 'square', width: side, length: side, count: squares, role },
      { shape: 'rectangle', width: side, length: long, count: rectangles, role },
      ...(hasDiagonals ? [triangles] : []),
    ];
  });
}

export interface Manner {
  readonly name: string;
  readonly unit: 'eighths' | 'millimeters';
  readonly hasDiagonals: boolean;
  readonly write: (list: MeantList) => string;
}

type WriteSize = (size: number) => string;
type WriteFabric = (fabric: MeantFabric, strips: number) => readonly string[];

const EIGHTHS = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
const SIGNS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

function joined(whole: number, rest: string, joint: string): string {
  if (rest === '') return String(whole);
  return whole === 0 ? rest : `${String(whole)}${joint}${rest}`;
}

const plain: WriteSize = (size) => joined(Math.floor(size / 8), EIGHTHS[size % 8] ?? '', ' ');
const hyphen: WriteSize = (size) => joined(Math.floor(size / 8), EIGHTHS[size % 8] ?? '', '-');
const sign: WriteSize = (size) => joined(Math.floor(size / 8), SIGNS[size % 8] ?? '', '');
const decimal: WriteSize = (size) => String(size / 8);
const millimeters: WriteSize = String;
const centimeters: WriteSize = (size) => String(size / 10);
const commaCentimeters: WriteSize = (size) => centimeters(size).replace('.', ',');
const once = ({ diagonals }: MeantFabric) => (diagonals === 1 ? 'once' : 'twice');

function manner(name: string, head: string, fabric: WriteFabric, more: Partial<Manner> = {}): Manner {
  const { unit = 'eighths', hasDiagonals = true } = more;
  const width = unit === 'eighths' ? 8 * 42 : 1_060;
  const write = ({ fabrics }: MeantList) =>
    [head, ...fabrics.flatMap((one) => fabric(one, Math.ceil(one.squares / Math.floor(width / one.side))))]
      .filter((line) => line !== '')
      .join('\n');
  return { name, unit, hasDiagonals, write };
}

const METRIC = { unit: 'millimeters' } as const;
const TABLE = { hasDiagonals: false } as const;

/** Twenty manners of writing the same list. */
export const MANNERS: readonly Manner[] = [
  manner('strips and squares in one line', 'Cutting', (f, k) => [
    `From the ${f.role} cut (${k}) strips ${plain(f.side)} in x width of fabric; subcut into (${f.squares}) ${plain(f.side)} in squares`,
    `From the ${f.role} cut (${f.rectangles}) rectangles ${plain(f.side)} in x ${plain(f.long)} in`,
    `From the ${f.role} cut (${f.triangleSquares}) ${plain(f.triangleSide)} in squares; cut ${once(f)} on the diagonal`,
  ]),
  manner('fabric as a heading, with bullets', '', (f) => [
    `${f.role}:`,
    `• (${f.squares}) ${sign(f.side)}″ squares`,
    `• (${f.rectangles}) ${sign(f.side)}″ × ${sign(f.long)}″ rectangles`,
    `• (${f.triangleSquares}) ${sign(f.triangleSide)}″ squares, cut ${once(f)} diagonally`,
  ]),
  manner('subcut into a list of its own', 'Cutting instructions:', (f, k) => [
    f.role,
    `Cut (${k}) ${plain(f.side)}" x WOF strips. Subcut into:`,
    `- (${f.squares}) ${plain(f.side)}" squares`,
    `Cut (${f.rectangles}) ${plain(f.side)}" x ${plain(f.long)}" rectangles`,
    `Cut (${f.triangleSquares}) ${plain(f.triangleSide)}" squares. Cut each square ${once(f)} on the diagonal.`,
  ]),
  manner('by block, for all of them', 'Block A (make 12), for all blocks:', (f) => [
    `${f.role}: ${f.squares} squares ${plain(f.side)}"`,
    `${f.role}: ${f.rectangles} rectangles ${plain(f.side)}" x ${plain(f.long)}"`,
    `${f.role}: ${f.triangleSquares} squares ${plain(f.triangleSide)}", cut diagonally ${once(f)}`,
  ]),
  manner('count, at, size', '', (f) => [
    `${f.role} – ${f.squares} @ ${sign(f.side)}" sq.`,
    `${f.role} – ${f.rectangles} @ ${sign(f.side)}" x ${sign(f.long)}"`,
    `${f.role} – ${f.triangleSquares} @ ${sign(f.triangleSide)}" sq., cut ${f.diagonals}x diagonally`,
  ]),
  manner('size first', '', (f) => [
    `${f.role}:`,
    `${plain(f.side)}" squares: cut ${f.squares}`,
    `${plain(f.side)}" x ${plain(f.long)}" rectangles: cut ${f.rectangles}`,
    `${plain(f.triangleSide)}" squares: cut ${f.triangleSquares}, cut ${once(f)} on the diagonal`,
  ]),
  manner('count times size', '', (f) => [
    `${f.role}:`,
    `${f.squares} x ${hyphen(f.side)}" x ${hyphen(f.side)}" squares`,
    `${f.rectangles} x ${hyphen(f.side)}" x ${hyphen(f.long)}"`,
    `${f.triangleSquares} x ${hyphen(f.triangleSide)}" x ${hyphen(f.triangleSide)}" squares, ${once(f)} diagonally`,
  ]),
  manner('decimals', '', (f) => [
    `From ${f.role}: ${f.squares} squares ${decimal(f.side)}" x ${decimal(f.side)}"`,
    `From ${f.role}: ${f.rectangles} rectangles ${decimal(f.side)}" x ${decimal(f.long)}"`,
    `From ${f.role}: ${f.triangleSquares} squares ${decimal(f.triangleSide)}", cut ${once(f)} diagonally`,
  ]),
  manner('one unit at the end', '', (f) => [
    `${f.role}: ${f.squares} squares ${plain(f.side)} x ${plain(f.side)} in`,
    `${f.role}: ${f.rectangles} pieces ${plain(f.side)} x ${plain(f.long)} in`,
    `${f.role}: ${f.triangleSquares} squares ${plain(f.triangleSide)} in, cut ${once(f)} on the diagonal`,
  ]),
  manner('fabric at the end', '', (f) => [
    `Cut ${f.squares} squares, ${plain(f.side)} inches, from the ${f.role}.`,
    `Cut ${f.rectangles} rectangles, ${plain(f.side)} by ${plain(f.long)} inches, from the ${f.role}.`,
    `Cut ${f.triangleSquares} squares, ${plain(f.triangleSide)} inches, from the ${f.role}; cut ${once(f)} on the diagonal.`,
  ]),
  manner('fabric in parentheses', '', (f) => [
    `(${f.squares}) ${plain(f.side)}" squares (${f.role})`,
    `(${f.rectangles}) ${plain(f.side)}" x ${plain(f.long)}" rectangles (${f.role})`,
    `(${f.triangleSquares}) ${plain(f.triangleSide)}" squares (${f.role}), cut ${once(f)} on the diagonal`,
  ]),
  manner('triangles counted', '', (f) => [
    `${f.role} — cut:`,
    `(${f.squares}) ${plain(f.side)}" squares (${f.squares} total)`,
    `(${f.rectangles}) ${plain(f.side)}" x ${plain(f.long)}" rectangles for the border`,
    `(${f.triangleSquares}) ${plain(f.triangleSide)}" squares; cut ${once(f)} on the diagonal to make (${2 * f.diagonals * f.triangleSquares}) triangles`,
  ]),
  manner('numbered steps', '', (f, k) => [
    `1. From ${f.role}, cut:`,
    `   - ${k} strips, ${plain(f.side)} in x WOF. From the strips, cut ${f.squares} squares, ${plain(f.side)} in.`,
    `   - ${f.rectangles} rectangles, ${plain(f.side)} x ${plain(f.long)} in`,
    `   - ${f.triangleSquares} squares, ${plain(f.triangleSide)} in; cut each ${once(f)} diagonally`,
  ]),
  manner('sentences', '', (f, k) => [
    `From the ${f.role}, cut ${k} ${hyphen(f.side)}-inch-wide strips across the width of the fabric. Cut the strips into ${f.squares} ${hyphen(f.side)}-inch squares.`,
    `Next cut ${f.rectangles} rectangles that measure ${plain(f.side)} inches by ${plain(f.long)} inches from the ${f.role}.`,
    `Also cut ${f.triangleSquares} squares that measure ${plain(f.triangleSide)} inches from the ${f.role}. Cut each square ${once(f)} on the diagonal.`,
  ]),
  manner(
    'metric, with strips',
    'All sizes include seam allowances.',
    (f, k) => [
      `From the ${f.role}: cut ${k} strips ${centimeters(f.side)} cm x WOF, then crosscut into ${f.squares} squares ${centimeters(f.side)} cm.`,
      `Cut ${f.rectangles} rectangles ${centimeters(f.side)} × ${centimeters(f.long)} cm from the ${f.role}.`,
      `Cut ${f.triangleSquares} squares ${centimeters(f.triangleSide)} cm from the ${f.role}, cut ${once(f)} on the diagonal.`,
    ],
    METRIC,
  ),
  manner(
    'millimeters without a unit',
    'All sizes are in mm',
    (f) => [
      `${f.role}:`,
      `${f.squares} squares ${millimeters(f.side)} x ${millimeters(f.side)}`,
      `${f.rectangles} pieces ${millimeters(f.side)} x ${millimeters(f.long)}`,
      `${f.triangleSquares} squares ${millimeters(f.triangleSide)} x ${millimeters(f.triangleSide)}, cut ${once(f)} diagonally`,
    ],
    METRIC,
  ),
  manner(
    'a table with tabs',
    'Fabric\tQty\tSize\tShape',
    (f) => [
      [f.role, f.squares, `${plain(f.side)}" x ${plain(f.side)}"`, 'squares'].join('\t'),
      [f.role, f.rectangles, `${plain(f.side)}" x ${plain(f.long)}"`, 'rectangles'].join('\t'),
    ],
    TABLE,
  ),
  manner(
    'a table with bars',
    '| Fabric | Count | Width | Length |\n|---|---|---|---|',
    (f) => [
      `| ${f.role} | ${f.squares} | ${plain(f.side)} in | ${plain(f.side)} in |`,
      `| ${f.role} | ${f.rectangles} | ${plain(f.side)} in | ${plain(f.long)} in |`,
    ],
    TABLE,
  ),
  manner(
    'a table with semicolons and decimal commas',
    'Fabric;Qty;Width;Length',
    (f) => [
      `${f.role};${f.squares};${commaCentimeters(f.side)} cm;${commaCentimeters(f.side)} cm`,
      `${f.role};${f.rectangles};${commaCentimeters(f.side)} cm;${commaCentimeters(f.long)} cm`,
    ],
    { ...TABLE, ...METRIC },
  ),
  manner('size again in the other unit', '', (f) => {
    const cm = (size: number) => ((size / 8) * 2.54).toFixed(1);
    return [
      `${f.role}:`,
      `Cut (${f.squares}) ${plain(f.side)}" (${cm(f.side)} cm) squares.`,
      `Cut (${f.rectangles}) ${plain(f.side)}" x ${plain(f.long)}" (${cm(f.side)} x ${cm(f.long)} cm) rectangles.`,
      `Cut (${f.triangleSquares}) ${plain(f.triangleSide)}" (${cm(f.triangleSide)} cm) squares, then cut ${once(f)} on the diagonal.`,
    ];
  }),
];
