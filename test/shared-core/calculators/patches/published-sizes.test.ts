import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import type { UnitSizes } from '#core/calculators/patches/patch-units';
import { type Length, lengthFromMillimeters, UNITS_PER_INCH, UNITS_PER_MILLIMETER } from '#core/units/length';
import {
  answerOf,
  cornerTriangles,
  cutInches,
  detailsOf,
  exactInches,
  geese,
  hst,
  inches,
  sideTriangles,
} from './bench-input';

const square = (side: Length): UnitSizes => ({ unit: 'square', side });
const qst = (side: Length): UnitSizes => ({ unit: 'quarter-square-triangles', side });
const rectangle = (width: Length, length: Length): UnitSizes => ({ unit: 'rectangle', width, length });

describe('squares, rectangles and triangles', () => {
  // Published: COM, LES1.
  it.each([
    [3, 3.5],
    [6, 6.5],
    [9, 9.5],
  ])('a square that finishes at %d in is cut %d in', (finished, cut) => {
    expect(cutInches(square(inches(finished)))).toBe(cut);
  });

  it('a rectangle that finishes at 2½ by 5 in is cut 3 by 5½ in (published: LES1)', () => {
    const [patch] = detailsOf(rectangle(inches(2.5), inches(5))).patches;
    expect([patch!.across, patch!.along]).toEqual([inches(3), inches(5.5)]);
  });

  // Published: NHQ, COM. The slip 2 in to 3 3/8 in is in print too.
  it.each([
    [6, 6.875],
    [3, 3.875],
    [2, 2.875],
  ])('half-square triangles of %d in come from squares of %d in', (finished, cut) => {
    expect(cutInches(hst(inches(finished)))).toBe(cut);
    expect(cutInches(hst(inches(finished)), undefined, { rounding: 'exact' })).toBe(cut);
  });

  it('does not repeat the misprint of 3 3/8 in for 2 in half-square triangles (derived: 2 7/8 in)', () => {
    expect(cutInches(hst(inches(2)))).toBe(2.875);
  });

  it('3 in quarter-square triangles come from 4¼ in squares (published: NHQ)', () => {
    expect(cutInches(qst(inches(3)))).toBe(4.25);
  });

  it('eight half-square triangles at a time take two squares of 2F + 1¾ in (derived)', () => {
    const { patches } = detailsOf(hst(inches(3), 'eight'), { count: 9 });
    expect(patches.map(({ across, count }) => [across / UNITS_PER_INCH, count])).toEqual([
      [7.75, 2],
      [7.75, 2],
    ]);
  });

  it('four half-square triangles at a time, sewn around the edge, take squares of (F + ½)√2 + ½ in (derived)', () => {
    expect(exactInches(hst(inches(3), 'four'))).toBeCloseTo(3.5 * Math.SQRT2 + 0.5, 9);
  });

  // Derived: exact additions at metric and inch seams, to the hundredth of a millimeter.
  it.each([
    [5, 17.07, 24.14],
    [6, 20.49, 28.97],
    [6.35, 21.68, 30.66],
    [7.5, 25.61, 36.21],
    [10, 34.14, 48.28],
  ])('a seam of %d mm adds %d and %d mm', (seam, half, quarter) => {
    const seamAllowance = lengthFromMillimeters(seam);
    const side = lengthFromMillimeters(100);
    const added = (unit: UnitSizes) =>
      detailsOf(unit, { seamAllowance }).patches[0]!.acrossExact / UNITS_PER_MILLIMETER - 100;
    expect(added(hst(side))).toBeCloseTo(half, 2);
    expect(added(qst(side))).toBeCloseTo(quarter, 2);
  });

  it('is not too small, as the metric rule of 2.5 and 3.5 cm is with a 7.5 mm seam (from memory)', () => {
    const changes = { seamAllowance: lengthFromMillimeters(7.5), cutStep: lengthFromMillimeters(1) };
    const side = lengthFromMillimeters(100);
    expect(detailsOf(hst(side), changes).patches[0]!.across).toBe(lengthFromMillimeters(126));
    expect(detailsOf(qst(side), changes).patches[0]!.across).toBe(lengthFromMillimeters(137));
  });

  it('uses 7/8 in for a quarter-inch seam and no other', () => {
    const other = { seamAllowance: inches(3 / 8), cutStep: inches(1 / 64) };
    expect(cutInches(hst(inches(3)), undefined, other)).toBeCloseTo(3 + 82 / 64, 9);
  });

  it('is exact for fractions: the same as fraction arithmetic', () => {
    for (let sixteenths = 1; sixteenths <= 400; sixteenths += 7) {
      const side = new Fraction(sixteenths, 16);
      const { patches } = detailsOf(square(inches(side.valueOf())), { cutStep: inches(1 / 16) });
      expect(new Fraction(patches[0]!.across, UNITS_PER_INCH).equals(side.add('1/2'))).toBe(true);
      const [pair] = detailsOf(hst(inches(side.valueOf())), { cutStep: inches(1 / 16) }).patches;
      expect(new Fraction(pair!.across, UNITS_PER_INCH).equals(side.add('7/8'))).toBe(true);
    }
  });
});

