import { z } from 'zod';
import type { Measurements } from '#core/domain/measurements';
import { lengthField } from '#core/domain/fields';
import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromExact, lengthFromInches } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Diagram, DiagramPart } from '../diagram';
import type { Explanation, Figure, Note, Quantity, Rule, Table } from '../explanation';
import { outlinePerimeter } from '../outline/outline-measures';
import { countQuantity, givenLength, lengthQuantity, wordsQuantity } from '../quantities';
import { seamField } from '../shared-fields';
import { HANDLE_BIAS_TIP, ROTARY_CAUTION } from './bench-notes';
import {
  LONGEST_BIAS_CLOTH,
  LONGEST_BINDING,
  neededLengthField,
  shortestStripField,
  SHORTEST_STRIP,
  squareStepField,
  squareStepOfHabits,
  stripWidthField,
} from './binding-fields';
import {
  biasClothLength,
  type BiasStripsLayout,
  layBiasStrips,
  slantedJoinCost,
  squaredStripsLength,
} from './bias-strips-layout';

const input = z
  .object({
    clothWidth: lengthField({ title: 'Cloth: width' }),
    clothLength: lengthField({ title: 'Cloth: length' }),
    stripWidth: stripWidthField(),
    seamAllowance: seamField('Of the joins between strips.'),
    shortestStrip: shortestStripField(),
    needed: neededLengthField(),
    lengthStep: squareStepField(),
  })
  .readonly();
export type BiasStripsInput = z.infer<typeof input>;

export interface BiasStripsDetails extends BiasStripsLayout {
  /** All strips joined, both ends cut square. */
  readonly gives: number;
  readonly isEnough: boolean;
  /** Shortest length of cloth of this width that reaches what is needed; null where no length does. */
  readonly leastClothLength: Length | null;
}

export const biasStrips: Calculator<BiasStripsInput, BiasStripsDetails> = {
  name: 'bias-strips',
  version: 1,
  title: 'Bias strips from a piece of cloth',
  question: 'How much bias strip comes from this piece, cut as single strips?',
  stageKinds: ['outer-binding', 'inner-binding'],
  input,
  fromProject,
  calculate,
};

/** Half a yard of the workshop's cloth stands for the piece at hand. */
function fromProject({ outline, habits }: Measurements): BiasStripsInput {
  return {
    clothWidth: habits.fabricWidth,
    clothLength: lengthFromInches(18),
    stripWidth: habits.bindingStripWidth,
    seamAllowance: habits.seamAllowance,
    shortestStrip: SHORTEST_STRIP,
    needed: lengthFromExact(outlinePerimeter(outline) + habits.bindingOverlap, 'up'),
    lengthStep: squareStepOfHabits(habits),
  };
}

function calculate(asked: BiasStripsInput): Result<Calculation<BiasStripsDetails>, Refusal> {
  const cloth = {
    width: asked.clothWidth,
    strip: asked.stripWidth,
    seam: asked.seamAllowance,
    shortest: asked.shortestStrip,
  };
  const layout = layBiasStrips({ ...cloth, length: asked.clothLength });
  if (layout.strips.length === 0) {
    return failure({
      code: 'cloth-too-small',
      field: ['clothLength'],
      says: 'No strip {strip} wide and at least {shortest} long fits this cloth on the bias.',
      values: { strip: givenLength(asked.stripWidth), shortest: givenLength(asked.shortestStrip) },
    });
  }
  const gives = squaredStripsLength(layout, asked.stripWidth);
  if (gives > LONGEST_BINDING) return failure(MORE_THAN_ANY_BINDING);
  const least = biasClothLength(cloth, {
    needed: asked.needed,
    step: asked.lengthStep,
    longest: LONGEST_BIAS_CLOTH,
  });
  const details: BiasStripsDetails = {
    ...layout,
    gives,
    isEnough: gives >= asked.needed,
    leastClothLength: least === null ? null : lengthFromExact(least, 'up'),
  };
  return success({
    figures: figuresOf(asked, details),
    tables: [stripsTable(details)],
    explanation: stepsOf(asked, details),
    notes: notesOf(details),
    diagram: diagramOf(asked, details),
    details,
  });
}

const MORE_THAN_ANY_BINDING: Refusal = {
  code: 'too-much-strip',
  field: ['clothLength'],
  says: 'That is more strip than any piece takes: {longest} and over. Ask for a shorter piece of cloth.',
  values: { longest: givenLength(LONGEST_BINDING) },
};

