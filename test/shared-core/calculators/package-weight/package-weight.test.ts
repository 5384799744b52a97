import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import type { PackageWeightInput } from '#core/calculators/package-weight/input';
import { packageWeight } from '#core/calculators/package-weight/package-weight';
import { longarmPrice } from '#core/calculators/longarm-price/longarm-price';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { GRAMS_PER_OUNCE, GRAMS_PER_POUND } from '#core/units/format-weight';
import {
  type Length,
  lengthFromInches as inches,
  lengthFromMillimeters,
  lengthFromUnits,
  UNITS_PER_INCH,
} from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { answerOf, refusalOf } from '#test/helpers/answer-of';

const plain: PackageWeightInput = {
  ...packageWeight.fromProject({ ...SAMPLE_MEASUREMENTS, hole: null, hasSlit: false }),
  other: 0,
  packing: 0,
};
const rectangle = (width: number, length: number, change: Partial<PackageWeightInput> = {}) => ({
  ...plain,
  outline: { shape: 'rectangle' as const, width: inches(width), length: inches(length) },
  ...change,
});
const detailsOf = (input: PackageWeightInput) => answerOf(packageWeight, input).details;
const anyInches = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.integer({ min: inches(least), max: inches(most) }).map(lengthFromUnits);

/** A box of these sides: the folded piece is one layer as large as the box. */
const boxOf = (long: number, middle: number, short: number, change: Partial<PackageWeightInput> = {}) =>
  rectangle(middle, long, {
    partsAcross: 1,
    partsAlong: 1,
    boxRoom: inches(0),
    layerThickness: inches(short),
    ...change,
  });