describe('flying geese, squares in squares, octagons, stars', () => {
  // Common practice: four at a time, large and small square.
  it.each([
    [1, 3.25, 1.875],
    [1.5, 4.25, 2.375],
    [2, 5.25, 2.875],
    [3, 7.25, 3.875],
    [4, 9.25, 4.875],
    [1.25, 3.75, 2.125],
    [2.25, 5.75, 3.125],
    [2.75, 6.75, 3.625],
  ])('geese %d in high take squares of %d and %d in', (height, large, small) => {
    expect(cutInches(geese(inches(height)), 'Large square')).toBe(large);
    expect(cutInches(geese(inches(height)), 'Small square')).toBe(small);
  });

  it('a 4 in center has 3¾ in corner squares around it (published: HOHN00)', () => {
    const unit: UnitSizes = { unit: 'square-in-a-square', side: inches(4 * Math.SQRT2) };
    expect(exactInches(unit, 'Center square')).toBeCloseTo(4.5, 3);
    expect(cutInches(unit, 'Corner square')).toBe(3.75);
  });

  it('divides by 1.414 and does not multiply as a misprint does, which gives 6.53 in (derived)', () => {
    expect(
      exactInches({ unit: 'square-in-a-square', side: inches(4 * Math.SQRT2) }, 'Corner square'),
    ).toBeLessThan(4);
  });

  it('a center that finishes at 4 in makes a 5.657 in unit (derived)', () => {
    const made = detailsOf({ unit: 'square-in-a-square', side: inches(4.5) }, { sizesAre: 'cut' });
    expect(made.finishedWidth / UNITS_PER_INCH).toBeCloseTo(5.657, 3);
  });

  it('a 12 in octagon has corners of 4½ in by thirds and 4.0147 in if it is regular (derived)', () => {
    const unit = (corner: 'thirds' | 'regular'): UnitSizes => ({
      unit: 'octagon-corners',
      side: inches(12),
      corner,
    });
    expect(cutInches(unit('thirds'), 'Corner square')).toBe(4.5);
    expect(exactInches(unit('regular'), 'Corner square')).toBeCloseTo(4.0147, 4);
  });

  // Published: COL, pp. 65-67; DOL for 18 in.
  it.each([
    [6, 1.7574],
    [15, 4.3936],
    [18, 5.2724],
  ])('the diamonds of an eight-point star of %d in have sides of %d in', (block, side) => {
    const cut = exactInches({ unit: 'eight-point-star', side: inches(block) }, 'Corner square');
    expect(Math.abs(cut - 0.5 - side)).toBeLessThan(0.0005);
  });

  it('hexagons with sides of 1, 1½, 2, 3 in are cut from strips of 2.2321, 3.0981, 3.9641, 5.6962 in (derived)', () => {
    const strips = [1, 1.5, 2, 3].map((side) => exactInches({ unit: 'hexagon', side: inches(side) }));
    [2.2321, 3.0981, 3.9641, 5.6962].forEach((strip, at) => expect(strips[at]).toBeCloseTo(strip, 4));
  });

  it('2 in diamonds take strips of 2.2321 in at 60° and 1.9142 in at 45° (derived)', () => {
    const strip = (angle: '60' | '45') => exactInches({ unit: 'diamond', side: inches(2), angle });
    expect(strip('60')).toBeCloseTo(2.2321, 4);
    expect(strip('45')).toBeCloseTo(2 * Math.SQRT1_2 + 0.5, 9);
    const [sixty] = detailsOf({ unit: 'diamond', side: inches(2), angle: '60' }).patches;
    expect(sixty!.alongExact / UNITS_PER_INCH).toBeCloseTo(2.5774, 4);
  });

  it('an equilateral triangle 4¼ in high has sides of 4.91 in and takes a 5 in strip (common practice)', () => {
    const side = inches((4.25 * 2) / Math.sqrt(3));
    const unit: UnitSizes = { unit: 'equilateral-triangle', side };
    expect(exactInches(unit)).toBeCloseTo(5, 3);
    expect(side / UNITS_PER_INCH).toBeCloseTo(4.91, 2);
  });
});

