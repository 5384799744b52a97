import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { success } from '#core/result';
import { lengthFromExact } from '#core/units/length';
import type { Calculator } from '#core/calculators/calculator';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Figure, Note, Quantity, Table } from '#core/calculators/explanation';
import { outlineCornerAngles } from '#core/calculators/outline/outline-measures';
import {
  areaQuantity,
  countQuantity,
  degreesQuantity,
  givenLength,
  lengthDown,
  lengthNearest,
  lengthUp,
  percentQuantity,
  sizeQuantity,
  wordsQuantity,
} from '#core/calculators/quantities';
import { HANDLE_BIAS_TIP } from '../bench-notes';
import { cornerExtra, stitchStopBefore } from './corner-miters';
import { outerBindingDiagram } from './diagram';
import { outerBindingCuts, outerBindingNeeds, squaresForBias } from './fabric';
import { type OuterBindingInput, outerBindingInputFromProject, outerBindingInput } from './input';
import { type OuterBindingDetails, planOuterBinding } from './work';
import { outerBindingSteps } from './steps';
import type { BindingWay } from './ways';

export const outerBinding: Calculator<OuterBindingInput, OuterBindingDetails> = {
  name: 'outer-binding',
  version: 1,
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
      tables: [waysTable(details), ...cornersTables(input)],
      explanation: outerBindingSteps(input, details),
      notes: notesOf(input, details),
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
    details.frontWidth > 0 ? [{ label: frontLabel, quantity: lengthDown(details.frontWidth) }] : [];
  const continuous = squaresForBias(details);
  if (details.isBiasNeeded) {
    return [
      ...(continuous === undefined
        ? []
        : [{ label: 'Square for continuous bias', quantity: fabricOf(continuous) }]),
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

function notesOf(input: OuterBindingInput, details: OuterBindingDetails): readonly Note[] {
  const isSlitElsewhere = input.hasSlit && input.slitBoundWith === 'hole';
  return [
    ...biasNotes(input, details),
    coverNote(input, details),
    ...(isSlitElsewhere ? [SLIT_NOT_COUNTED] : []),
    ...cautionNotes('rotaryBlade', 'iron', 'pins'),
  ];
}

const SLIT_NOT_COUNTED: Note = {
  kind: 'tip',
  says: 'The slit is not counted here, because it is bound with the hole.',
  values: {},
};

function biasNotes(input: OuterBindingInput, { bend, isBiasNeeded }: OuterBindingDetails): readonly Note[] {
  if (bend === null || !isBiasNeeded) return [];
  return [
    {
      kind: 'warning',
      says: 'Straight grain won’t go around this edge: the strip has to stretch or ease by {strain}, and straight grain does so by about {limit}. Cut it on the bias.',
      values: {
        strain: percentQuantity(100 * bend.strain),
        limit: percentQuantity(input.straightGrainGive),
      },
    },
    HANDLE_BIAS_TIP,
  ];
}

function coverNote(input: OuterBindingInput, { cover, frontWidth, stripForSeam }: OuterBindingDetails): Note {
  const seam = givenLength(input.seamAllowance);
  if (cover < 0) {
    return {
      kind: 'warning',
      says: 'With a seam allowance of {seam}, the fold stops {short} before the stitching on the back. Use a narrower seam or a strip of {strip}.',
      values: { seam, short: lengthUp(-cover), strip: lengthUp(stripForSeam, input.cutStep) },
    };
  }
  const values = { seam, cover: lengthDown(cover) };
  const reach = 'With a seam allowance of {seam}, the fold passes the stitching on the back by {cover}';
  // Rounded to the cutting step the two may look alike, so the sentence says how they compare and names no second size.
  if (frontWidth - input.seamAllowance > input.cutStep) {
    return {
      kind: 'tip',
      says: `${reach}. This strip would fit a seam of up to {front}.`,
      values: { ...values, front: lengthDown(frontWidth, input.cutStep) },
    };
  }
  if (frontWidth < input.seamAllowance) {
    return { kind: 'tip', says: `${reach}, which is less cover than you asked for.`, values };
  }
  return { kind: 'tip', says: `${reach}: this strip fits this seam.`, values };
}
