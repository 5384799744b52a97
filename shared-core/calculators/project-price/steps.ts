import type { Explanation, Quantity, Step } from '../explanation';
import { countQuantity, moneyQuantity, numberQuantity, percentQuantity } from '../quantities';
import { commonPractice, derived, term } from '../working/terms';
import type { ProjectPriceInput } from './input';
import { type ProjectPriceDetails, sixDecimals } from './work';

export function projectPriceSteps(input: ProjectPriceInput, details: ProjectPriceDetails): Explanation {
  return [...costSteps(input, details), ...priceSteps(input, details), ...paySteps(input, details)];
}

function costSteps(input: ProjectPriceInput, details: ProjectPriceDetails): readonly Step[] {
  const { work, costs, overhead, markup } = details;
  return [
    {
      label: 'Your work',
      formula: 'h × r',
      terms: [
        term('h', 'hours', numberQuantity(sixDecimals(input.hours))),
        term('r', 'for an hour', moneyQuantity(input.hourRate)),
      ],
      result: moneyQuantity(work.exact),
      rule: derived('Every hour at your rate.'),
    },
    {
      label: 'What goes into one',
      formula: 'm + q + w',
      terms: [
        term('m', 'fabric, batting and thread', moneyQuantity(details.materials)),
        term('q', 'quilting, sent out', moneyQuantity(details.longarm)),
        term('w', 'your work, as above', moneyQuantity(work.minor)),
      ],
      result: moneyQuantity(costs),
      rule: derived('Each line is rounded once, and the rounded lines are added.'),
    },
    {
      label: 'Overhead',
      formula: 'C × o',
      terms: [
        term('C', 'what goes into one', moneyQuantity(costs)),
        term('o', 'overhead', percentQuantity(sixDecimals(input.overheadPercent))),
      ],
      result: moneyQuantity(overhead.exact),
      rule: commonPractice('A part of the cost stands for what can’t be counted one by one.'),
    },
    {
      label: 'Added on top',
      formula: '(C + v) × a',
      terms: [
        term('C', 'what goes into one', moneyQuantity(costs)),
        term('v', 'overhead', moneyQuantity(overhead.minor)),
        term('a', 'added on top', percentQuantity(sixDecimals(input.markupPercent))),
      ],
      result: moneyQuantity(markup.exact),
      rule: commonPractice('A percentage of everything above it.'),
    },
  ];
}

function priceSteps(input: ProjectPriceInput, details: ProjectPriceDetails): readonly Step[] {
  const { costs, overhead, markup, beforeTax, price } = details;
  const sum: Step = {
    label: 'Before tax',
    formula: 'C + v + a',
    terms: [
      term('C', 'what goes into one', moneyQuantity(costs)),
      term('v', 'overhead', moneyQuantity(overhead.minor)),
      term('a', 'added on top', moneyQuantity(markup.minor)),
    ],
    result: moneyQuantity(beforeTax),
    rule: derived('The sum of its lines.'),
  };
  const net = term('N', 'before tax', moneyQuantity(beforeTax));
  const isIncluded = input.taxIs === 'included';
  const named: Step = {
    label: 'Price of one',
    formula: isIncluded ? 'N × (1 + t), rounded up' : 'N, rounded up',
    terms: isIncluded ? [net, taxTerm(input)] : [net],
    result: rounded(price.exact, price.minor),
    rule: commonPractice('Rounded up, so that it covers what goes into it.'),
  };
  return [sum, named];
}

function paySteps(input: ProjectPriceInput, details: ProjectPriceDetails): readonly Step[] {
  const { price, tax, toPay, deposit } = details;
  const isIncluded = input.taxIs === 'included';
  const alike = term('n', 'how many alike', countQuantity(input.alike, ['project', 'projects']));
  const one = term('P', 'price of one', moneyQuantity(price.minor));
  const taxStep: Step = {
    label: 'Tax',
    formula: isIncluded ? 'n × P × t ÷ (1 + t)' : 'n × P × t',
    terms: [alike, one, taxTerm(input)],
    result: rounded(tax.exact, tax.minor),
    rule: derived(
      isIncluded ? 'The part of the price that is tax: at 20% a sixth.' : 'A percentage of the price.',
    ),
  };
  const payStep: Step = {
    label: 'To pay',
    formula: isIncluded ? 'n × P' : 'n × P + t',
    terms: isIncluded ? [alike, one] : [alike, one, term('t', 'tax, rounded', moneyQuantity(tax.minor))],
    result: moneyQuantity(toPay),
    rule: derived('All of them, with tax.'),
  };
  const total = term('T', 'to pay', moneyQuantity(toPay));
  const depositSteps: readonly Step[] =
    input.depositPercent === 0
      ? []
      : [
          {
            label: 'Deposit',
            formula: 'T × d',
            terms: [total, term('d', 'deposit', percentQuantity(sixDecimals(input.depositPercent)))],
            result: moneyQuantity(deposit.exact),
            rule: commonPractice('A part of the whole, paid when it is ordered.'),
          },
          {
            label: 'Left to pay',
            formula: 'T − D',
            terms: [total, term('D', 'deposit, rounded', moneyQuantity(deposit.minor))],
            result: moneyQuantity(toPay - deposit.minor),
            rule: derived('The rest, once it is finished.'),
          },
        ];
  return [
    ...(input.taxPercent === 0 ? [] : [taxStep]),
    payStep,
    ...cashSteps(input, details),
    ...depositSteps,
    ...earnedSteps(input, details),
  ];
}

function cashSteps({ cashStep }: ProjectPriceInput, { toPay, inCash }: ProjectPriceDetails): readonly Step[] {
  if (cashStep === 1) return [];
  return [
    {
      label: 'In cash',
      formula: 'T',
      terms: [term('T', 'to pay', moneyQuantity(toPay))],
      result: rounded(toPay, inCash),
      rule: commonPractice('To the nearest coin, after tax.'),
    },
  ];
}

function earnedSteps(input: ProjectPriceInput, details: ProjectPriceDetails): readonly Step[] {
  const { toPay, tax, costs, work, overhead, perHour } = details;
  if (perHour === null) return [];
  return [
    {
      label: 'An hour earns',
      formula: '((T − t) ÷ n − m − v) ÷ h',
      terms: [
        term('T', 'to pay', moneyQuantity(toPay)),
        term('t', 'tax', moneyQuantity(tax.minor)),
        term('n', 'how many alike', countQuantity(input.alike, ['project', 'projects'])),
        term('m', 'materials and quilting', moneyQuantity(costs - work.minor)),
        term('v', 'overhead', moneyQuantity(overhead.minor)),
        term('h', 'hours', numberQuantity(sixDecimals(input.hours))),
      ],
      result: moneyQuantity(perHour, 'down'),
      rule: derived('What is left for your work when everything else is paid.'),
    },
  ];
}

function taxTerm({ taxPercent }: ProjectPriceInput) {
  return term('t', 'tax', percentQuantity(sixDecimals(taxPercent)));
}

/** Money that is not rounded to the nearest cent but as prices, tax and cash are. */
export function rounded(exact: number, minor: number): Quantity {
  return { kind: 'money', exact, rounded: minor };
}
