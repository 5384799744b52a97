import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { success } from '#core/result';
import { lengthFromExact } from '#core/units/length';
import type { Calculator } from '#core/calculators/calculator';
import type { Figure, Quantity, Table } from '#core/calculators/explanation';
import { outlineCornerAngles } from '#core/calculators/outline/outline-measures';
import {
  areaQuantity,
  countQuantity,
  degreesQuantity,
  fineLength,
  givenLength,
  lengthDown,
  lengthNearest,
  lengthUp,
  sizeQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { cornerExtra, stitchStopBefore } from './corner-miters';
import { outerBindingDiagram } from './diagram';
import { outerBindingCuts, outerBindingNeeds } from './fabric';
import { outerBindingHowTo } from './how-to';
import { type OuterBindingInput, outerBindingInputFromProject, outerBindingInput } from './input';
import { outerBindingNotes } from './notes';
import { type OuterBindingDetails, planOuterBinding } from './work';
import { outerBindingSteps } from './steps';
import type { BindingWay } from './ways';

export const outerBinding: Calculator<OuterBindingInput, OuterBindingDetails> = {
  name: 'outer-binding',
  version: 2,
  title: 'Outer binding',
  question: 'How much fabric does the outer binding take, and what is the best way to cut it?',
  stageKinds: ['outer-binding'],
  input: outerBindingInput,
  fromProject: outerBindingInputFromProject,
  calculate(input) {
    const plan = planOuterBinding(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [waysTable(details), ...cornersTables(input), outerBindingHowTo(input, details)],
      explanation: outerBindingSteps(input, details),
      notes: outerBindingNotes(input, details),
      diagram: outerBindingDiagram(input),
      details,
    });
  },
  needs: outerBindingNeeds,
  cuts: outerBindingCuts,
  isCutLater: true,
  wayTo: 'binding',
};

function figuresOf(input: OuterBindingInput, details: OuterBindingDetails): readonly Figure[] {
  const needed: Figure = {
    label: 'Strip needed',
    quantity: lengthUp(details.needed, input.cutStep),
  };
  const frontLabel = 'Front width this strip fits';
  const front: readonly Figure[] =
    details.frontWidth > 0 ? [{ label: frontLabel, quantity: fineLength(details.frontWidth, 'down') }] : [];
  if (details.biasWay !== null) {
    return [
      ...biasFigures(input, details.biasWay, details.fabric),
      needed,
      { label: 'Grain', quantity: wordsQuantity('needs bias') },
      ...front,
    ];
  }
  return [
    { label: 'Strips', quantity: countQuantity(details.strips, ['strip', 'strips'], 'up') },
    { label: 'Fabric to buy', quantity: fabricToBuy(input, details.fabric) },
    {
      label: 'Fabric for the strips',
      quantity: lengthUp(details.fabric, input.cutStep),
    },
    needed,
    { label: 'Grain', quantity: wordsQuantity('straight grain works') },
    ...front,
  ];
}

function biasFigures(input: OuterBindingInput, bias: BindingWay, fabric: number): readonly Figure[] {
  const isContinuous = bias.way === 'continuous-bias';
  return [
    {
      label: isContinuous ? 'Square for continuous bias' : 'Fabric for joined bias strips',
      quantity: fabricOf(bias),
    },
    ...(bias.pieces > 1
      ? [{ label: 'Number of squares', quantity: countQuantity(bias.pieces, ['square', 'squares']) }]
      : []),
    { label: 'Fabric to buy', quantity: fabricToBuy(input, fabric) },
  ];
}

const WAY_WORDS: Readonly<Record<BindingWay['way'], string>> = {
  'straight-strips': 'straight strips',
  'bias-strips': 'bias strips from the full width of fabric',
  'bias-strips-of-square': 'bias strips from a square',
  'continuous-bias': 'continuous bias',
};

function waysTable(details: OuterBindingDetails): Table {
  return {
    title: 'Ways to cut it',
    columns: ['Way', 'Fabric', 'Cuts', 'Seams', 'Gives', 'Spare strip', 'Scrap', 'Around this edge'],
    rows: details.ways.map((way): readonly Quantity[] => [
      wordsQuantity(way.pieces === 1 ? WAY_WORDS[way.way] : `${WAY_WORDS[way.way]}, ${way.pieces} squares`),
      fabricOf(way),
      countQuantity(way.cuts, ['cut', 'cuts']),
      countQuantity(way.seams, ['seam', 'seams']),
      lengthDown(way.gives),
      lengthDown(way.spare),
      areaQuantity(way.scraps),
      wordsQuantity(way.way === 'straight-strips' && details.isBiasNeeded ? 'too stiff' : 'works'),
    ]),
  };
}

function fabricOf({ width, length }: BindingWay): Quantity {
  return sizeQuantity(givenLength(lengthFromExact(width, 'up')), givenLength(lengthFromExact(length, 'up')));
}

function cornersTables(input: OuterBindingInput): readonly Table[] {
  const outer = outlineCornerAngles(input.outline);
  const [angle] = outer;
  const { innerCorners, innerCornerAngle, seamAllowance: seam } = input;
  const row = (count: number, degrees: number): readonly Quantity[] => [
    countQuantity(count, ['corner', 'corners']),
    degreesQuantity(degrees),
    lengthNearest(stitchStopBefore(degrees, seam)),
    lengthUp(cornerExtra(degrees, seam)),
  ];
  const rows = [
    ...(angle === undefined ? [] : [row(outer.length, angle)]),
    ...(innerCorners === 0 ? [] : [row(innerCorners, innerCornerAngle)]),
  ];
  if (rows.length === 0) return [];
  return [
    {
      title: 'Corners',
      columns: ['Corners', 'Angle', 'Stop stitching this far before', 'Extra strip each'],
      rows,
    },
  ];
}
