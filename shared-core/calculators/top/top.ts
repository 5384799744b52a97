import type { PatchList } from '#core/domain/patch-list';
import { type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Quantity, Table } from '../explanation';
import { needsOfPatchList } from '../needs';
import type { FabricLength } from '../patches/fabric-needed';
import {
  countQuantity,
  givenLength,
  degreesQuantity,
  lengthNearest,
  lengthUp,
  sizeQuantity,
  wordsQuantity,
  yardageUp,
} from '../quantities';
import { topDiagram } from './diagram';
import type { RingPatch } from './assembly';
import { topFromProject, topInput, type TopInput } from './input';
import { topNotes } from './notes';
import { topSteps } from './steps';
import { type TopWork, workOutTop } from './work';

export interface TopDetails {
  /** Finished, in 1/320 mm, not rounded. A regular polygon is measured from point to point if it is wider that way. */
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
  /** Finished, in 1/320 mm, not rounded. */
  readonly seamLength: number;
  /** How many places do not meet. Each has a note. */
  readonly misfits: number;
}

export const top: Calculator<TopInput, TopDetails> = {
  name: 'top',
  version: 3,
  title: 'The whole top',
  question: 'How large is the finished top, and what do I cut for it?',
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
  const { assembly, needed, fabrics, seams, seamLength } = work.value;
  return success({
    figures: figuresOf(work.value),
    tables: [
      sizeTable(work.value),
      patchTable(needed.patches),
      blockTable(work.value),
      ...ringTables(assembly.rings, input),
    ],
    explanation: topSteps(work.value),
    notes: topNotes(work.value),
    diagram: topDiagram(work.value),
    details: {
      width: assembly.width,
      length: assembly.length,
      steps: assembly.steps.map(({ label, width, length }) => ({ label, width, length })),
      patchList: needed.patches,
      fabricLengths: fabrics.map(({ fabric, length }) => ({ fabric, length })),
      blocks: work.value.counted.reduce((sum, { count }) => sum + count, 0),
      cuts: work.value.cuts,
      seams,
      seamLength,
      misfits: assembly.misfits.length,
    },
  });
}

function figuresOf({
  assembly,
  input,
  needed,
  fabrics,
  seams,
  seamLength,
  sewn,
}: TopWork): readonly Figure[] {
  const bought = fabrics.map(({ fabric, withExtra }): Figure => {
    return { label: `Fabric, ${fabric}`, quantity: yardageUp(withExtra, input.yardageStep) };
  });
  const fromFabric = needed.patches.reduce((sum, { count }) => sum + count, 0);
  return [
    { label: 'Finished top', quantity: sizeOf(assembly.width, assembly.length) },
    { label: 'Top before quilting', quantity: sizeOf(sewn.width, sewn.length) },
    ...bought,
    { label: 'Patches', quantity: countQuantity(seams + 1, ['patch', 'patches']) },
    { label: 'Cut from the fabric', quantity: countQuantity(fromFabric, ['rectangle', 'rectangles']) },
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
    title: 'Sizes to measure along the way',
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
    title: 'Rectangles to cut from the fabric',
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

/** Strips are cut to their height first; a strip holds the patches with every second one turned around. */
function ringTables(rings: readonly RingPatch[], { cutStep }: TopInput): readonly Table[] {
  if (rings.length === 0) return [];
  return [
    {
      title: 'Patches of the rings, as cut',
      columns: [
        'Ring',
        'Fabric',
        'How many',
        'Long side',
        'Short side',
        'Width of the strip',
        'Angle at the long side',
      ],
      rows: rings.map(({ name, fabric, count, long, short, height, degrees }) => [
        wordsQuantity(name),
        wordsQuantity(fabric),
        countQuantity(count, ['', '']),
        lengthUp(long, cutStep),
        lengthUp(short, cutStep),
        lengthUp(height, cutStep),
        degreesQuantity(degrees),
      ]),
    },
  ];
}

function blockTable({ counted, input }: TopWork): Table {
  const allowance = 2 * input.seamAllowance;
  return {
    title: 'Blocks',
    columns: ['Block', 'How many', 'Finished', 'As sewn, with seam allowance', 'Patches in one'],
    rows: counted.map(({ block, count, totals }) => [
      wordsQuantity(block.name),
      countQuantity(count, ['', '']),
      sizeOf(block.width, block.length),
      sizeOf(block.width + allowance, block.length + allowance),
      countQuantity(totals.patches, ['', '']),
    ]),
  };
}
