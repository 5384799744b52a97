import type { PatchList } from '#core/domain/patch-list';
import { type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '#core/calculators/calculator';
import type { Figure, Table } from '#core/calculators/explanation';
import { needsOfPatchList } from '#core/calculators/needs';
import {
  countQuantity,
  givenLength,
  lengthDown,
  lengthUp,
  sizeQuantity,
  wordsQuantity,
  yardageUp,
} from '#core/calculators/quantities';
import { stripTable } from '../fabric-steps';
import { type PatternListInput, patternListFromProject, patternListInput, type PatternPatch } from './input';
import { patternListNotes } from './notes';
import { patternListSteps } from './steps';
import { type BindingOfPattern, type FabricOfPattern, type PatternListWork, workOutPattern } from './work';

export interface PatternListDetails {
  readonly fabrics: readonly FabricOfPattern[];
  readonly binding: BindingOfPattern | null;
  readonly patchList: PatchList;
  /** Rotary cuts through one layer. */
  readonly cuts: number;
}

/** Fabric for the patches of a pattern, beside what the pattern asks for. */
export const patternList: Calculator<PatternListInput, PatternListDetails> = {
  name: 'pattern-list',
  version: 1,
  title: 'From a pattern',
  question: 'How much fabric do the pattern’s patches take, and is it what the pattern asks for?',
  stageKinds: ['piecing'],
  isOccasional: true,
  input: patternListInput,
  fromProject: patternListFromProject,
  calculate: calculatePatternList,
  workIn: ({ cuts }) => [{ what: 'cuts', amount: cuts }],
  needs: (input, { patchList }) => needsOfPatchList(patchList, input),
  cuts: (_, { patchList }) => patchList,
  includes: ['patch-size'],
};

function calculatePatternList(input: PatternListInput): Result<Calculation<PatternListDetails>, Refusal> {
  const work = workOutPattern(input);
  if (!work.ok) return work;
  const { needed, fabrics, binding } = work.value;
  return success({
    figures: figuresOf(work.value),
    tables: [againstTable(work.value), patchTable(input), stripTable(needed.strips)],
    explanation: patternListSteps(work.value),
    notes: patternListNotes(work.value),
    diagram: null,
    details: { fabrics, binding, patchList: needed.patches, cuts: cutsOf(work.value) },
  });
}

/** Two cuts for each strip, one to square each width of strip, one for each patch, and one for each diagonal. */
function cutsOf({ input, needed }: PatternListWork): number {
  const along = needed.strips.reduce((sum, { strips }) => sum + 2 * strips + 1, 0);
  return input.patches.reduce((sum, { cutAs, count }) => sum + count * CUTS[cutAs], along);
}

const CUTS: Readonly<Record<PatternPatch['cutAs'], number>> = {
  strip: 0,
  patch: 1,
  'cut-once': 2,
  'cut-twice': 3,
};

/** How many patches each cut square or rectangle gives. */
const GIVES: Readonly<Record<PatternPatch['cutAs'], number>> = {
  strip: 1,
  patch: 1,
  'cut-once': 2,
  'cut-twice': 4,
};

function figuresOf({ input, fabrics, binding }: PatternListWork): readonly Figure[] {
  const bought = fabrics.map(({ fabric, needed }): Figure => ({
    label: `Fabric, ${fabric}`,
    quantity: yardageUp(needed, input.yardageStep),
  }));
  const patches = input.patches.reduce((sum, { cutAs, count }) => sum + count * GIVES[cutAs], 0);
  const bound: readonly Figure[] =
    binding === null
      ? []
      : [
          { label: 'Binding needed', quantity: lengthUp(binding.needed) },
          { label: 'Its binding strips give', quantity: lengthDown(binding.given) },
        ];
  return [...bought, { label: 'Patches', quantity: countQuantity(patches, ['patch', 'patches']) }, ...bound];
}

const VERDICTS: Readonly<Record<NonNullable<FabricOfPattern['verdict']>, string>> = {
  enough: 'enough',
  less: 'less would do',
  short: 'not enough',
};

function againstTable({ input, fabrics }: PatternListWork): Table {
  return {
    title: 'What the pattern asks for, and what its patches take',
    columns: ['Fabric', 'It asks for', 'Its patches take', 'To buy', 'So it is'],
    rows: fabrics.map(({ fabric, needed, stated, verdict }) => [
      wordsQuantity(fabric),
      stated === null ? wordsQuantity('not said') : givenLength(stated, 'yardage'),
      givenLength(needed),
      yardageUp(needed, input.yardageStep),
      wordsQuantity(verdict === null ? '–' : VERDICTS[verdict]),
    ]),
  };
}

const CUT_WORDS: Readonly<Record<PatternPatch['cutAs'], string>> = {
  patch: 'patch',
  'cut-once': 'cut once on the diagonal',
  'cut-twice': 'cut twice on the diagonal',
  strip: 'strip across the fabric',
};

function patchTable({ patches, fabricWidth }: PatternListInput): Table {
  return {
    title: 'Patches of the pattern',
    columns: ['Fabric', 'Cut size', 'Cut as', 'How many', 'Gives'],
    rows: patches.map(({ fabric, width, length, cutAs, count }) => [
      wordsQuantity(fabric),
      sizeQuantity(givenLength(width), givenLength(cutAs === 'strip' ? fabricWidth : length)),
      wordsQuantity(CUT_WORDS[cutAs]),
      countQuantity(count, ['', '']),
      countQuantity(count * GIVES[cutAs], ['patch', 'patches']),
    ]),
  };
}
