import type { PatchToCut } from '#core/domain/patch-list';
import { roundUpTo } from '#core/units/rounding';
import type { Quantity, Sentence } from '../explanation';
import { countQuantity, givenLength, sizeQuantity, wordsQuantity } from '../quantities';
import { calculatorByName } from '../registry';
import { answersThatCount } from '../saved-answer';
import { answerNow, step, type StepGrounds } from './step-group';

/** More sizes than this in one sentence cannot be read at the table. */
const MOST_IN_A_STEP = 5;

/** The patches of the stage's saved answers by fabric, the longest first, because they are the hardest to find room for. */
export function cuttingSteps(grounds: StepGrounds): readonly Sentence[] {
  const patches = patchesOf(grounds);
  if (patches.length === 0) {
    return [step('Save the sizes of your patches with this stage, and the cuts are listed here.')];
  }
  const total = patches.reduce((sum, { count }) => sum + count, 0);
  return [
    step('Press the fabric. Fold it selvage to selvage and trim the cut end square to the fold.'),
    ...[...new Set(patches.map(({ fabric }) => fabric))].flatMap((fabric) => stepsOfFabric(fabric, patches)),
    step('Count them: {total} in all. Label each stack.', {
      total: countQuantity(total, ['patch', 'patches']),
    }),
    step('A cutting plan puts these cuts in order and says which piece of fabric each one comes from.'),
  ];
}

function patchesOf(grounds: StepGrounds): readonly PatchToCut[] {
  return answersThatCount(grounds.answers).flatMap(({ calculator: name }) => {
    const calculator = calculatorByName(name);
    if (calculator?.cuts === undefined || calculator.isCutLater === true) return [];
    const answer = answerNow(calculator, grounds);
    return answer === null ? [] : calculator.cuts(answer.input, answer.calculation.details);
  });
}

function stepsOfFabric(fabric: string, patches: readonly PatchToCut[]): readonly Sentence[] {
  const longest = ({ width, length }: PatchToCut) => Math.max(width, length);
  const sorted = patches
    .filter((patch) => patch.fabric === fabric)
    .toSorted((one, other) => longest(other) - longest(one));
  const steps = roundUpTo(sorted.length / MOST_IN_A_STEP, 1);
  return Array.from({ length: steps }, (_, index) => {
    const some = sorted.slice(index * MOST_IN_A_STEP, (index + 1) * MOST_IN_A_STEP);
    return step(
      `From “{fabric}”, cut ${some.map((_patch, at) => `{count${at}} of {size${at}}`).join(', ')}.`,
      {
        fabric: wordsQuantity(fabric),
        ...Object.fromEntries<Quantity>(some.flatMap((patch, at) => quantitiesOf(patch, at))),
      },
    );
  });
}

function quantitiesOf(
  { width, length, count }: PatchToCut,
  at: number,
): readonly (readonly [string, Quantity])[] {
  return [
    [`count${at}`, countQuantity(count, ['patch', 'patches'])],
    [`size${at}`, sizeQuantity(givenLength(width), givenLength(length))],
  ];
}