describe('the weight of a finished piece', () => {
  // Common practice: a quilt of 88 by 100 in of denim, cotton batting and fleece, weighed at 9.4 lb: 22.1 oz a square yard.
  it('of 88 by 100 in at 22.1 oz a square yard is 9.4 lb', () => {
    const ounce = GRAMS_PER_OUNCE / 0.83612736;
    const layers = { fabricWeight: 12 * ounce, backingWeight: 6 * ounce, battingWeight: 4.1 * ounce };
    const { topGrams, layersGrams } = detailsOf(rectangle(88, 100, { ...layers, seamExtraPercent: 0 }));
    expect((topGrams + layersGrams) / GRAMS_PER_POUND).toBeCloseTo(9.4, 1);
  });

  // Common practice: batting of medium weight has 4 to 5 oz a square yard, light 2 to 3, heavy 6 and more. Known slip: a forum has "4 oz of
  // fibers per square foot", which would be 36 oz a square yard.
  it('starts with a batting of medium weight by the square yard', () => {
    const ouncePerYard = GRAMS_PER_OUNCE / 0.83612736;
    expect(plain.battingWeight / ouncePerYard).toBeGreaterThan(4);
    expect(plain.battingWeight / ouncePerYard).toBeLessThan(5.1);
    expect(plain.battingWeight / ouncePerYard).toBeLessThan(36);
  });

  // Derived: one square meter of 145 g with a quarter more in its seams, 145 + 170 below, and 4 m of strip 50 mm wide at 145 g.
  it('of a square meter is the sum of its layers and its binding', () => {
    const meter = lengthFromMillimeters(1_000);
    const outline = { shape: 'square' as const, side: meter };
    const details = detailsOf({ ...plain, outline, stripWidth: lengthFromMillimeters(50), other: 10 });
    expect(details.topGrams).toBeCloseTo(181.25, 9);
    expect(details.layersGrams).toBeCloseTo(315, 9);
    expect(details.bindingGrams).toBeCloseTo(29, 9);
    expect(details.pieceGrams).toBeCloseTo(535.25, 9);
  });

  // Derived: a ring of radius R with a hole of radius r has π (R² − r²); its edges are 2π (R + r), and twice the slit.
  it('of a ring leaves out its hole and counts the binding of every edge', () => {
    fc.assert(
      fc.property(anyInches(20, 80), anyInches(2, 15), fc.boolean(), (diameter, hole, hasSlit) => {
        const ring = { outline: { shape: 'circle' as const, diameter }, hole: { diameter: hole }, hasSlit };
        const { area, bindingArea } = detailsOf({ ...plain, ...ring });
        expect(area / ((Math.PI / 4) * (diameter ** 2 - hole ** 2))).toBeCloseTo(1, 9);
        const edges = Math.PI * (diameter + hole) + (hasSlit ? diameter - hole : 0);
        expect(bindingArea / (edges * plain.stripWidth)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is that of the longarm’s package but for overhang, binding and hole', () => {
    const outline = { shape: 'square' as const, side: inches(60) };
    const measurements = { outline, hole: null, hasSlit: false, settings: STARTING_SETTINGS };
    const longarm = answerOf(longarmPrice, {
      ...longarmPrice.fromProject(measurements),
      overhang: inches(0),
    }).details;
    const details = detailsOf({ ...packageWeight.fromProject(measurements), other: 0 });
    expect(details.packageGrams - details.bindingGrams).toBeCloseTo(longarm.packageGrams, 9);
  });

  it('grows with the piece and with every layer, and refuses a hole that leaves nothing', () => {
    fc.assert(
      fc.property(
        anyInches(10, 90),
        anyInches(0, 20),
        fc.integer({ min: 0, max: 300 }),
        (side, more, grams) => {
          const weight = (change: Partial<PackageWeightInput>) =>
            detailsOf({ ...plain, ...change }).pieceGrams;
          const square = (one: Length) => ({ outline: { shape: 'square' as const, side: one } });
          const base = weight(square(side));
          expect(weight(square(lengthFromUnits(side + more)))).toBeGreaterThanOrEqual(base);
          expect(weight({ ...square(side), battingWeight: 170 + grams })).toBeGreaterThanOrEqual(base);
          expect(weight({ ...square(side), other: grams })).toBeCloseTo(base + grams, 6);
        },
      ),
    );
    const gone = { ...plain, outline: { shape: 'circle' as const, diameter: inches(20) } };
    expect(refusalOf(packageWeight, { ...gone, hole: { diameter: inches(20) } })).toMatchObject({
      code: 'no-room',
      field: ['hole', 'diameter'],
    });
  });
});

describe('the box', () => {
  // Published: BZF, the girth is twice the sum of the two shorter sides: 11 and 14 in have a girth of 50 in.
  it('has a girth of twice its two shorter sides', () => {
    const { box } = detailsOf(boxOf(20, 14, 3.5, { layerThickness: inches(3.5), boxRoom: inches(0) }));
    expect(box.girth / UNITS_PER_INCH).toBe(2 * (14 + 4));
    const tall = detailsOf(
      rectangle(14, 20, {
        partsAcross: 1,
        partsAlong: 3,
        boxRoom: inches(0),
        layerThickness: inches(3.5),
      }),
    );
    expect(tall.box.sides.map(({ rounded }) => rounded / UNITS_PER_INCH)).toEqual([14, 11, 7]);
    const published = detailsOf(
      rectangle(44, 42, {
        partsAcross: 4,
        partsAlong: 3,
        boxRoom: inches(0),
        layerThickness: inches(1.625),
      }),
    );
    expect(published.box.sides.map(({ rounded }) => rounded / UNITS_PER_INCH)).toEqual([20, 14, 11]);
    expect(published.box.girth / UNITS_PER_INCH).toBe(50);
    expect(published.box.lengthAndGirth / UNITS_PER_INCH).toBe(70);
  });

  // Published: PKZ, 24 by 18 by 12 in are 5,184 cubic inches: charged as 32 lb with a divisor of 166 and as 38 lb with 139.
  it.each([
    [166, 32],
    [139, 38],
  ])('of 24 by 18 by 12 in with a divisor of %d is charged as %d lb', (divisor, pounds) => {
    const input = rectangle(72, 48, {
      partsAcross: 4,
      partsAlong: 2,
      boxRoom: inches(0),
      layerThickness: inches(1.5),
      divisor,
    });
    const { box, charged, byVolume } = detailsOf(input);
    expect(box.sides.map(({ rounded }) => rounded / UNITS_PER_INCH)).toEqual([24, 18, 12]);
    expect(byVolume).toBe(new Fraction(5_184, divisor).valueOf());
    expect(charged).toBe(pounds);
    const figure = answerOf(packageWeight, input).figures.find(({ label }) => label === 'Weight charged');
    expect(figure?.quantity.kind === 'weight' && figure.quantity.exact / GRAMS_PER_POUND).toBeCloseTo(
      pounds,
      9,
    );
  });

  it('charges by weight alone without a divisor, in the unit of the carrier', () => {
    const heavy = boxOf(20, 20, 4, { packing: 2_300, divisor: 0, chargedStep: 0.5 });
    const { packageGrams, charged, byVolume } = detailsOf({
      ...heavy,
      boxUnits: 'centimeters-and-kilograms',
    });
    expect(byVolume).toBeNull();
    expect(charged).toBe(Math.ceil(packageGrams / 500) / 2);
  });

  it('holds the folded piece with its room, no side a whole inch too large, and the volume of the pile is kept', () => {
    const parts = fc.integer({ min: 1, max: 8 });
    fc.assert(
      fc.property(
        anyInches(10, 100),
        anyInches(10, 100),
        parts,
        parts,
        anyInches(0, 2),
        (width, length, across, along, room) => {
          const input = {
            ...plain,
            outline: { shape: 'rectangle' as const, width, length },
            partsAcross: across,
            partsAlong: along,
            boxRoom: room,
          };
          const { folded, box } = detailsOf(input);
          const pile = folded.width * folded.length * folded.thickness;
          expect(pile / (width * length * input.layerThickness)).toBeCloseTo(1, 9);
          const needed = [folded.width, folded.length, folded.thickness].toSorted(
            (one, other) => other - one,
          );
          box.sides.forEach(({ rounded }, index) => {
            const spare = rounded - (needed[index]! + 2 * room);
            expect(spare).toBeGreaterThanOrEqual(-1);
            expect(spare).toBeLessThan(UNITS_PER_INCH);
          });
          const [long, middle, short] = box.sides.map(({ rounded }) => rounded);
          expect(long).toBeGreaterThanOrEqual(middle!);
          expect(middle).toBeGreaterThanOrEqual(short!);
        },
      ),
    );
  });

  it('starts folded to 15 in or less', () => {
    fc.assert(
      fc.property(anyInches(4, 130), (side) => {
        const outline = { shape: 'square' as const, side };
        const input = packageWeight.fromProject({
          ...SAMPLE_MEASUREMENTS,
          outline,
          hole: null,
          hasSlit: false,
        });
        expect(side / input.partsAcross).toBeLessThanOrEqual(inches(15));
        if (input.partsAcross > 1) expect(side / (input.partsAcross - 1)).toBeGreaterThan(inches(15));
      }),
    );
  });
});
