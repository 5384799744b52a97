import type { NeededPatch } from '#core/domain/need';
import { success } from '#core/result';
import { lengthFromExact } from '#core/units/length';
import { bindingCuts } from '#core/calculators/binding/binding-cuts';
import type { BiasFabricPlan } from '#core/calculators/binding/bias-fabric';
import type { Calculator } from '#core/calculators/calculator';
import type { Figure } from '#core/calculators/explanation';
import { fabricNeed } from '#core/calculators/needs';
import {
  countQuantity,
  givenLength,
  lengthDown,
  lengthUp,
  percentQuantity,
  sizeQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { limitsFromInputs } from '../curve-fields';
import { type InnerBindingInput, innerBindingFromProject, innerBindingInput, usableWidth } from './input';
import { innerBindingHowTo } from './how-to';
import { innerBindingNotes } from './notes';
import { curveOf, type InnerBindingDetails, workOutInnerBinding } from './work';
import { innerBindingSteps } from './steps';
import { ringDiagram } from './diagram';
import { turnedStrain } from '../strain';
import { frontTable, strainTable, whatFitsTable } from '../strain-steps';

export const innerBinding: Calculator<InnerBindingInput, InnerBindingDetails> = {
  name: 'inner-binding',
  version: 2,
  title: 'Inner binding',
  question: 'How long a strip do I need to bind the hole, and will it lie flat once turned?',
  stageKinds: ['inner-binding'],
  input: innerBindingInput,
  fromProject: innerBindingFromProject,
  startsFromProject: ['bindLegs'],
  calculate(input) {
    const work = workOutInnerBinding(input);
    if (!work.ok) return work;
    const details = work.value;
    const limits = limitsFromInputs(input);
    const curve = curveOf(input);
    const front = frontTable(curve, limits);
    return success({
      figures: figuresOf(input, details),
      tables: [
        strainTable(details.strains, 'inside', limits),
        ...(front === null ? [] : [front]),
        whatFitsTable({ curve, cover: input.backCover, limits, cutStep: input.cutStep }),
        innerBindingHowTo(input, details),
      ],
      explanation: innerBindingSteps(input, details),
      notes: innerBindingNotes(input, details),
      diagram: ringDiagram(input),
      details,
    });
  },
  needs: (input, { bias, legStrip }) => [
    fabricNeed('Inner binding', [biasPatch(bias), ...legPatches(input, legStrip)], {
      fabricWidth: usableWidth(input),
    }),
  ],
  cuts: (input, { bias, legStrip }) => [
    ...[biasPatch(bias), ...legPatches(input, legStrip)].flatMap(({ width, length, count }) =>
      bindingCuts('Inner binding', lengthFromExact(width, 'up'), lengthFromExact(length, 'up'), count),
    ),
  ],
  isCutLater: true,
  wayTo: 'binding',
};

function biasPatch({ width, length, pieces }: BiasFabricPlan): NeededPatch {
  return { width, length, count: pieces, mayTurn: true };
}

/** Two strips on the straight grain as they are cut, the same for the shopping list and the cutting plan; none if all is bias. */
function legPatches({ stripWidth, cutStep }: InnerBindingInput, legStrip: number) {
  if (legStrip === 0) return [];
  const length = lengthFromExact(legStrip, 'up', cutStep);
  return [{ width: length, length: stripWidth, count: 2, mayTurn: true }];
}

function figuresOf(input: InnerBindingInput, details: InnerBindingDetails): readonly Figure[] {
  return [
    {
      label: 'Strip to cut',
      quantity: lengthUp(details.stripLength, input.cutStep),
    },
    { label: 'Strip width', quantity: givenLength(input.stripWidth) },
    { label: 'Verdict', quantity: wordsQuantity(details.verdict) },
    {
      label: 'Once turned it has to give',
      quantity: percentQuantity(100 * turnedStrain(details.strains)),
    },
    {
      label: 'The fold stands up while you sew by',
      quantity: percentQuantity(100 * details.strains.sewing),
    },
    { label: 'Seam line', quantity: lengthUp(details.seamLine) },
    {
      label: 'Widest strip for this hole',
      quantity:
        details.widestStrip === null ? wordsQuantity('none') : lengthDown(details.widestStrip, input.cutStep),
    },
    ...fabricFigures(input, details),
  ];
}

function fabricFigures(input: InnerBindingInput, details: InnerBindingDetails): readonly Figure[] {
  const { bias, legStrip, squareForOneStrip } = details;
  const [width, length] = [lengthFromExact(bias.width, 'up'), lengthFromExact(bias.length, 'up')];
  const way = bias.way === 'continuous' ? 'Square for continuous bias' : 'Fabric for joined bias strips';
  return [
    { label: way, quantity: sizeQuantity(givenLength(width), givenLength(length)) },
    ...(bias.pieces > 1
      ? [{ label: 'Number of squares', quantity: countQuantity(bias.pieces, ['square', 'squares']) }]
      : []),
    ...(squareForOneStrip === null
      ? []
      : [{ label: 'Or a square for one unbroken strip', quantity: givenLength(squareForOneStrip) }]),
    ...(legStrip > 0
      ? [
          {
            label: 'Straight strip for each side of the slit',
            quantity: lengthUp(legStrip, input.cutStep),
          },
        ]
      : []),
  ];
}
