import { z } from 'zod';
import { assertNever } from '#core/assert-never';
import { lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import type { Outline } from '#core/domain/outline';
import {
  type Length,
  lengthFromExact,
  lengthFromInches,
  lengthFromMeters,
  lengthFromMillimeters,
} from '#core/units/length';
import type { UnitSystem } from '#core/units/unit-system';
import { outlineBounds, outlinePoints } from '#core/calculators/outline/outline-measures';
import { cutStepOfSettings } from '#core/calculators/shared-fields';
import { chords, startingChords } from './ways/chords';
import { corners, startingCorners } from './ways/corners';
import { diameters, startingDiameters } from './ways/diameters';
import { edgePoints, startingEdgePoints } from './ways/edge-points';
import { folding, startingFolding } from './ways/folding';
import { fourSides, startingFourSides } from './ways/four-sides';
import type { Whole } from './ways/measure-fields';
import { hexagon, octagon, startingHexagon, startingOctagon } from './ways/regular';

/** What a newly chosen way starts with: a piece 48 in across. */
const EXAMPLE = lengthFromInches(48);
const toEighths: Whole = (size) => lengthFromExact(size, 'nearest', lengthFromInches(1 / 8));
const EXAMPLE_CORNERS = outlinePoints({ shape: 'rectangle', width: EXAMPLE, length: lengthFromInches(36) });

const measured = z
  .discriminatedUnion('way', [
    fourSides.meta({ examples: [startingFourSides(EXAMPLE, EXAMPLE, toEighths)] }),
    diameters.meta({ examples: [startingDiameters(EXAMPLE, toEighths)] }),
    edgePoints.meta({ examples: [startingEdgePoints(EXAMPLE, toEighths)] }),
    chords.meta({ examples: [startingChords(EXAMPLE, toEighths)] }),
    hexagon.meta({ examples: [startingHexagon(EXAMPLE, toEighths)] }),
    octagon.meta({ examples: [startingOctagon(EXAMPLE, toEighths)] }),
    corners.meta({ examples: [startingCorners(EXAMPLE_CORNERS, toEighths)] }),
    folding.meta({ examples: [startingFolding(EXAMPLE, EXAMPLE, toEighths)] }),
  ])
  .meta({ title: 'How you measure' });
export type Measured = z.infer<typeof measured>;

export const centerFindInput = z
  .object({
    measured,
    accuracy: lengthField({
      title: 'You read the tape to the nearest',
      help: 'If your lengths disagree by more than such readings usually add up to, measure them again.',
      minimum: lengthFromInches(1 / 64),
      maximum: lengthFromInches(2),
    }),
  })
  .readonly();
export type CenterFindInput = z.infer<typeof centerFindInput>;

/** The way that fits the outline, with its finished lengths rounded to what the tape shows, until they are measured. */
export function centerFindFromProject({ outline, settings }: Measurements): CenterFindInput {
  const step = cutStepOfSettings(settings);
  const whole: Whole = (size) => lengthFromExact(withinFields(size), 'nearest', step);
  return {
    measured: startingMeasures(outline, whole),
    accuracy: startingAccuracy(settings.unitSystem, step),
  };
}

/** 1/8 in or 3 mm, or what the tape shows where that is coarser. */
function startingAccuracy(system: UnitSystem, step: Length): Length {
  const usual = system === 'inch' ? lengthFromInches(1 / 8) : lengthFromMillimeters(3);
  return step > usual ? step : usual;
}

function startingMeasures(outline: Outline, whole: Whole): Measured {
  const { width, length } = outlineBounds(outline);
  switch (outline.shape) {
    case 'square':
    case 'rectangle':
      return startingFourSides(width, length, whole);
    case 'circle':
      return startingDiameters(outline.diameter, whole);
    case 'hexagon':
      return startingHexagon(outline.acrossFlats, whole);
    case 'octagon':
      return startingOctagon(outline.acrossFlats, whole);
    // Neither has corners to measure from.
    case 'rounded':
    case 'ellipse':
      return startingFolding(width, length, whole);
    case 'sides':
      return startingCorners(outlinePoints(outline), whole);
    default:
      return assertNever(outline);
  }
}

/** A measured length is at least 1 in and at most 15 m. */
function withinFields(size: number): number {
  return Math.min(lengthFromMeters(15), Math.max(lengthFromInches(1), size));
}
