import { UNITS_PER_INCH } from '#core/units/length';
import { roundNearest } from '#core/units/rounding';
import type { Step } from '../explanation';
import { outlineArea } from '../outline/outline-inset';
import { outlineBounds } from '../outline/outline-measures';
import {
  areaQuantity,
  lengthNearest,
  moneyQuantity,
  numberQuantity,
  percentQuantity,
  weightQuantity,
} from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { LongarmPriceInput } from './input';
import { billedSide, type LongarmPriceDetails } from './work';

export function longarmSteps(input: LongarmPriceInput, details: LongarmPriceDetails): readonly Step[] {
  return [...priceSteps(input, details), ...weightSteps(input, details)];
}

function sizeSteps(input: LongarmPriceInput, details: LongarmPriceDetails): readonly Step[] {
  const bounds = outlineBounds(input.outline);
  const edge = [
    givenTerm('s', 'seam allowance at the edge', input.seamAllowance),
    givenTerm('t', 'left to trim off', input.trimming),
  ];
  const isHexagon = input.outline.shape === 'hexagon';
  return [
    {
      label: 'Width billed',
      formula: isHexagon ? 'W = w + 4(s + t) ÷ √3' : 'W = w + 2(s + t)',
      terms: [term('w', 'width around the finished quilt', lengthNearest(bounds.width)), ...edge],
      result: billedSide(input, details.sentWidth),
      rule: commonPractice(
        'The quilter measures the top as it arrives, with what is trimmed or bound later.',
      ),
    },
    {
      label: 'Length billed',
      formula: 'L = ℓ + 2(s + t)',
      terms: [term('ℓ', 'its length', lengthNearest(bounds.length)), ...edge],
      result: billedSide(input, details.sentLength),
      rule: commonPractice('Each side is rounded by itself.'),
    },
  ];
}

function percentSteps({ lines }: LongarmPriceInput, bill: LongarmPriceDetails): readonly Step[] {
  return lines.flatMap((line, index): readonly Step[] => {
    const billed = bill.lines[index];
    if (line.by !== 'percent' || billed === undefined) return [];
    const reach = line.of === 'quilting' ? 'the quilting' : 'everything above it';
    return [
      {
        label: line.name,
        formula: 'b × p',
        terms: [
          term('b', reach, moneyQuantity(billed.percentOf)),
          term('p', 'percent', percentQuantity(roundNearest(line.percent * 1e6, 1) / 1e6)),
        ],
        result: moneyQuantity(billed.exact),
        rule: commonPractice('A percentage is of the rounded amounts.'),
      },
    ];
  });
}

function priceSteps(input: LongarmPriceInput, details: LongarmPriceDetails): readonly Step[] {
  const [width, length] = [billedSide(input, details.sentWidth), billedSide(input, details.sentLength)];
  // Billed by the square inch, so shown in square inches however large it is.
  const squareInches = numberQuantity((width.rounded / UNITS_PER_INCH) * (length.rounded / UNITS_PER_INCH));
  return [
    ...sizeSteps(input, details),
    {
      label: 'Area billed, in square inches',
      formula: 'W × L',
      terms: [
        term('W', 'width of the rectangle around the top, as billed', width),
        term('L', 'its length, as billed', length),
      ],
      result: squareInches,
      rule: commonPractice('A longarm moves over the whole rectangle, so round quilts are billed by it too.'),
    },
    {
      label: 'Quilting',
      formula: 'the larger of area × rate and the minimum',
      terms: [
        term('area', 'in square inches', squareInches),
        term('rate', 'cents per square inch', numberQuantity(input.rate)),
        term('minimum', 'lowest price for the quilting', moneyQuantity(input.minimum)),
      ],
      result: moneyQuantity(details.quilting.exact),
      rule: commonPractice('Quilting is priced by the square inch, with a minimum.'),
    },
    ...percentSteps(input, details),
    {
      label: 'Total',
      formula: 'quilting + the other lines',
      terms: [
        term('quilting', 'as above, rounded', moneyQuantity(details.quilting.minor)),
        term(
          'the other lines',
          'each one rounded',
          moneyQuantity(details.totalMinor - details.quilting.minor),
        ),
      ],
      result: moneyQuantity(details.totalMinor),
      rule: commonPractice('Each line is rounded once, and the rounded lines are added.'),
    },
  ];
}

function weightSteps(input: LongarmPriceInput, details: LongarmPriceDetails): readonly Step[] {
  const bounds = outlineBounds(input.outline);
  const sheet = (bounds.width + 2 * input.overhang) * (bounds.length + 2 * input.overhang);
  const fabric = term('g', 'grams per square meter of fabric', numberQuantity(input.fabricWeight));
  const twoLayers = weightQuantity(details.backingGrams + details.battingGrams, 'nearest');
  return [
    {
      label: 'Weight of the top',
      formula: 'A × g × (1 + e)',
      terms: [
        term('A', 'area of the top', areaQuantity(outlineArea(input.outline))),
        fabric,
        term('e', 'fabric in its seams', percentQuantity(input.seamExtraPercent)),
      ],
      result: weightQuantity(details.topGrams, 'nearest'),
      rule: derived('Area times the weight of a square meter, with the extra fabric in the seams.'),
    },
    {
      label: 'Weight of backing and batting',
      formula: 'B × (g + b)',
      terms: [
        term('B', 'area of each, with the overhang', areaQuantity(sheet)),
        fabric,
        term('b', 'grams per square meter of batting', numberQuantity(input.battingWeight)),
      ],
      result: twoLayers,
      rule: derived('Area times the weight of a square meter.'),
    },
    {
      label: 'Weight of the package',
      formula: 'top + backing and batting + packing',
      terms: [
        term('top', 'as above', weightQuantity(details.topGrams, 'nearest')),
        term('backing and batting', 'as above', twoLayers),
        term('packing', 'box and packing', weightQuantity(input.packing, 'nearest')),
      ],
      result: weightQuantity(details.packageGrams),
      rule: derived('The sum of its parts, rounded up.'),
    },
  ];
}
