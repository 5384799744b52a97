import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FabricPieceId } from '#core/domain/ids';
import { codeOfPiece, formatPieceCode, idBeginning, parsePieceCode, pieceCode } from '#core/stash/piece-code';

const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const id = fc.uuid() as fc.Arbitrary<FabricPieceId>;
const SOME = [
  '00000000-0000-4000-8000-000000000000',
  'ffffffff-ffff-4fff-bfff-ffffffffffff',
  '7f3a0c5b-91d2-4e6f-8a01-23456789abcd',
  '0123abcd-ef45-4678-9abc-def012345678',
] as FabricPieceId[];

describe('the code of a piece', () => {
  it('gives the beginning of any id, and is a valid code in the contract', () => {
    fc.assert(
      fc.property(id, (pieceId) => {
        const code = codeOfPiece(pieceId);
        expect(idBeginning(code)).toBe(pieceId.slice(0, 11));
        expect(pieceCode.safeParse(code).success).toBe(true);
        expect(code).toMatch(/^[0-9A-Z]{9}$/);
        expect(code).not.toMatch(/[ILOU]/);
      }),
    );
  });

  it('is read back in any case, with any spaces and hyphens', () => {
    fc.assert(
      fc.property(id, fc.array(fc.nat(3), { minLength: 11, maxLength: 11 }), (pieceId, ways) => {
        const code = codeOfPiece(pieceId);
        const typed = Array.from(formatPieceCode(code)).map((character, place) => {
          const way = ways[place] ?? 0;
          if (character === '-') return ['-', ' ', '', ' – '][way] ?? '';
          if (character === '0') return ['0', 'o', 'O', '0'][way] ?? '';
          if (character === '1') return ['1', 'i', 'L', 'l'][way] ?? '';
          return way === 0 ? character.toLowerCase() : character;
        });
        expect(parsePieceCode(` ${typed.join('')} `)).toEqual({ ok: true, value: code });
      }),
    );
  });

  it('rejects every change of a single character', () => {
    for (const code of SOME.map(codeOfPiece)) {
      for (let place = 0; place < code.length; place += 1) {
        for (const other of ALPHABET) {
          if (other === code[place]) continue;
          const slipped = `${code.slice(0, place)}${other}${code.slice(place + 1)}`;
          expect(parsePieceCode(slipped)).toEqual({ ok: false, error: { code: 'mistyped' } });
        }
      }
    }
  });

  it('rejects any two swapped characters', () => {
    fc.assert(
      fc.property(id, (pieceId) => {
        const code = codeOfPiece(pieceId);
        for (let one = 0; one < code.length; one += 1) {
          for (let other = one + 1; other < code.length; other += 1) {
            if (code[one] === code[other]) continue;
            const swapped = Array.from(code);
            [swapped[one], swapped[other]] = [code.charAt(other), code.charAt(one)];
            expect(parsePieceCode(swapped.join('')).ok).toBe(false);
          }
        }
      }),
    );
  });

  it('is distinguished from text that is not a code', () => {
    const none = ['', 'ABC', '0123456789', 'ABCDEFGHU', 'Kettle blue', 'AB.CDEFGH', '1234567é9'];
    for (const text of none) {
      expect(parsePieceCode(text)).toEqual({ ok: false, error: { code: 'not-a-code' } });
    }
  });

  it('is printed in groups of three', () => {
    const pieceId = '7f3a0c5b-91d2-4e6f-8a01-23456789abcd' as FabricPieceId;
    expect(formatPieceCode(codeOfPiece(pieceId))).toBe('FWX-0RP-WH1');
  });
});