describe('setting triangles and sets on point', () => {
  // Published: HOHN02 (side and corner by rule; exact columns derived).
  it.each([
    [4, 7, 6.864, 3.75, 3.682],
    [5, 8.375, 8.2782, 4.5, 4.3891],
    [6, 9.75, 9.6924, 5.125, 5.0962],
    [8, 12.625, 12.5208, 6.625, 6.5104],
    [9, 14, 13.935, 7.25, 7.2175],
    [11, 16.875, 16.7635, 8.75, 8.6317],
    [12, 18.25, 18.1777, 9.375, 9.3388],
    [13, 19.75, 19.5919, 10.125, 10.0459],
    [14, 21.125, 21.0061, 10.875, 10.753],
    [16, 23.875, 23.8345, 12.25, 12.1673],
  ])(
    'for blocks of %d in: side %d (exact %d), corner %d (exact %d)',
    (b, side, exactSide, corner, exactCorner) => {
      expect(cutInches(sideTriangles(inches(b)))).toBe(side);
      expect(exactInches(sideTriangles(inches(b)))).toBeCloseTo(exactSide, 4);
      expect(cutInches(cornerTriangles(inches(b)))).toBe(corner);
      expect(exactInches(cornerTriangles(inches(b)))).toBeCloseTo(exactCorner, 4);
    },
  );

  it('differs from the customary size if exact sizes are wanted: 6 7/8 in at 4 in, 19 5/8 in at 13 in (derived)', () => {
    expect(cutInches(sideTriangles(inches(4)), undefined, { rounding: 'exact' })).toBe(6.875);
    expect(cutInches(sideTriangles(inches(13)), undefined, { rounding: 'exact' })).toBe(19.625);
  });

  // Known slips in print: 3 1/2 in: corner 3 5/8 or 3 1/2; 8 1/2 in: corner 6 7/8; 11 1/2 in: side 17 1/2.
  it('does not repeat the misprints of charts (derived)', () => {
    expect(cutInches(cornerTriangles(inches(3.5)))).toBe(3.375);
    expect(cutInches(cornerTriangles(inches(8.5)))).toBe(7);
    expect(cutInches(sideTriangles(inches(11.5)))).toBe(17.625);
  });

  it('is never too small, as the shorthand 1.41 is, which cuts 21 in and 10 3/4 in for 14 in blocks (derived)', () => {
    for (const rounding of ['customary', 'exact'] as const) {
      expect(cutInches(sideTriangles(inches(14)), undefined, { rounding })).toBeGreaterThanOrEqual(21.0061);
      expect(cutInches(cornerTriangles(inches(14)), undefined, { rounding })).toBeGreaterThanOrEqual(10.753);
    }
  });

  it('three by four 6 in blocks make 25.456 by 33.941 in with 6 squares, 10 side triangles from 3 squares and 4 corners from 2 (derived)', () => {
    const set = detailsOf({ unit: 'on-point-set', block: inches(6), across: 3, down: 4 });
    expect(set.finishedWidth / UNITS_PER_INCH).toBeCloseTo(25.456, 3);
    expect(set.finishedLength / UNITS_PER_INCH).toBeCloseTo(33.941, 3);
    expect(set.patches.map(({ count }) => count)).toEqual([6, 3, 2]);
  });
});

