import { z } from 'zod';
import { choiceField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { success } from '#core/result';
import {
  type Length,
  lengthFromExact,
  lengthFromInches,
  lengthFromMillimetres,
  lengthFromUnits,
} from '#core/units/length';
import type { Calculator } from '../calculator';
import { holeOfProject } from '../curves/inner-binding-input';
import type { Diagram } from '../diagram';
import type { Explanation, Note, Quantity, Table } from '../explanation';
import { givenLength, lengthQuantity } from '../quantities';
import { seamField } from '../shared-fields';
import { CENTER_CUT_NOTES } from './center-notes';

const input = z
  .object({
    from: choiceField(['around', 'across', 'ruler', 'wish'], {
      title: 'The hole comes from',
      help: 'A stand, trunk or pole measured around or across, a size of your circle ruler, or your own wish.',
    }),
    measure: lengthField({
      title: 'Measured or wished for',
      help: 'Around where you measured around, else across.',
    }),
    ease: lengthField({
      title: 'Ease',
      help: 'Added to a measured diameter so that the piece goes on and lies flat; half of it on each side.',
      minimum: lengthFromUnits(0),
      maximum: lengthFromInches(24),
    }),
    rulerStep: lengthField({
      title: 'Your circle ruler goes in steps of',
      help: 'Of the diameter. A ruler that turns on its center goes in twice the step of its holes.',
      minimum: lengthFromMillimetres(1),
      maximum: lengthFromInches(4),
    }),
    seamAllowance: seamField('From the cut edge to the stitching of the inner binding.'),
  })
  .readonly();
export type HoleSizeInput = z.infer<typeof input>;

export interface HoleSizeDetails {
  /** Across the hole before rounding, and rounded up to the ruler so that it is never too small for what goes through. */
  readonly exactDiameter: number;
  readonly diameter: Length;
  readonly seamLine: number;
}

export const holeSize: Calculator<HoleSizeInput, HoleSizeDetails> = {
  name: 'hole-size',
  version: 1,
  title: 'Size of the hole',
  question: 'How large a hole does the stand, trunk or pole need?',
  stageKinds: ['center-cut'],
  input,
  fromProject,
  calculate(asked) {
    const details = detailsOf(asked);
    return success({
      figures: [
        {
          label: 'Hole to cut, across',
          quantity: lengthQuantity(details.exactDiameter, rulerRounding(asked)),
        },
        {
          label: 'Set a turning ruler to',
          quantity: lengthQuantity(details.diameter / 2, { direction: 'nearest' }),
        },
        {
          label: 'Edge of the hole',
          quantity: lengthQuantity(Math.PI * details.diameter, { direction: 'up' }),
        },
        {
          label: 'Seam line of its binding',
          quantity: lengthQuantity(details.seamLine, { direction: 'up' }),
        },
      ],
      tables: [rulerTable(asked, details)],
      explanation: stepsOf(asked, details),
      notes: notesOf(asked, details),
      diagram: diagramOf(asked, details),
      details,
    });
  },
};

function fromProject(measurements: Measurements): HoleSizeInput {
  const isInch = measurements.habits.unitSystem === 'inch';
  return {
    from: 'wish',
    measure: holeOfProject(measurements),
    ease: isInch ? lengthFromInches(1 / 2) : lengthFromMillimetres(10),
    rulerStep: isInch ? lengthFromInches(1 / 2) : lengthFromMillimetres(10),
    seamAllowance: measurements.habits.seamAllowance,
  };
}

/** A measured thing gets ease and goes up to the next ruler size; a ruler size or a wish is taken as it is. */
function isMeasured({ from }: Pick<HoleSizeInput, 'from'>): boolean {
  return from === 'around' || from === 'across';
}

function rulerRounding(asked: HoleSizeInput) {
  return { direction: 'up', step: isMeasured(asked) ? asked.rulerStep : 1 } as const;
}

function detailsOf(asked: HoleSizeInput): HoleSizeDetails {
  const across = asked.from === 'around' ? asked.measure / Math.PI : asked.measure;
  const exactDiameter = isMeasured(asked) ? across + asked.ease : across;
  const { direction, step } = rulerRounding(asked);
  const diameter = lengthFromExact(exactDiameter, direction, step);
  return { exactDiameter, diameter, seamLine: Math.PI * (diameter + 2 * asked.seamAllowance) };
}

/** The ruler sizes on both sides of the exact one, and what each leaves beside the thing that goes through. */
function rulerTable(asked: HoleSizeInput, { exactDiameter }: HoleSizeDetails): Table {
  const above = lengthFromExact(exactDiameter, 'up', asked.rulerStep);
  const through = isMeasured(asked) ? exactDiameter - asked.ease : exactDiameter;
  const sizes = [above - 2 * asked.rulerStep, above - asked.rulerStep, above, above + asked.rulerStep];
  return {
    title: 'Sizes of a circle ruler nearby',
    columns: ['Across', 'Radius', isMeasured(asked) ? 'Room on each side' : 'Against your size', 'Edge'],
    rows: sizes
      .filter((size) => size > 0)
      .map((size): readonly Quantity[] => [
        lengthQuantity(size, { direction: 'nearest' }),
        lengthQuantity(size / 2, { direction: 'nearest' }),
        lengthQuantity(isMeasured(asked) ? (size - through) / 2 : size - through, { direction: 'down' }),
        lengthQuantity(Math.PI * size, { direction: 'up' }),
      ]),
  };
}

function stepsOf(asked: HoleSizeInput, details: HoleSizeDetails): Explanation {
  const ease = { symbol: 'e', means: 'ease', quantity: givenLength(asked.ease) };
  const measured = {
    symbol: asked.from === 'around' ? 'C' : 'd',
    means: asked.from === 'around' ? 'measured around' : 'across',
    quantity: givenLength(asked.measure),
  };
  return [
    {
      label: 'Hole across',
      formula: asked.from === 'around' ? 'D = C ÷ π + e' : isMeasured(asked) ? 'D = d + e' : 'D = d',
      terms: isMeasured(asked) ? [measured, ease] : [measured],
      result: lengthQuantity(details.exactDiameter, rulerRounding(asked)),
      rule: isMeasured(asked)
        ? {
            kind: 'derived',
            says: 'What goes through, and room round it; rounded up to a size your ruler has.',
          }
        : { kind: 'common practice', says: 'Taken as it is given.' },
    },
    {
      label: 'Seam line of its binding',
      formula: 'π(D + 2s)',
      terms: [
        { symbol: 'D', means: 'hole across', quantity: givenLength(details.diameter) },
        { symbol: 's', means: 'seam allowance', quantity: givenLength(asked.seamAllowance) },
      ],
      result: lengthQuantity(details.seamLine, { direction: 'up' }),
      rule: { kind: 'derived', says: 'The binding is stitched a seam outside the cut edge.' },
    },
  ];
}

function notesOf(asked: HoleSizeInput, details: HoleSizeDetails): readonly Note[] {
  const room: readonly Note[] =
    isMeasured(asked) && details.diameter > details.exactDiameter + 1
      ? [
          {
            kind: 'tip',
            says: 'The ruler’s next size is {more} more than you asked for.',
            values: {
              more: lengthQuantity(details.diameter - details.exactDiameter, { direction: 'nearest' }),
            },
          },
        ]
      : [];
  return [
    ...room,
    {
      kind: 'tip',
      says: 'The binding folds over the cut edge, so the finished hole is smaller by two thicknesses of it; thick cloth wants more ease.',
      values: {},
    },
    {
      kind: 'caution',
      says: 'Cloth under a lit tree or near a stove can catch fire: keep it clear of lamps and heat, follow their instructions and your local fire rules.',
      values: {},
    },
    ...CENTER_CUT_NOTES,
  ];
}

function diagramOf(asked: HoleSizeInput, details: HoleSizeDetails): Diagram {
  const cut = details.diameter / 2;
  const half = 1.1 * (cut + asked.seamAllowance);
  const center = { x: half, y: half };
  const through = (details.exactDiameter - asked.ease) / 2;
  return {
    title: 'The hole, its seam line, and what goes through it',
    width: 2 * half,
    height: 2 * half,
    parts: [
      { part: 'circle', center, radius: cut + asked.seamAllowance, tone: 'seam' },
      { part: 'circle', center, radius: cut, tone: 'cut' },
      ...(isMeasured(asked) ? [{ part: 'circle', center, radius: through, tone: 'plan' } as const] : []),
      {
        part: 'dimension',
        from: { x: half - cut, y: half },
        to: { x: half + cut, y: half },
        offset: half / 8,
        length: details.diameter,
      },
    ],
  };
}
