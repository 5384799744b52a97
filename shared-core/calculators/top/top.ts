import type { PatchList } from '#core/domain/patch-list';
import { type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Quantity, Table } from '../explanation';
import { needsOfPatchList } from '../needs';
import { lengthPerFabric, type FabricLength } from '../patches/fabric-needed';
import {
  countQuantity,
  givenLength,
  lengthNearest,
  lengthQuantity,
  sizeQuantity,
  wordsQuantity,
} from '../quantities';
import { topDiagram } from './diagram';
import { topFromProject, topInput, type TopInput } from './input';
import { topNotes } from './notes';
import { topSteps } from './steps';
import { type TopWork, workOutTop } from './work';

export interface TopDetails {
  /** Finished, exact, in 1/320 mm; a regular polygon from point to point where it is wider that way. */
  readonly width: number;
  readonly length: number;
  readonly steps: readonly { readonly label: string; readonly width: number; readonly length: number }[];
  readonly patchList: PatchList;
  /** Without the safety extra. */
  readonly fabricLengths: readonly FabricLength[];
  readonly blocks: number;
  /** Rotary cuts through one layer. */
  readonly cuts: number;
  readonly seams: number;
  /** Exact, finished, in 1/320 mm. */
  readonly seamLength: number;
  /** How many places do not meet; each has a note. */
  readonly misfits: number;
}

export const top: Calculator<TopInput, TopDetails> = {
  name: 'top',
  version: 1,
  title: 'The whole top',
  question: 'How large does the top get, and what do I cut for it?',
  stageKinds: ['piecing'],
  input: topInput,
  fromProject: topFromProject,
  calculate: calculateTop,
  workIn: ({ blocks, cuts }) => [
    ...(blocks > 0 ? [{ what: 'blocks', amount: blocks } as const] : []),
    { what: 'cuts', amount: cuts },
  ],
  needs: (input, { patchList }) => needsOfPatchList(patchList, input),
  cuts: (_, { patchList }) => patchList,
  includes: ['patch-size'],
};

function calculateTop(input: TopInput): Result<Calculation<TopDetails>, Refusal> {
  const work = workOutTop(input);
  if (!work.ok) return work;
  const { assembly, needed, seams, seamLength } = work.value;
  return success({
    figures: figuresOf(work.value),
    tables: [sizeTable(work.value), patchTable(needed.patches), blockTable(work.value)],
    explanation: topSteps(work.value),
    notes: topNotes(work.value),
    diagram: topDiagram(work.value),
    details: {
      width: assembly.width,
      length: assembly.length,
      steps: assembly.steps.map(({ label, width, length }) => ({ label, width, length })),
      patchList: needed.patches,
      fabricLengths: lengthPerFabric(needed.strips),
      blocks: work.value.counted.reduce((sum, { count }) => sum + count, 0),
      cuts: work.value.cuts,
      seams,
      seamLength,
      misfits: assembly.misfits.length,
    },
  });
}

function figuresOf({ assembly, input, needed, seams, seamLength }: TopWork): readonly Figure[] {
  const allowance = 2 * input.seamAllowance;
  const times = 1 + input.safetyExtraPercent / 100;
  const bought = lengthPerFabric(needed.strips).map(({ fabric, length: exact }): Figure => {
    const rounding = { step: input.yardageStep, direction: 'up', use: 'yardage' } as const;
    return { label: `Fabric, ${fabric}`, quantity: lengthQuantity(exact * times, rounding) };
  });
  const patches = needed.patches.reduce((sum, { count }) => sum + count, 0);
  return [
    { label: 'Finished top', quantity: sizeOf(assembly.width, assembly.length) },
    {
      label: 'Top before quilting',
      quantity: sizeOf(assembly.width + allowance, assembly.length + allowance),
    },
    ...bought,
    { label: 'To cut', quantity: countQuantity(patches, ['piece', 'pieces']) },
    { label: 'Seams', quantity: countQuantity(seams, ['seam', 'seams']) },
    { label: 'Length of all seams', quantity: lengthNearest(seamLength) },
  ];
}

function sizeOf(width: number, length: number): Quantity {
  return sizeQuantity(lengthNearest(width), lengthNearest(length));
}

function sizeTable({ assembly, input }: TopWork): Table {
  const allowance = 2 * input.seamAllowance;
  return {
    title: 'Sizes to measure on the way',
    columns: ['After', 'Finished', 'As sewn, with seam allowance'],
    rows: assembly.steps.map(({ label, width, length }) => [
      wordsQuantity(label),
      sizeOf(width, length),
      sizeOf(width + allowance, length + allowance),
    ]),
  };
}

function patchTable(patches: PatchList): Table {
  return {
    title: 'Patches to cut',
    columns: ['Fabric', 'Across the fabric', 'Along the fabric', 'How many', 'May be turned'],
    rows: patches.map(({ fabric, width, length, count, mayTurn }) => [
      wordsQuantity(fabric),
      givenLength(width),
      givenLength(length),
      countQuantity(count, ['', '']),
      wordsQuantity(mayTurn ? 'yes' : 'no'),
    ]),
  };
}

function blockTable({ counted, input }: TopWork): Table {
  const allowance = 2 * input.seamAllowance;
  return {
    title: 'Blocks',
    columns: ['Block', 'How many', 'Finished', 'As sewn, with seam allowance', 'Patches in one'],
    rows: counted.map(({ block, count, make }) => [
      wordsQuantity(block.name),
      countQuantity(count, ['', '']),
      sizeOf(block.width, block.length),
      sizeOf(block.width + allowance, block.length + allowance),
      countQuantity(make.patches, ['', '']),
    ]),
  };
}
