import { assertNever } from '#core/assert-never';
import type { PriceLine } from '#core/domain/price-line';
import { type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Note, Table } from '../explanation';
import { moneyQuantity, percentQuantity, weightQuantity, wordsQuantity } from '../quantities';
import { type LongarmPriceInput, longarmPriceInput, longarmPriceInputFromProject } from './input';
import { longarmSteps } from './steps';
import { type Bill, type LongarmPriceDetails, workOutPrice } from './work';

/** The longarm quilter's bill, line by line, and the weight of the package. */
export const longarmPrice: Calculator<LongarmPriceInput, LongarmPriceDetails> = {
  name: 'longarm-price',
  version: 2,
  title: 'Longarm price',
  question: 'What will the quilting cost, and what does the package weigh?',
  stageKinds: ['longarm'],
  input: longarmPriceInput,
  fromProject: longarmPriceInputFromProject,
  calculate: calculateLongarmPrice,
};

function calculateLongarmPrice(input: LongarmPriceInput): Result<Calculation<LongarmPriceDetails>, Refusal> {
  const details = workOutPrice(input);
  return success({
    figures: [
      { label: 'Longarm price', quantity: moneyQuantity(details.totalMinor) },
      { label: 'Quilting alone', quantity: moneyQuantity(details.quilting.exact) },
      { label: 'The package weighs about', quantity: weightQuantity(details.packageGrams) },
    ],
    tables: [billTable(input, details), weightTable(input, details)],
    explanation: longarmSteps(input, details),
    notes: priceNotes(input, details),
    diagram: null,
    details,
  });
}

function countedBy(line: PriceLine): string {
  switch (line.by) {
    case 'flat':
      return 'flat';
    case 'area':
      return BY_AREA;
    case 'edge':
      return 'per inch of edge';
    case 'percent':
      return line.of === 'quilting' ? 'percent of the quilting' : 'percent of everything above';
    default:
      return assertNever(line);
  }
}

const BY_AREA = 'per square inch';

function billTable({ lines }: LongarmPriceInput, bill: Bill): Table {
  const quiltedBy = bill.isAtMinimum ? 'the minimum' : BY_AREA;
  return {
    title: 'The bill',
    columns: ['Line', 'How it is charged', 'Amount'],
    rows: [
      [wordsQuantity('Quilting'), wordsQuantity(quiltedBy), moneyQuantity(bill.quilting.exact)],
      ...lines.map((line, index) => [
        wordsQuantity(line.name),
        wordsQuantity(countedBy(line)),
        moneyQuantity(bill.lines[index]?.exact ?? 0),
      ]),
      [wordsQuantity('Total'), wordsQuantity(''), moneyQuantity(bill.totalMinor)],
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
      weightQuantity(weight, part === 'Package' ? 'up' : 'nearest'),
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
            'A longarm moves over the whole rectangle, so the bill goes by the rectangle whatever the shape of the quilt.',
          ),
        ]),
    ...(isAtMinimum
      ? [
          tip(
            'The area alone would cost less than the minimum. Two small quilts on one backing may share it.',
          ),
        ]
      : []),
    tip('Rates are your quilter’s own. Taxes differ from place to place. These figures are no tax advice.'),
  ];
}
