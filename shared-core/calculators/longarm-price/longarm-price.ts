import type { PriceLine } from '#core/domain/price-line';
import { type Result, success } from '#core/result';
import { lengthFromExact, UNITS_PER_INCH, UNITS_PER_METER } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Note, Table } from '../explanation';
import { outlineArea } from '../outline/outline-inset';
import { outlineBounds } from '../outline/outline-measures';
import { moneyQuantity, percentQuantity, wordsQuantity } from '../quantities';
import { type LongarmPriceInput, longarmPriceInput, longarmPriceInputFromProject } from './input';
import { type Bill, type LongarmPriceDetails, makeBill } from './work';
import { grams, longarmSteps } from './steps';

/** What the longarm quilter will charge, line by line, and what the package weighs. */
export const longarmPrice: Calculator<LongarmPriceInput, LongarmPriceDetails> = {
  name: 'longarm-price',
  version: 1,
  title: 'Longarm price',
  question: 'What will the quilting cost, and what does the package weigh?',
  stageKinds: ['longarm'],
  input: longarmPriceInput,
  fromProject: longarmPriceInputFromProject,
  calculate: calculateLongarmPrice,
};

function calculateLongarmPrice(input: LongarmPriceInput): Result<Calculation<LongarmPriceDetails>, Refusal> {
  const bounds = outlineBounds(input.outline);
  const billed = (side: number) => lengthFromExact(side, 'up', input.measureUpTo);
  const [width, length] = [billed(bounds.width) / UNITS_PER_INCH, billed(bounds.length) / UNITS_PER_INCH];
  const bill = makeBill({ squareInches: width * length, edgeInches: 2 * (width + length) }, input);
  const details: LongarmPriceDetails = {
    ...bill,
    billedWidth: width * UNITS_PER_INCH,
    billedLength: length * UNITS_PER_INCH,
    ...packageWeight(input),
  };
  return success({
    figures: [
      { label: 'Longarm price', quantity: moneyQuantity(bill.totalMinor) },
      { label: 'Of this, quilting', quantity: moneyQuantity(bill.quilting.exact) },
      { label: 'The package weighs about', quantity: grams(details.packageGrams) },
    ],
    tables: [billTable(input, bill), weightTable(input, details)],
    explanation: longarmSteps(input, details),
    notes: priceNotes(input, bill),
    diagram: null,
    details,
  });
}

function packageWeight(input: LongarmPriceInput) {
  const bounds = outlineBounds(input.outline);
  const sheet = (bounds.width + 2 * input.overhang) * (bounds.length + 2 * input.overhang);
  const squareMeters = (area: number) => area / UNITS_PER_METER ** 2;
  const topGrams =
    squareMeters(outlineArea(input.outline)) * input.fabricWeight * (1 + input.seamExtraPercent / 100);
  const backingGrams = squareMeters(sheet) * input.fabricWeight;
  const battingGrams = squareMeters(sheet) * input.battingWeight;
  return {
    topGrams,
    backingGrams,
    battingGrams,
    packageGrams: topGrams + backingGrams + battingGrams + input.packing,
  };
}

const COUNTED_BY: Readonly<Record<PriceLine['by'], string>> = {
  flat: 'flat',
  area: 'by the square inch',
  edge: 'by the inch of edge',
  percent: 'percent of the quilting',
};

function billTable({ lines }: LongarmPriceInput, bill: Bill): Table {
  const quiltedBy = bill.isAtMinimum ? 'the minimum' : COUNTED_BY.area;
  return {
    title: 'The bill',
    columns: ['Line', 'Counted', 'Amount'],
    rows: [
      [wordsQuantity('Quilting'), wordsQuantity(quiltedBy), moneyQuantity(bill.quilting.exact)],
      ...bill.lines.map(({ name, exact }, index) => {
        const by = lines[index]?.by ?? 'flat';
        return [wordsQuantity(name), wordsQuantity(COUNTED_BY[by]), moneyQuantity(exact)];
      }),
      [wordsQuantity('In all'), wordsQuantity(''), moneyQuantity(bill.totalMinor)],
    ],
  };
}

function weightTable({ packing }: LongarmPriceInput, details: LongarmPriceDetails): Table {
  const { topGrams, backingGrams, battingGrams, packageGrams } = details;
  const rows = [
    ['Top', topGrams],
    ['Backing', backingGrams],
    ['Batting', battingGrams],
    ['Box and packing', packing],
    ['Package', packageGrams],
  ] as const;
  return {
    title: 'Weight of the package',
    columns: ['Part', 'Weight', 'Share'],
    rows: rows.map(([part, weight]) => [
      wordsQuantity(part),
      grams(weight),
      percentQuantity((100 * weight) / packageGrams),
    ]),
  };
}

function priceNotes({ outline }: LongarmPriceInput, { isAtMinimum }: Bill): readonly Note[] {
  const tip = (says: string): Note => ({ kind: 'tip', says, values: {} });
  const isRectangle = outline.shape === 'square' || outline.shape === 'rectangle';
  return [
    ...(isRectangle
      ? []
      : [
          tip(
            'A longarm moves over the whole rectangle: the bill follows it whatever the shape of the piece.',
          ),
        ]),
    ...(isAtMinimum
      ? [
          tip(
            'The area alone would cost less than the minimum: two small pieces quilted on one backing may share it.',
          ),
        ]
      : []),
    tip(
      'Rates are your quilter’s own. Taxes differ from place to place; these figures are no advice on them.',
    ),
  ];
}
