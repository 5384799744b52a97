import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codeOfPiece, pieceOfCode } from '#core/stash/piece-code';

const anyNumber = fc.oneof(fc.nat({ max: 1_000_000 }), fc.nat());
const CHARACTERS = [...'23456789ABCDEFGHJKMNPQRSTVWXY'];

describe('the code of a piece', () => {
  test('is five characters for the first 707,281 pieces, none of them taken for another', () => {
    fc.assert(
      fc.property(fc.nat({ max: 29 ** 4 - 1 }), (number) => {
        expect(codeOfPiece(number)).toMatch(/^[2-9A-HJKMNP-TVWXY]{5}$/);
      }),
    );
  });

  test('leads back to the piece, in small letters and with gaps too', () => {
    fc.assert(
      fc.property(anyNumber, (number) => {
        const code = codeOfPiece(number);
        expect(pieceOfCode(code)).toBe(number);
        expect(pieceOfCode(` ${code.slice(0, 2).toLowerCase()}-${code.slice(2)}`)).toBe(number);
      }),
    );
  });

  test('with one character wrong is no code', () => {
    fc.assert(
      fc.property(anyNumber, fc.nat(), fc.constantFrom(...CHARACTERS), (number, at, wrong) => {
        const code = [...codeOfPiece(number)];
        const place = at % code.length;
        fc.pre(code[place] !== wrong);
        expect(pieceOfCode(code.with(place, wrong).join(''))).toBeNull();
      }),
    );
  });

  test('with two neighbors exchanged is no code', () => {
    fc.assert(
      fc.property(anyNumber, fc.nat(), (number, at) => {
        const code = [...codeOfPiece(number)];
        const place = at % (code.length - 1);
        const [one = '', other = ''] = [code[place], code[place + 1]];
        fc.pre(one !== other);
        expect(
          pieceOfCode(
            code
              .with(place, other)
              .with(place + 1, one)
              .join(''),
          ),
        ).toBeNull();
      }),
    );
  });

  test.each(['', '2', 'ring', '2222', '0000 0', 'KETTLE BLUE', '222222'])('“%s” is none', (typed) => {
    expect(pieceOfCode(typed)).toBeNull();
  });
});
