import { describe, expect, it } from 'vitest';
import type { PieceKind, FabricPiece } from '#core/domain/stash';
import { fabricPieceIdSchema, fabricIdSchema } from '#core/domain/ids';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';
import {
  freeWords,
  bookedLength,
  freeLengthWords,
  roundedLength,
  pieceInWords,
  pieceSize,
  stockWords,
  stockOf,
} from '#renderer/features/stash/fabric-words';

const inch: LengthDisplay = { system: 'inch', inchStep: 8 };
const metric: LengthDisplay = { system: 'metric', inchStep: 8 };
const inches = lengthFromInches;
const id = '00000000-0000-4000-8000-000000000001';

const piece = (kind: PieceKind, there: number, held = 0, width = 42): FabricPiece => ({
  id: fabricPieceIdSchema.parse(id),
  fabricId: fabricIdSchema.parse(id),
  kind,
  kindId: null,
  unitLength: null,
  place: '',
  printRuns: 'along' as const,
  width: inches(width),
  there: inches(there),
  held: inches(held),
  valueMinor: 0,
});
const words = (...pieces: readonly FabricPiece[]) => stockWords(stockOf(pieces), inch);

describe('the stock of a fabric in words', () => {
  it('adds up what is measured by length and counts the rest', () => {
    const pieces = [
      piece('yardage', 63),
      piece('leftover', 12),
      piece('yardage', 36),
      piece('fat-quarter', 18),
    ];
    expect(words(...pieces)).toBe('2¾ yd, 1 fat quarter and 1 leftover');
    expect(words(piece('fat-quarter', 18, 0, 22), piece('fat-quarter', 18))).toBe('2 fat quarters');
    expect(words(piece('fat-quarter', 13, 0, 22), piece('fat-eighth', 9, 0, 20))).toBe(
      '1 fat eighth and 1 leftover',
    );
    expect(words(piece('wide-backing', 90))).toBe('2½ yd of wide backing');
  });

  it('leaves out pieces that are used up, and is empty without any', () => {
    expect(words(piece('yardage', 36), piece('leftover', 0))).toBe('1 yd');
    expect(words()).toBe('');
  });

  it('never promises more than there is', () => {
    expect(words(piece('yardage', 44.9))).toBe('1⅛ yd');
    expect(words(piece('yardage', 13.7))).toBe('13⅝ in');
  });

  it('mentions free fabric only if some is set aside', () => {
    expect(freeWords([piece('yardage', 72)], inch)).toBeNull();
    expect(freeWords([piece('yardage', 72, 27), piece('leftover', 10, 10)], inch)).toBe('1¼ yd free');
    expect(freeWords([piece('yardage', 72, 72)], inch)).toBe('all of it set aside');
    expect(freeWords([piece('leftover', 20, 5)], inch)).toBe('partly set aside');
  });
});

describe('a length of fabric in words', () => {
  it('is in yards or meters from half of one up, rounded down', () => {
    expect(roundedLength(inches(18), inch)).toBe('½ yd');
    expect(roundedLength(inches(17), inch)).toBe('17 in');
    expect(roundedLength(lengthFromMillimeters(1_290), metric)).toBe('1.25 m');
  });

  it('is as exact as it was booked', () => {
    expect(bookedLength(inches(72), inch)).toBe('2 yd');
    expect(bookedLength(inches(37.5), inch)).toBe('37½ in');
    expect(bookedLength(inches(9), inch)).toBe('9 in');
    expect(bookedLength(lengthFromMillimeters(610), metric)).toBe('61 cm');
  });

  it('is rounded to shop lengths if it is free and long, and exact if it is short', () => {
    expect(freeLengthWords(inches(515), inch)).toBe('14¼ yd');
    expect(freeLengthWords(inches(28), inch)).toBe('28 in');
  });

  it('names a piece by the measure of its kind', () => {
    const size = { width: inches(22), length: inches(18) };
    expect(pieceInWords({ kind: 'fat-quarter', unitLength: null, ...size }, inch)).toBe(
      'a fat quarter, 22 × 18 in',
    );
    expect(pieceInWords({ ...piece('yardage', 45), length: inches(45) }, inch)).toBe('1¼ yd');
    expect(pieceSize(size, metric)).toBe('55.8 × 45.7 cm');
  });
});