function figuresOf(asked: BiasStripsInput, details: BiasStripsDetails): readonly Figure[] {
  const { gives, isEnough, leastClothLength } = details;
  return [
    { label: 'It gives', quantity: lengthQuantity(gives, { direction: 'down' }) },
    { label: 'Strips', quantity: countQuantity(details.strips.length, ['strip', 'strips']) },
    {
      label: isEnough ? 'More than needed' : 'Short of what is needed by',
      quantity: lengthQuantity(Math.abs(gives - asked.needed), { direction: isEnough ? 'down' : 'up' }),
    },
    ...(leastClothLength === null
      ? []
      : [{ label: 'Least length of this width that does', quantity: givenLength(leastClothLength) }]),
  ];
}

/** Strips of the same length on one line, the longest first. */
function stripsTable({ strips }: BiasStripsDetails): Table {
  const counts = new Map<number, number>();
  for (const { middle } of strips) {
    const whole = lengthFromExact(middle, 'down');
    counts.set(whole, (counts.get(whole) ?? 0) + 1);
  }
  const rows = [...counts].sort(([one], [other]) => other - one);
  return {
    title: 'Strips',
    columns: ['Strips', 'Long, along the middle'],
    rows: rows.map(([length, count]): readonly Quantity[] => [
      countQuantity(count, ['strip', 'strips']),
      lengthQuantity(length, { direction: 'down' }),
    ]),
  };
}

function stepsOf(asked: BiasStripsInput, details: BiasStripsDetails): Explanation {
  const derived = (says: string): Rule => ({ kind: 'derived', says });
  const sum = details.strips.reduce((so, { middle }) => so + middle, 0);
  const join = lengthQuantity(slantedJoinCost(asked.seamAllowance), { direction: 'up' });
  const count = countQuantity(details.strips.length, ['strip', 'strips']);
  return [
    {
      label: 'All strips, along their middles',
      formula: 'S = ℓ₁ + ℓ₂ + … + ℓₙ',
      terms: [
        { symbol: 'n', means: 'strips', quantity: count },
        { symbol: 'ends', means: 'all ends run', quantity: wordsQuantity(details.ends) },
      ],
      result: lengthQuantity(sum, { direction: 'down' }),
      rule: derived(
        'The largest slanted strip that fits each band, with all ends on the same grain so that any two can be joined.',
      ),
    },
    {
      label: 'A join',
      formula: 'j = 2s√2',
      terms: [{ symbol: 's', means: 'seam allowance', quantity: givenLength(asked.seamAllowance) }],
      result: join,
      rule: derived('The seam runs at 45° to the strip, so each allowance takes s√2 of its length.'),
    },
    {
      label: 'Joined, with both ends cut square',
      formula: 'S − (n − 1) · j − w',
      terms: [
        { symbol: 'S', means: 'all strips', quantity: lengthQuantity(sum, { direction: 'down' }) },
        { symbol: 'n', means: 'strips', quantity: count },
        { symbol: 'j', means: 'a join', quantity: join },
        { symbol: 'w', means: 'strip width', quantity: givenLength(asked.stripWidth) },
      ],
      result: lengthQuantity(details.gives, { direction: 'down' }),
      rule: derived('Squaring a slanted end takes half a strip width.'),
    },
  ];
}

function notesOf(details: BiasStripsDetails): readonly Note[] {
  return [
    {
      kind: 'tip',
      says: 'Make the first cut at 45° from a corner and cut strips on both sides of it. Keep all strips right side up and the same way round, so that their ends match.',
      values: {},
    },
    ...(details.strips.length > 8
      ? [
          {
            kind: 'tip',
            says: 'That is {joins} to sew; cut as one continuous strip it would be two.',
            values: { joins: countQuantity(details.strips.length - 1, ['join', 'joins']) },
          } as const,
        ]
      : []),
    HANDLE_BIAS_TIP,
    ROTARY_CAUTION,
  ];
}

function diagramOf(asked: BiasStripsInput, { strips }: BiasStripsDetails): Diagram {
  const { clothWidth: width, clothLength: height } = asked;
  const cloth = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  return {
    title: 'The strips on the cloth',
    width,
    height,
    parts: [
      { part: 'polygon', points: cloth, tone: 'leftover' },
      ...strips.map(({ corners }, index): DiagramPart => ({
        part: 'polygon',
        points: corners,
        tone: index % 2 === 0 ? 'cloth' : 'cloth-alternate',
      })),
      {
        part: 'dimension',
        from: { x: 0, y: height },
        to: { x: width, y: height },
        offset: -1 * (width / 12),
        length: width,
      },
      {
        part: 'dimension',
        from: { x: width, y: height },
        to: { x: width, y: 0 },
        offset: -1 * (width / 12),
        length: height,
      },
    ],
  };
}
