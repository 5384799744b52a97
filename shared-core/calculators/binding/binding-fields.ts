import { choiceField, lengthField } from '#core/domain/fields';
import { lengthFromInches, lengthFromUnits, UNITS_PER_METER } from '#core/units/length';

/** Sixty sides of ten meters and their overlap: longer than any outline the notebook knows. */
export const LONGEST_BINDING = lengthFromUnits(700 * UNITS_PER_METER);

/** Bias strips are not looked for in more fabric than this: by then continuous bias is what a maker cuts. */
export const LONGEST_BIAS_FABRIC = lengthFromUnits(30 * UNITS_PER_METER);

/** Strips no shorter than a hand's width are worth joining (common practice). */
export const SHORTEST_STRIP = lengthFromInches(6);

export function stripWidthField(help = 'Cut width, before folding.') {
  return lengthField({
    title: 'Strip width',
    help,
    minimum: lengthFromInches(1 / 2),
    maximum: lengthFromInches(8),
  });
}

export function neededLengthField() {
  return lengthField({
    title: 'Length needed',
    help: 'The edge, the closing join and what you want to spare.',
    maximum: LONGEST_BINDING,
  });
}

export function shortestStripField() {
  return lengthField({
    title: 'Shortest strip worth joining',
    isSeldom: true,
    help: 'Shorter strips from the corners of the fabric are left out.',
    minimum: lengthFromInches(1),
    maximum: lengthFromInches(40),
  });
}

export function squareStepField() {
  return lengthField({
    title: 'Square in steps of',
    isSeldom: true,
    help: 'The square is rounded up to a whole multiple of this.',
    minimum: lengthFromInches(1 / 8),
    maximum: lengthFromInches(6),
  });
}

export function foldField() {
  return choiceField(['double', 'single'], {
    title: 'Fold',
    help: 'Double: folded in half before it is sewn on. Single: one layer, its far edge turned under.',
  });
}

export function thicknessField() {
  return lengthField({
    title: 'Thickness at the edge',
    isSeldom: true,
    help: 'Of top, batting and backing pressed together.',
    minimum: lengthFromUnits(0),
    maximum: lengthFromInches(1),
  });
}

export function coverField() {
  return lengthField({
    title: 'Cover on the back',
    isSeldom: true,
    help: 'How far the fold passes the seam on the back.',
    minimum: lengthFromUnits(0),
    maximum: lengthFromInches(1),
  });
}

/** Half an inch, or a centimeter. */
export function squareStepOfSettings(settings: { readonly unitSystem: 'inch' | 'metric' }) {
  return settings.unitSystem === 'inch' ? lengthFromInches(1 / 2) : lengthFromUnits(UNITS_PER_METER / 100);
}
