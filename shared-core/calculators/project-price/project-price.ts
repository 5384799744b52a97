import { success } from '#core/result';
import type { Calculator } from '../calculator';
import type { Figure, Note, Table } from '../explanation';
import { moneyQuantity, percentQuantity, wordsQuantity } from '../quantities';
import { type ProjectPriceInput, projectPriceFromProject, projectPriceInput } from './input';
import { projectPriceSteps, rounded } from './steps';
import { type ProjectPriceDetails, workOutProjectPrice } from './work';

/** A price that covers what goes into a project, with tax and a deposit. */
export const projectPrice: Calculator<ProjectPriceInput, ProjectPriceDetails> = {
  name: 'project-price',
  version: 1,
  title: 'Price of a project',
  question: 'What price covers materials, quilting and my hours?',
  stageKinds: ['piecing', 'hand-finish'],
  isOccasional: true,
  input: projectPriceInput,
  fromProject: projectPriceFromProject,
  startsFromProject: ['longarm'],
  calculate(input) {
    const details = workOutProjectPrice(input);
    return success({
      figures: figuresOf(input, details),
      tables: [priceTable(details)],
      explanation: projectPriceSteps(input, details),
      notes: notesOf(input),
      diagram: null,
      details,
    });
  },
};

function figuresOf(input: ProjectPriceInput, details: ProjectPriceDetails): readonly Figure[] {
  const { price, tax, toPay, inCash, deposit, perHour, costs, work } = details;
  const figure = (isShown: boolean, label: string, quantity: Figure['quantity']): readonly Figure[] =>
    isShown ? [{ label, quantity }] : [];
  return [
    { label: 'Price of one', quantity: rounded(price.exact, price.minor) },
    ...figure(input.taxPercent > 0, 'Tax', rounded(tax.exact, tax.minor)),
    { label: 'To pay', quantity: moneyQuantity(toPay) },
    ...figure(input.cashStep > 1, 'In cash', rounded(toPay, inCash)),
    ...figure(input.depositPercent > 0, 'Deposit', moneyQuantity(deposit.exact)),
    ...figure(input.depositPercent > 0, 'Left to pay', moneyQuantity(toPay - deposit.minor)),
    { label: 'Your work', quantity: moneyQuantity(work.exact) },
    { label: 'What goes into one', quantity: moneyQuantity(costs) },
    ...figure(perHour !== null, 'An hour earns', moneyQuantity(perHour ?? 0, 'down')),
  ];
}

function priceTable(details: ProjectPriceDetails): Table {
  const { work, overhead, markup, beforeTax } = details;
  const rows = [
    ['Fabric, batting and thread', details.materials],
    ['Quilting, sent out', details.longarm],
    ['Your work', work.exact],
    ['Overhead', overhead.exact],
    ['Added on top', markup.exact],
    ['Before tax', beforeTax],
  ] as const;
  return {
    title: 'What the price is made of',
    columns: ['Line', 'Amount', 'Share'],
    rows: rows.map(([line, amount]) => [
      wordsQuantity(line),
      moneyQuantity(amount),
      percentQuantity(beforeTax === 0 ? 0 : (100 * amount) / beforeTax),
    ]),
  };
}

function notesOf({ depositPercent, taxPercent }: ProjectPriceInput): readonly Note[] {
  const tip = (says: string): Note => ({ kind: 'tip', says, values: {} });
  return [
    ...(depositPercent > 0
      ? [
          tip(
            'Keep a deposit small, and write down what happens to it if the order is canceled: in many places you may keep no more than your real loss.',
          ),
        ]
      : []),
    ...(taxPercent > 0
      ? [tip('How tax is rounded, and whether it is in the price, is set by the rules where you live.')]
      : []),
    tip('This is a sum of what you entered. It is no advice on prices or taxes.'),
  ];
}
