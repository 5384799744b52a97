import { success } from '#core/result';
import { lengthFromExact } from '#core/units/length';
import type { Calculator } from '#core/calculators/calculator';
import type { Diagram } from '#core/calculators/diagram';
import type { Note } from '#core/calculators/explanation';
import { lengthNearest, lengthQuantity, lengthUp } from '#core/calculators/quantities';
import { CENTER_CUT_NOTES } from '../center-notes';
import {
  type HoleSizeDetails,
  type HoleSizeInput,
  holeSizeFromProject,
  holeSizeInput,
  isMeasured,
  rulerRounding,
} from './input';
import { holeSizeSteps, rulerTable } from './steps';

export const holeSize: Calculator<HoleSizeInput, HoleSizeDetails> = {
  name: 'hole-size',
  version: 1,
  title: 'Size of the hole',
  question: 'How large a hole does the stand, trunk or pole need?',
  stageKinds: ['center-cut'],
  input: holeSizeInput,
  fromProject: holeSizeFromProject,
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
          quantity: lengthNearest(details.diameter / 2),
        },
        {
          label: 'Edge of the hole',
          quantity: lengthUp(Math.PI * details.diameter),
        },
        {
          label: 'Seam line of its binding',
          quantity: lengthUp(details.seamLine),
        },
      ],
      tables: [rulerTable(asked, details)],
      explanation: holeSizeSteps(asked, details),
      notes: notesOf(asked, details),
      diagram: diagramOf(asked, details),
      details,
    });
  },
};

function detailsOf(asked: HoleSizeInput): HoleSizeDetails {
  const across = asked.from === 'around' ? asked.measure / Math.PI : asked.measure;
  const exactDiameter = isMeasured(asked) ? across + asked.ease : across;
  const { direction, step } = rulerRounding(asked);
  const diameter = lengthFromExact(exactDiameter, direction, step);
  return { exactDiameter, diameter, seamLine: Math.PI * (diameter + 2 * asked.seamAllowance) };
}

function notesOf(asked: HoleSizeInput, details: HoleSizeDetails): readonly Note[] {
  const room: readonly Note[] =
    isMeasured(asked) && details.diameter > details.exactDiameter + 1
      ? [
          {
            kind: 'tip',
            says: 'The ruler’s next size is {more} more than you asked for.',
            values: {
              more: lengthNearest(details.diameter - details.exactDiameter),
            },
          },
        ]
      : [];
  return [
    ...room,
    {
      kind: 'tip',
      says: 'The binding folds over the cut edge, so the finished hole is smaller by two thicknesses of it; thick fabric wants more ease.',
      values: {},
    },
    {
      kind: 'caution',
      says: 'Fabric under a lit tree or near a stove can catch fire: keep it clear of lamps and heat, follow their instructions and your local fire rules.',
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
