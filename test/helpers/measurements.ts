import fc from 'fast-check';
import type { Measurements } from '#core/domain/measurements';
import type { Outline } from '#core/domain/outline';
import { pointDistance } from '#core/geometry/point';
import { polygonSides } from '#core/geometry/polygon';
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
    anySides(side),
  );
}

/** The sides, width and length of a true shape with three to twelve corners, so that they can close. */
function anySides(across: fc.Arbitrary<Length>): fc.Arbitrary<Outline> {
  const share = fc.double({ min: 0.6, max: 1, noNaN: true });
  return fc
    .record({ across, shares: fc.array(share, { minLength: 3, maxLength: 12 }) })
    .map(({ across: size, shares }) => {
      const corners = shares.map((reach, index) => {
        const angle = (2 * Math.PI * index) / shares.length;
        return { x: (size / 2) * reach * Math.cos(angle), y: (size / 2) * reach * Math.sin(angle) };
      });
      const whole = (length: number) => lengthFromUnits(Math.round(length));
      const span = (values: readonly number[]) => whole(Math.max(...values) - Math.min(...values));
      return {
        shape: 'sides' as const,
        sides: polygonSides(corners).map(({ from, to }) => whole(pointDistance(from, to))),
        width: span(corners.map(({ x }) => x)),
        length: span(corners.map(({ y }) => y)),
      };
    });
}

export const METRIC_SETTINGS: Settings = {
  ...STARTING_SETTINGS,
  unitSystem: 'metric',
  seamAllowance: lengthFromMillimeters(7.5),
  seamOff: lengthFromMillimeters(0.8),
  cutOff: lengthFromMillimeters(0.8),
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
