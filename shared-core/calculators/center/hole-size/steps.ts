import { lengthFromExact } from '#core/units/length';
import type { Explanation, Quantity, Step, Table } from '#core/calculators/explanation';
import {
  fineLength,
  givenLength,
  lengthDown,
  lengthNearest,
  lengthQuantity,
  lengthUp,
  percentQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { commonPractice, derived, fineTerm, givenTerm, term } from '#core/calculators/working/terms';
import { type HoleSizeInput, rulerRounding } from './input';
import { acrossOf, type HoleSizeDetails, lifeOf } from './work';

/** The nearest ruler sizes, and the room that each leaves around the thing that goes through, once the hole is bound and washed. */
export function rulerTable(input: HoleSizeInput, { exactDiameter, through }: HoleSizeDetails): Table {
  const above = lengthFromExact(exactDiameter, 'up', input.rulerStep);
  const sizes = [above - 2 * input.rulerStep, above - input.rulerStep, above, above + input.rulerStep];
  return {
    title: 'Nearest sizes of your circle ruler',
    columns: ['Diameter', 'Radius', through === null ? 'Larger by' : 'Room on each side, washed', 'Edge'],
    rows: sizes
      .filter((size) => size > 0)
      .map((size): readonly Quantity[] => [
        lengthNearest(size),
        fineLength(size / 2, 'down'),
        lengthDown(through === null ? size - exactDiameter : (lifeOf(input, size).washed - through) / 2),
        lengthUp(Math.PI * size),
      ]),
  };
}

/** The same hole as it is cut, bound and washed, each rounded down as what must not be too small. */
export function lifeTable(details: HoleSizeDetails): Table {
  const { diameter, bound, washed, through } = details;
  const rows: readonly (readonly [string, number])[] = [
    ['Cut', diameter],
    ['Bound', bound],
    ['After the first wash', washed],
    ...(through === null ? [] : [['Room on each side then', (washed - through) / 2] as const]),
  ];
  return {
    title: 'The hole from the cut to the first wash',
    columns: ['When', 'Across'],
    rows: rows.map(([when, across]) => [
      wordsQuantity(when),
      across === diameter ? givenLength(diameter) : lengthDown(across),
    ]),
  };
}

/** From the measured size to the hole to cut, and from there to the washed hole and the seam line of its binding. */
export function holeSizeSteps(input: HoleSizeInput, details: HoleSizeDetails): Explanation {
  const cut = givenTerm('D', 'hole diameter', details.diameter);
  return [
    ...(details.through === null ? givenSteps(input, details) : neededSteps(input, details, details.through)),
    ...lifeSteps(input, details),
    {
      label: 'Seam line of its binding',
      formula: 'π(D + 2s)',
      terms: [cut, givenTerm('s', 'seam allowance', input.seamAllowance)],
      result: lengthUp(details.seamLine),
      rule: derived('The binding is stitched one seam allowance outside the cut edge.'),
    },
  ];
}

function givenSteps(input: HoleSizeInput, { exactDiameter }: HoleSizeDetails): readonly Step[] {
  return [
    {
      label: 'Hole to cut',
      formula: 'D = d',
      terms: [givenTerm('d', 'diameter', input.measure)],
      result: lengthQuantity(exactDiameter, rulerRounding(input)),
      rule: commonPractice('Your own size, taken as it is.'),
    },
  ];
}

function neededSteps(input: HoleSizeInput, details: HoleSizeDetails, through: number): readonly Step[] {
  const isAround = input.from === 'around';
  const thing = isAround
    ? term('d', 'its diameter', lengthUp(acrossOf(input)))
    : givenTerm('d', 'its diameter', input.measure);
  const passes = !input.hasSlit && input.passes > 0;
  const washed = through + input.ease;
  const bound = washed / (1 - input.washPercent / 100);
  const acrossStep: Step = {
    label: 'The measured thing across',
    formula: 'd = C ÷ π',
    terms: [givenTerm('C', 'measured around', input.measure)],
    result: lengthUp(acrossOf(input)),
    rule: derived('The distance around a circle is π times its diameter.'),
  };
  return [
    ...(isAround ? [acrossStep] : []),
    {
      label: 'Washed hole that fits',
      formula: passes ? 'H = max(d, W) + e' : 'H = d + e',
      terms: [
        thing,
        ...(passes ? [givenTerm('W', 'widest thing it goes over', input.passes)] : []),
        givenTerm('e', 'ease', input.ease),
      ],
      result: lengthUp(washed),
      rule: derived('The widest thing that goes through, plus room around it.'),
    },
    {
      label: 'The same hole, bound, before the wash',
      formula: 'B = H ÷ (1 − p)',
      terms: [
        term('H', 'washed hole', lengthUp(washed)),
        term('p', 'shrinkage in the wash', percentQuantity(input.washPercent)),
      ],
      result: lengthUp(bound),
      rule: derived('A hole shrinks by the same part as the fabric around it.'),
    },
    {
      label: 'Hole to cut',
      formula: 'D = (B + 2b) ÷ (1 − q), rounded up to your ruler',
      terms: [
        term('B', 'bound hole', lengthUp(bound)),
        fineTerm('b', 'thickness of the binding', input.bindingThickness),
        term('q', 'draws up after the cut', percentQuantity(input.drawUpPercent)),
      ],
      result: lengthQuantity(details.exactDiameter, rulerRounding(input)),
      rule: derived('The binding lies over the cut edge on both sides of the hole.'),
    },
  ];
}

function lifeSteps(input: HoleSizeInput, { diameter, bound, washed }: HoleSizeDetails): readonly Step[] {
  return [
    {
      label: 'Once it is bound',
      formula: 'F = D · (1 − q) − 2b',
      terms: [
        givenTerm('D', 'hole diameter', diameter),
        term('q', 'draws up after the cut', percentQuantity(input.drawUpPercent)),
        fineTerm('b', 'thickness of the binding', input.bindingThickness),
      ],
      result: lengthDown(bound),
      rule: derived('The same way forward, from the hole as it is cut.'),
    },
    {
      label: 'After the first wash',
      formula: 'F · (1 − p)',
      terms: [
        term('F', 'bound hole', lengthDown(bound)),
        term('p', 'shrinkage in the wash', percentQuantity(input.washPercent)),
      ],
      result: lengthDown(washed),
      rule: derived('What is left of it when the project has been washed.'),
    },
  ];
}
