import fc from 'fast-check';
import type { Measurements } from '#core/domain/measurements';
import type { Outline } from '#core/domain/outline';
import { type Settings, STARTING_SETTINGS } from '#core/domain/workshop';
import { type Length, lengthFromInches, lengthFromMillimeters, lengthFromUnits } from '#core/units/length';

const between = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.integer({ min: lengthFromInches(least), max: lengthFromInches(most) }).map(lengthFromUnits);

/** Every shape of outline, each side within the given inches. */
export function anyOutline(least = 4, most = 150): fc.Arbitrary<Outline> {
  const side = between(least, most);
  return fc.oneof(
    fc.record({ shape: fc.constant('square' as const), side }),
    fc.record({ shape: fc.constant('rectangle' as const), width: side, length: side }),
    fc
      .record({ width: side, length: side, share: fc.double({ min: 0.01, max: 0.49, noNaN: true }) })
      .map(({ width, length, share }) => ({
        shape: 'rounded' as const,
        width,
        length,
        cornerRadius: lengthFromUnits(Math.floor(Math.min(width, length) * share)),
      })),
    fc.record({ shape: fc.constant('circle' as const), diameter: side }),
    fc.record({ shape: fc.constant('ellipse' as const), width: side, length: side }),
    fc.record({ shape: fc.constant('hexagon' as const), acrossFlats: side }),
    fc.record({ shape: fc.constant('octagon' as const), acrossFlats: side }),
    fc.record({
      shape: fc.constant('sides' as const),
      sides: fc.array(side, { minLength: 3, maxLength: 12 }),
      width: side,
      length: side,
    }),
  );
}

export const METRIC_SETTINGS: Settings = {
  ...STARTING_SETTINGS,
  unitSystem: 'metric',
  seamAllowance: lengthFromMillimeters(7.5),
  fabricWidth: lengthFromMillimeters(1_070),
  bindingStripWidth: lengthFromMillimeters(65),
  bindingOverlap: lengthFromMillimeters(300),
  innerStripWidth: lengthFromMillimeters(40),
  quiltThickness: lengthFromMillimeters(3),
  backCover: lengthFromMillimeters(3),
  backingOverhang: lengthFromMillimeters(100),
  backingSeam: lengthFromMillimeters(12),
  handStitchPerHour: lengthFromMillimeters(1_250),
};

/** Projects as makers have them, in inches and metric, with and without hole and slit. */
export const anyMeasurements: fc.Arbitrary<Measurements> = fc
  .record({
    outline: anyOutline(12, 150),
    hole: fc.option(fc.record({ diameter: between(1.5, 8) }), { nil: null }),
    wantsSlit: fc.boolean(),
    settings: fc.constantFrom(STARTING_SETTINGS, METRIC_SETTINGS, {
      ...STARTING_SETTINGS,
      inchStep: 16 as const,
    }),
  })
  .map(({ wantsSlit, ...rest }) => ({ ...rest, hasSlit: wantsSlit && rest.hole !== null }));
