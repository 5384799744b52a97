import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { success } from '#core/result';
import type { Calculator } from '#core/calculators/calculator';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Figure, Note, Quantity, Table } from '#core/calculators/explanation';
import { fabricNeed, squarePatch } from '#core/calculators/needs';
import {
  countQuantity,
  givenLength,
  lengthDown,
  lengthNearest,
  lengthUp,
} from '#core/calculators/quantities';
import { prairiePointsDiagram } from './diagram';
import { type PrairiePointsInput, prairiePointsFromProject, prairiePointsInput } from './input';
import { prairiePointsSteps } from './steps';
import { planPrairiePoints, type PointsOfSide, type PrairiePointsDetails } from './work';

const NAME = 'Prairie points';

/** Folded triangles along an edge: the square to cut, how many, how far apart, and the fabric. */
export const prairiePoints: Calculator<PrairiePointsInput, PrairiePointsDetails> = {
  name: 'prairie-points',
  version: 1,
  title: 'Prairie points',
  question: 'How many prairie points go around the edge, from what squares, and how far apart?',
  stageKinds: ['outer-binding'],
  isOccasional: true,
  input: prairiePointsInput,
  fromProject: prairiePointsFromProject,
  calculate(input) {
    const plan = planPrairiePoints(input);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(input, details),
      tables: [sidesTable(details)],
      explanation: prairiePointsSteps(input, details),
      notes: notesOf(details),
      diagram: prairiePointsDiagram(details),
      details,
    });
  },
  needs: ({ fabricWidth, safetyExtra }, { square, points }) => [
    fabricNeed(NAME, [squarePatch(square, points)], { fabricWidth, extraPercent: safetyExtra }),
  ],
  cuts: (_input, { square, points }) => [
    { fabric: NAME, width: square, length: square, count: points, mayTurn: true },
  ],
  isCutLater: true,
};

function figuresOf(input: PrairiePointsInput, details: PrairiePointsDetails): readonly Figure[] {
  return [
    { label: 'Points', quantity: countQuantity(details.points, ['point', 'points']) },
    { label: 'Square to cut', quantity: givenLength(details.square) },
    { label: 'Fabric to buy', quantity: fabricToBuy(input, details.fabric) },
    { label: 'Fabric for the squares', quantity: lengthUp(details.fabric) },
    { label: 'Height of a point', quantity: lengthDown(details.height) },
    { label: 'Width of a point at the seam', quantity: lengthDown(details.base) },
  ];
}

/** Sides alike are one row. */
function sidesTable({ sides, isCurve }: PrairiePointsDetails): Table {
  const alike = new Map<number, PointsOfSide[]>();
  for (const side of sides) alike.set(side.length, [...(alike.get(side.length) ?? []), side]);
  return {
    title: isCurve ? 'Around the edge' : 'Along each side',
    columns: ['Sides', 'Length', 'Points on each', 'From point to point', 'Overlap at the seam'],
    rows: [...alike.values()].flatMap((group) =>
      group
        .slice(0, 1)
        .map(({ length, points, pitch, overlap }): readonly Quantity[] => [
          countQuantity(group.length, ['side', 'sides']),
          lengthDown(length),
          countQuantity(points, ['point', 'points']),
          lengthNearest(pitch),
          lengthDown(overlap),
        ]),
    ),
  };
}

function notesOf({ isCurve }: PrairiePointsDetails): readonly Note[] {
  const tip = (says: string): Note => ({ kind: 'tip', says, values: {} });
  return [
    tip(
      isCurve
        ? 'Around a curve that bows out, the tips spread apart. Tuck the last point into the first.'
        : 'At a corner two points meet side by side and don’t overlap, so that the corner turns flat.',
    ),
    tip(
      'Folded twice on the diagonal, a point is open on one side and the next tucks into it. Folded in half and then to the middle, its folds meet in front, and points lie over each other. Both are the same size.',
    ),
    tip(
      'Pin them tips in, with cut edges along the edge of the top and the backing folded away; sew, turn them out and sew the backing down behind them. Then the edge needs no binding.',
    ),
    ...cautionNotes('rotaryBlade', 'iron', 'pins'),
  ];
}
