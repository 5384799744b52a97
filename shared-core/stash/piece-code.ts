import { z } from 'zod';
import type { FabricPieceId } from '#core/domain/ids';
import { failure, type Result, success } from '#core/result';

/**
 * The code on a piece's label: eight characters taken from the piece's own id and one that checks them. It is worked out, never
 * stored. Of the letters, I, L, O and U are left out: they are read as 1, 1, 0 and V.
 *
 *     7f3a0c5b-91…   the first forty bits of the id, five to a character
 *     FWX0RPWH 1     the characters, and the one that checks them
 *     FWX-0RP-WH1    as it is read
 */
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const SHAPE = /^[0-9A-HJKMNP-TV-Z]{9}$/;

/** Twenty bits at a time are five digits of the id and four characters of the code. */
const [HEX_HALF, CODE_HALF, BITS_A_CHARACTER] = [5, 4, 5];

export const pieceCode = z.string().regex(SHAPE).refine(hasItsCheck).brand('PieceCode');
export type PieceCode = z.infer<typeof pieceCode>;

/** not-a-code: not nine characters of the alphabet; mistyped: nine, but their check does not come out. */
export interface PieceCodeProblem {
  readonly code: 'not-a-code' | 'mistyped';
}

/** The code of a piece. Two pieces of a hundred thousand share one about once in two hundred such stashes. */
export function codeOfPiece(id: FabricPieceId): PieceCode {
  const digits = id.replaceAll('-', '');
  const halves = [digits.slice(0, HEX_HALF), digits.slice(HEX_HALF, 2 * HEX_HALF)];
  const characters = halves.map((half) => charactersOf(Number.parseInt(half, 16))).join('');
  return `${characters}${checkOf(characters)}` as PieceCode;
}

/** How the id of a piece with this code begins. */
export function idBeginning(code: PieceCode): string {
  const halves = [code.slice(0, CODE_HALF), code.slice(CODE_HALF, 2 * CODE_HALF)];
  const digits = halves.map((half) => numberOf(half).toString(16).padStart(HEX_HALF, '0')).join('');
  return `${digits.slice(0, 8)}-${digits.slice(8)}`;
}

/** `FWX-0RP-WHS`: in threes, as it is read aloud and typed. */
export function formatPieceCode(code: PieceCode): string {
  return [code.slice(0, 3), code.slice(3, 6), code.slice(6)].join('-');
}

/** Reads a code as it was typed or scanned: in any case, with any spaces and hyphens, O for 0 and I or L for 1. */
export function parsePieceCode(text: string): Result<PieceCode, PieceCodeProblem> {
  const read = text
    .replaceAll(/[\s\p{Pd}]/gu, '')
    .toUpperCase()
    .replaceAll('O', '0')
    .replaceAll(/[IL]/g, '1');
  if (!SHAPE.test(read)) return failure({ code: 'not-a-code' });
  return hasItsCheck(read) ? success(read as PieceCode) : failure({ code: 'mistyped' });
}

function charactersOf(number: number): string {
  return Array.from({ length: CODE_HALF }, (_character, place) =>
    ALPHABET.charAt((number >> (BITS_A_CHARACTER * (CODE_HALF - 1 - place))) & 31),
  ).join('');
}

function numberOf(characters: string): number {
  return Array.from(characters).reduce(
    (so, character) => (so << BITS_A_CHARACTER) | ALPHABET.indexOf(character),
    0,
  );
}

/**
 * The characters are numbers of the field of thirty-two, where adding is XOR, and the sum of each times its own power of two
 * must be nothing. All powers differ and none is nothing, so that one wrong character, or any two that changed places, leave
 * something over (derived).
 */
function weighed(characters: string): number {
  return Array.from(characters).reduce((so, character) => doubled(so) ^ ALPHABET.indexOf(character), 0);
}

function checkOf(characters: string): string {
  return ALPHABET.charAt(doubled(weighed(characters)));
}

function hasItsCheck(code: string): boolean {
  return weighed(code) === 0;
}

/** Twice a number of the field of thirty-two, made by x⁵ + x² + 1, of which two is a generator. */
function doubled(number: number): number {
  const twice = number << 1;
  return twice > 31 ? twice ^ 0b100101 : twice;
}