describe('log cabins, sashing and borders', () => {
  const lengthsOf = (center: number, first: number, second: number, rounds: number, seam = 0.25) => {
    const [centerSize, firstStrip, secondStrip] = [center, first, second].map((cut) => inches(cut));
    const unit: UnitSizes = {
      unit: 'log-cabin',
      center: centerSize!,
      firstStrip: firstStrip!,
      secondStrip: secondStrip!,
      rounds,
    };
    const details = detailsOf(unit, { sizesAre: 'cut', seamAllowance: inches(seam) });
    return { details, lengths: details.patches.map(({ along }) => along / UNITS_PER_INCH) };
  };

  it('a 3 in center with 1¾ in strips grows to 10½ in and finishes at 10 in (published: BRU)', () => {
    const { details, lengths } = lengthsOf(3, 1.75, 1.75, 3);
    expect(lengths).toEqual([3, 3, 4.25, 4.25, 5.5, 5.5, 6.75, 6.75, 8, 8, 9.25, 9.25, 10.5]);
    expect(details.finishedWidth).toBe(inches(10));
  });

  it('strips of two widths, 1¼ and 2 in, around a 2 in center finish at 8¼ in (common practice)', () => {
    const { details, lengths } = lengthsOf(2, 1.25, 2, 3);
    expect(lengths.slice(1)).toEqual([2, 2.75, 2.75, 4.25, 4.25, 5, 5, 6.5, 6.5, 7.25, 7.25, 8.75]);
    expect(details.finishedWidth).toBe(inches(8.25));
  });

  it('½ in seams take a 5 in center and 3 in strips (common practice)', () => {
    const { lengths } = lengthsOf(5, 3, 3, 2, 0.5);
    expect(lengths.slice(1)).toEqual([5, 7, 7, 9, 9, 11, 11, 13]);
  });

  it('five by six 12 in blocks with 3 in sashing make 72 by 87 in, and 78 by 93 in with sashing around the outside (common practice)', () => {
    const block = { blockWidth: inches(12), blockLength: inches(12), across: 5, down: 6 } as const;
    for (const cornerstones of [true, false]) {
      const sizeOf = (outside: boolean) => {
        const made = detailsOf({ unit: 'sashing', ...block, sashing: inches(3), cornerstones, outside });
        return [made.finishedWidth, made.finishedLength];
      };
      expect(sizeOf(false)).toEqual([inches(72), inches(87)]);
      expect(sizeOf(true)).toEqual([inches(78), inches(93)]);
    }
  });

  it('a 1 in border around 32½ by 44 in takes 2 strips of 44 and 2 of 34½ in, the next one 46 and 38½ in (common practice)', () => {
    const border = (width: number, length: number, cut: number) =>
      detailsOf(
        {
          unit: 'butted-border',
          topWidth: inches(width),
          topLength: inches(length),
          border: inches(cut),
          corners: 'butted',
        },
        { sizesAre: 'cut' },
      ).patches.map(({ along, count }) => [along / UNITS_PER_INCH, count]);
    expect(border(32.5, 44, 1.5)).toEqual([
      [44, 2],
      [34.5, 2],
    ]);
    expect(border(34.5, 46, 2.5)).toEqual([
      [46, 2],
      [38.5, 2],
    ]);
  });

  it('a 5 in mitered border on a 40 in side takes 56 in by custom (published: APQ-M) and at least 51.21 in (derived)', () => {
    const unit: UnitSizes = {
      unit: 'mitered-border',
      topWidth: inches(40),
      topLength: inches(40),
      border: inches(5),
    };
    const along = (rounding: 'customary' | 'exact') => detailsOf(unit, { rounding }).patches[0]!;
    expect(along('customary').along).toBe(inches(56));
    expect(along('exact').along).toBe(inches(51.25));
    expect(along('exact').alongExact / UNITS_PER_INCH).toBeCloseTo(51.2071, 4);
  });

  it('a mitered border is cut at its exact size if the seam is too wide for the customary 6 in', () => {
    const sizes = { topWidth: inches(40), topLength: inches(40), border: inches(5) };
    const seamAllowance = inches(1.5);
    const { details, explanation } = answerOf({ unit: 'mitered-border', ...sizes }, { seamAllowance });
    // 40 + 2 · 5 + 2 · 1.5 · (1 + √2) = 57.243 in (derived), but the customary length is 56.
    expect(details.patches[0]!.along).toBe(inches(57.25));
    const labels = explanation.map(({ label }) => label);
    expect(labels).toContain('Cut side border, length');
    expect(labels).not.toContain('Cut side border, length, customary');
  });
});

describe('from a fat quarter', () => {
  // Common practice, all checked by derivation; a chart with 55 and 15 (2½ and 5 in) is a misprint.
  it.each([
    [2, 99],
    [2.5, 56],
    [3, 42],
    [4, 20],
    [4.5, 16],
    [5, 12],
    [6, 9],
    [6.5, 6],
  ])('squares cut %d in: %d of them', (cut, count) => {
    const [patch] = detailsOf(square(inches(cut)), { sizesAre: 'cut' }).patches;
    expect(patch!.perPiece).toBe(count);
  });

  it('18 by 21 in gives 90 patches of 2 in, and 18 by 20 in gives 25 of 3½ in (derived)', () => {
    const of = (cut: number, width: number) =>
      detailsOf(square(inches(cut)), { sizesAre: 'cut', pieceWidth: inches(width) }).patches[0]!.perPiece;
    expect([of(2, 21), of(3, 21), of(3.5, 20), of(5, 20)]).toEqual([90, 42, 25, 12]);
  });
});
