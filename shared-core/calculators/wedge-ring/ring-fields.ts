import { countField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import {
  type Length,
  lengthFromExact,
  lengthFromInches,
  lengthFromMeters,
  lengthMaximum,
} from '#core/units/length';
import { givenLength } from '../quantities';
import type { Refusal } from '../calculator';
import { outlineBounds } from '../outline/outline-measures';
import { cutStepOfSettings } from '../shared-fields';

/** A finished ring of equal wedges. The radii go to the middle of a side. */
export interface RingSize {
  readonly wedges: number;
  readonly innerRadius: Length;
  readonly outerRadius: Length;
}

const [NARROWEST, WIDEST] = [lengthFromInches(1 / 8), lengthFromMeters(3)];
const STARTING_WEDGES = 16;

/** The fields of a ring, for every calculator about one. */
export function ringFields() {
  return {
    wedges: countField({ title: 'Wedges in the ring', minimum: 4, maximum: 120 }),
    innerRadius: lengthField({
      title: 'From the middle to the inner edge',
      help: 'Finished, at the middle of a wedge. A round hole cut later is larger than the opening left by the wedges.',
      minimum: NARROWEST,
      maximum: WIDEST,
    }),
    outerRadius: lengthField({
      title: 'From the middle to the outer edge',
      help: 'Finished, at the middle of a wedge: half of the ring from side to side.',
      minimum: NARROWEST,
      maximum: WIDEST,
    }),
  };
}

/** Starts with sixteen wedges that reach the shorter side of the outline and leave an opening just inside the hole. */
export function ringOfProject({ outline, hole, settings }: Measurements): RingSize {
  const { width, length } = outlineBounds(outline);
  const toPoint = hole === null ? lengthFromInches(3) : hole.diameter / 2;
  return {
    wedges: STARTING_WEDGES,
    innerRadius: withinLimits(toPoint * Math.cos(Math.PI / STARTING_WEDGES), cutStepOfSettings(settings)),
    outerRadius: withinLimits(Math.min(width, length) / 2),
  };
}

/** Down to a whole step, so that the field shows a size that can be measured. */
function withinLimits(exact: number, step = 1): Length {
  const stepped = lengthFromExact(Math.min(WIDEST, Math.max(0, exact)), 'down', step);
  return lengthMaximum(NARROWEST, stepped);
}

/** Of a ring whose inner edge is not inside its outer edge. */
export function refuseNoWidth({ innerRadius, outerRadius }: RingSize): Refusal {
  return {
    code: 'no-width',
    field: ['innerRadius'],
    says: 'The inner edge, {inner} from the middle, must be nearer than the outer edge at {outer}.',
    values: { inner: givenLength(innerRadius), outer: givenLength(outerRadius) },
  };
}
