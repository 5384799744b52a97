import type { PatchList } from '#core/domain/patch-list';
import { polygonArea } from '#core/geometry/polygon';
import { type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';
import type { Figure, Quantity, Table } from '#core/calculators/explanation';
import { needsOfPatchList } from '#core/calculators/needs';
import {
  countQuantity,
  lengthQuantity,
  sizeQuantity,
  wordsQuantity,
  yardageUp,
} from '#core/calculators/quantities';
import { lengthPerFabric, type FabricLength } from '../fabric-needed';
import { patchesFromPiece, type SizedPatch } from '../cut-sizes';
import { stripTable } from '../fabric-steps';
import { patchesPerStrip } from '../fill-strips';
import { patchSizeDiagram } from './diagram';
import { patchSizeFromProject, patchSizeInput, type PatchSizeInput } from './input';
import { patchSizeNotes } from './notes';
import { patchSizeSteps } from './steps';
import { asCommon, fabricOfRole } from './unit-fabrics';
import { isFromFabric, patchLetter, type PatchSizeWork, workOutPatches } from './work';

export interface PatchSizeDetails {
  /** In 1/320 mm, not rounded, as are all plain numbers of length here. */
  readonly finishedWidth: number;
  readonly finishedLength: number;
  readonly patches: readonly CutPatchDetails[];
  readonly fabricLengths: readonly FabricLength[];
  readonly cuts: number;
  readonly patchList: PatchList;
}

/** A patch to cut, exact and rounded, and how many come from a strip and from the maker's piece of fabric. */
interface CutPatchDetails {
  readonly name: string;
  readonly fabric: string;
  readonly acrossExact: number;
  readonly alongExact: number;
  readonly across: Length;
  readonly along: Length;
  readonly count: number;
  readonly perStrip: number;
  readonly perPiece: number;
}

export const patchSize: Calculator<PatchSizeInput, PatchSizeDetails> = {
  name: 'patch-size',
  version: 3,
  title: 'Patch sizes',
  question: 'What size do I cut, and how much fabric does it take?',
  stageKinds: ['piecing'],
  input: patchSizeInput,
  fromProject: patchSizeFromProject,
  calculate: calculatePatchSize,
  workIn: ({ cuts }) => [{ what: 'cuts', amount: cuts }],
  needs: (input, { patchList }) => needsOfPatchList(patchList, input),
  cuts: (_, { patchList }) => patchList,
};

function calculatePatchSize(input: PatchSizeInput): Result<Calculation<PatchSizeDetails>, Refusal> {
  const work = workOutPatches(input);
  if (!work.ok) return work;
  const details = detailsOf(work.value);
  return success({
    figures: figuresOf(work.value, details.fabricLengths),
    tables: [patchTable(work.value), stripTable(work.value.needed.strips)],
    explanation: patchSizeSteps(work.value),
    notes: patchSizeNotes(work.value),
    diagram: patchSizeDiagram(work.value),
    details,
  });
}

function detailsOf({ input, plan, sized, needed, cuts }: PatchSizeWork): PatchSizeDetails {
  return {
    finishedWidth: plan.width,
    finishedLength: plan.length,
    patches: sized.filter(isFromFabric).map((one) => ({
      name: one.patch.name,
      fabric: fabricOfRole(input.unit, one.patch.role),
      acrossExact: one.across.exact,
      alongExact: one.along.exact,
      across: one.across.rounded,
      along: one.along.rounded,
      count: one.count,
      perStrip: patchesPerStrip(one.strip, input.fabricWidth),
      perPiece: patchesFromPiece(one, input.pieceWidth, input.pieceLength),
    })),
    fabricLengths: lengthPerFabric(needed.strips),
    cuts,
    patchList: needed.patches,
  };
}

/** Cut sizes first, or the finished size first if the input has cut sizes. */
function figuresOf(work: PatchSizeWork, fabricLengths: readonly FabricLength[]): readonly Figure[] {
  const { input, fromCut } = work;
  const cut = work.sized.filter(isFromFabric).slice(0, 5).map(cutFigure);
  const finished = finishedFigure(work);
  const bought = fabricLengths.map(({ fabric, length: exact }): Figure => {
    const quantity = yardageUp(exact, input.yardageStep);
    return { label: `Fabric, ${asCommon(fabric)}`, quantity };
  });
  const cuts: Figure = {
    label: 'Rotary cuts, one layer at a time',
    quantity: countQuantity(work.cuts, ['cut', 'cuts']),
  };
  const sizes = fromCut === null ? [...cut, finished] : [finished, ...cut];
  return [...sizes, ...unfinishedFigure(work), ...bought, cuts];
}

function finishedFigure({ plan, fromCut }: PatchSizeWork): Figure {
  if (fromCut === null) return { label: 'Finished', quantity: sizeOf(plan.width, plan.length, 'nearest') };
  return { label: 'Finishes at', quantity: sizeOf(plan.width, plan.length, 'down') };
}

/** Only for a rectangle, which is two seams larger in each direction. */
function unfinishedFigure({ plan, input }: PatchSizeWork): readonly Figure[] {
  const isRectangle = Math.abs(polygonArea(plan.outline) - plan.width * plan.length) < 1;
  if (!isRectangle) return [];
  const seams = 2 * input.seamAllowance;
  const quantity = sizeOf(plan.width + seams, plan.length + seams, 'nearest');
  return [{ label: 'Unfinished size', quantity }];
}

function sizeOf(width: number, length: number, direction: 'nearest' | 'down'): Quantity {
  const across = lengthQuantity(width, { direction });
  return width === length ? across : sizeQuantity(across, lengthQuantity(length, { direction }));
}

function cutFigure(one: SizedPatch): Figure {
  const { name, shape } = one.patch;
  return shape.isRectangle
    ? { label: `Cut ${name.toLowerCase()}`, quantity: cutSize(one) }
    : { label: `Cut strip for ${name.toLowerCase()}`, quantity: one.across };
}

function cutSize({ across, along }: SizedPatch): Quantity {
  return across.rounded === along.rounded ? across : sizeQuantity(across, along);
}

function patchTable({ input, sized, drawn }: PatchSizeWork): Table {
  return {
    title: 'Patches to cut',
    columns: [
      'Drawn',
      'Patch',
      'Fabric',
      'Strip or width',
      'Crosscut or side',
      'How many',
      'From one strip',
      'From your piece',
    ],
    rows: sized
      .filter(isFromFabric)
      .map((one) => [
        wordsQuantity(patchLetter(drawn.indexOf(one))),
        wordsQuantity(one.patch.name),
        wordsQuantity(fabricOfRole(input.unit, one.patch.role)),
        one.across,
        one.along,
        countQuantity(one.count, ['', '']),
        countQuantity(patchesPerStrip(one.strip, input.fabricWidth), ['', '']),
        countQuantity(patchesFromPiece(one, input.pieceWidth, input.pieceLength), ['', '']),
      ]),
  };
}
