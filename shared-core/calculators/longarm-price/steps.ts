import { UNITS_PER_INCH } from '#core/units/length';
import type { Quantity, Step } from '../explanation';
import { outlineArea } from '../outline/outline-inset';
import { outlineBounds } from '../outline/outline-measures';
import {
  areaQuantity,
  countQuantity,
  lengthQuantity,
  moneyQuantity,
  numberQuantity,
  percentQuantity,
} from '../quantities';
import type { LongarmPriceInput } from './input';
import type { LongarmPriceDetails } from './work';

/** Up to the next gram. */
export function grams(exact: number): Extract<Quantity, { kind: 'count' }> {
  return countQuantity(exact, ['g', 'g'], 'up');
}

export function longarmSteps(input: LongarmPriceInput, details: LongarmPriceDetails): readonly Step[] {
  const bounds = outlineBounds(input.outline);
  const side = (exact: number) => lengthQuantity(exact, { step: input.measureUpTo, direction: 'up' });
  const [width, length] = [side(bounds.width), side(bounds.length)];
  const squareInches = (width.rounded / UNITS_PER_INCH) * (length.rounded / UNITS_PER_INCH);
  return [
    {
      label: 'Area billed',
      formula: 'W × L',
      terms: [
        { symbol: 'W', means: 'width of the bounding rectangle, rounded up', quantity: width },
        { symbol: 'L', means: 'its length, rounded up', quantity: length },
      ],
      result: areaQuantity(width.rounded * length.rounded),
      rule: {
        kind: 'common practice',
        says: 'A longarm runs over the whole rectangle, so round pieces are billed by it too.',
      },
    },
    {
      label: 'Quilting',
      formula: 'the larger of area × rate and the minimum',
      terms: [
        { symbol: 'area', means: 'square inches', quantity: numberQuantity(squareInches) },
        { symbol: 'rate', means: 'minor units a square inch', quantity: numberQuantity(input.rate) },
        { symbol: 'minimum', means: 'least price of the quilting', quantity: moneyQuantity(input.minimum) },
      ],
      result: moneyQuantity(details.quilting.exact),
      rule: { kind: 'common practice', says: 'Quilting is priced by the square inch, with a least price.' },
    },
    {
      label: 'In all',
      formula: 'quilting + the other lines',
      terms: [
        { symbol: 'quilting', means: 'as above, rounded', quantity: moneyQuantity(details.quilting.minor) },
        {
          symbol: 'the other lines',
          means: 'each of them rounded',
          quantity: moneyQuantity(details.totalMinor - details.quilting.minor),
        },
      ],
      result: moneyQuantity(details.totalMinor),
      rule: { kind: 'common practice', says: 'Each line is rounded once, and the rounded lines are added.' },
    },
    ...weightSteps(input, details),
  ];
}

function weightSteps(input: LongarmPriceInput, details: LongarmPriceDetails): readonly Step[] {
  const bounds = outlineBounds(input.outline);
  const sheet = (bounds.width + 2 * input.overhang) * (bounds.length + 2 * input.overhang);
  const fabric = {
    symbol: 'g',
    means: 'grams a square meter of fabric',
    quantity: numberQuantity(input.fabricWeight),
  };
  return [
    {
      label: 'Weight of the top',
      formula: 'A × g × (1 + e)',
      terms: [
        { symbol: 'A', means: 'area of the top', quantity: areaQuantity(outlineArea(input.outline)) },
        fabric,
        { symbol: 'e', means: 'fabric in its seams', quantity: percentQuantity(input.seamExtraPercent) },
      ],
      result: grams(details.topGrams),
      rule: { kind: 'derived', says: 'Area by weight of a square meter, with the fabric that seams double.' },
    },
    {
      label: 'Weight of backing and batting',
      formula: 'B × (g + b)',
      terms: [
        { symbol: 'B', means: 'area of each, overhang included', quantity: areaQuantity(sheet) },
        fabric,
        {
          symbol: 'b',
          means: 'grams a square meter of batting',
          quantity: numberQuantity(input.battingWeight),
        },
      ],
      result: grams(details.backingGrams + details.battingGrams),
      rule: { kind: 'derived', says: 'Area by weight of a square meter.' },
    },
    {
      label: 'Weight of the package',
      formula: 'top + backing and batting + packing',
      terms: [
        { symbol: 'top', means: 'as above', quantity: grams(details.topGrams) },
        {
          symbol: 'backing and batting',
          means: 'as above',
          quantity: grams(details.backingGrams + details.battingGrams),
        },
        { symbol: 'packing', means: 'box and packing', quantity: grams(input.packing) },
      ],
      result: grams(details.packageGrams),
      rule: { kind: 'derived', says: 'The sum of its parts, up to the next gram.' },
    },
  ];
}
