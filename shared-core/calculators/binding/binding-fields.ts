import { choiceField, lengthField } from '#core/domain/fields';
import { lengthFromUnits, lengthFromMeters, lengthFromInches } from '#core/units/length';

/** Sixty sides of ten meters and their overlap: no outline of the notebook is longer. */
export const LONGEST_BINDING = lengthFromMeters(700);

/** The search for bias strips stops here: for more strip than this, makers cut continuous bias. */
export const LONGEST_BIAS_FABRIC = lengthFromMeters(30);

/** A strip shorter than this is not worth joining (common practice). */
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
    help: 'The edge, the closing join and a little to spare.',
    maximum: LONGEST_BINDING,
  });
}

export function shortestStripField() {
  return lengthField({
    title: 'Shortest strip worth joining',
    isSeldom: true,
    help: 'Shorter strips, from the corners of the fabric, are not counted.',
    minimum: lengthFromInches(1),
    maximum: lengthFromInches(40),
  });
}

export function squareStepField() {
  return lengthField({
    title: 'Round the square up to',
    isSeldom: true,
    help: 'The side of the square is a whole multiple of this.',
    minimum: lengthFromInches(1 / 8),
    maximum: lengthFromInches(6),
  });
}

export function foldField() {
  return choiceField(['double', 'single'], {
    title: 'Fold',
    help: 'Double: folded in half before you sew it on. Single: one layer with its far edge turned under.',
  });
}

export function thicknessField() {
  return lengthField({
    title: 'Thickness at the edge',
    isSeldom: true,
    help: 'Top, batting and backing pressed together.',
    minimum: lengthFromUnits(0),
    maximum: lengthFromInches(1),
  });
}

export function coverField() {
  return lengthField({
    title: 'Cover on the back',
    isSeldom: true,
    help: 'How far the fold reaches past the stitching on the back.',
    minimum: lengthFromUnits(0),
    maximum: lengthFromInches(1),
  });
}

export function joinField() {
  return choiceField(['diagonal', 'straight'], {
    title: 'How strips are joined',
    help: 'A diagonal join takes a strip width and is flatter. A straight join takes two seam allowances.',
  });
}

export function overlapField() {
  return lengthField({
    title: 'Overlap',
    help: 'Extra length for the closing join and for safety.',
    minimum: lengthFromUnits(0),
    maximum: lengthFromInches(60),
  });
}

/** Half an inch, or 1 cm. */
export function squareStepOfSettings(settings: { readonly unitSystem: 'inch' | 'metric' }) {
  return settings.unitSystem === 'inch' ? lengthFromInches(1 / 2) : lengthFromMeters(1 / 100);
}
