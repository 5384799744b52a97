import type { Need } from '#core/domain/need';
import { failure, type Result, success } from '#core/result';
import { lengthFromExact } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import { cautionNotes } from '../caution-notes';
import type { Figure, Note, Quantity, Table } from '../explanation';
import { outlineBounds } from '../outline/outline-measures';
import { areaQuantity, countQuantity, givenLength, sizeQuantity, wordsQuantity } from '../quantities';
import { fabricNeed } from '../needs';
import { battingDiagram } from './diagram';
import { battingSteps, offTheRoll, sideOf } from './steps';
import { type BattingDetails, fittingPackages, MOST_WIDTHS, rollCuts } from './work';
import { type BattingInput, battingInput, battingInputFromProject } from './input';

/** The smallest package that covers the top with its overhang, and the length to cut off each roll. */
export const batting: Calculator<BattingInput, BattingDetails> = {
  name: 'batting',
  version: 1,
  title: 'Batting',
  question: 'Which batting covers the quilt, from a package or by the yard?',
  stageKinds: ['longarm', 'home-quilting'],
  input: battingInput,
  fromProject: battingInputFromProject,
  calculate: calculateBatting,
  needs: battingNeeds,
};

function calculateBatting(input: BattingInput): Result<Calculation<BattingDetails>, Refusal> {
  const bounds = outlineBounds(input.outline);
  const side = (exact: number) => lengthFromExact(exact + 2 * input.overhang, 'up', input.cutStep);
  const sheet = { width: side(bounds.width), length: side(bounds.length) };
  const details = {
    ...sheet,
    packages: fittingPackages(sheet, input.packages),
    rolls: rollCuts(sheet, input.rolls),
  };
  if (details.packages.length + details.rolls.length === 0) return failure(refuseSmallBatting(input, sheet));
  return success({
    figures: battingFigures(input, details),
    tables: [packageTable(input, details), rollTable(input, details)],
    explanation: battingSteps(input, details),
    notes: battingNotes(input, details),
    diagram: battingDiagram(input, details),
    details,
  });
}

/** The smallest package that covers, else widths off the best roll. Batting on hand need only be as large as the sheet. */
function battingNeeds(
  { safetyExtraPercent }: BattingInput,
  { width, length, packages, rolls }: BattingDetails,
): readonly Need[] {
  const [[smallest], [roll]] = [packages, rolls];
  if (smallest !== undefined) {
    const sheet = { width, length, count: 1, mayTurn: true };
    const need = fabricNeed('Batting', [sheet], { fabricWidth: smallest.width });
    const { name, width: across, length: along } = smallest;
    return [{ ...need, kind: 'batting-package', package: { name, width: across, length: along } }];
  }
  if (roll === undefined) return [];
  const widths = { width: roll.width, length: roll.each, count: roll.widths, mayTurn: false };
  const need = fabricNeed('Batting', [widths], { fabricWidth: roll.width, extraPercent: safetyExtraPercent });
  return [{ ...need, kind: 'batting' }];
}

function refuseSmallBatting(
  input: BattingInput,
  { width, length }: Pick<BattingDetails, 'width' | 'length'>,
): Refusal {
  return {
    code: 'nothing-covers',
    field: [input.packages.length === 0 ? 'rolls' : 'packages'],
    says: 'No package covers {sheet}, and no roll does in {most} or fewer. Add a larger one.',
    values: {
      sheet: sizeQuantity(givenLength(width), givenLength(length)),
      most: countQuantity(MOST_WIDTHS, ['width', 'widths']),
    },
  };
}

function battingFigures(input: BattingInput, { packages, rolls }: BattingDetails): readonly Figure[] {
  const bounds = outlineBounds(input.outline);
  const [smallest] = packages;
  const [roll] = rolls;
  const size: Figure = {
    label: 'Cut size of the batting',
    quantity: sizeQuantity(sideOf(input, bounds.width), sideOf(input, bounds.length)),
  };
  return [
    ...(smallest === undefined
      ? []
      : [{ label: 'Smallest package', quantity: wordsQuantity(smallest.name) }]),
    ...(roll === undefined
      ? []
      : [{ label: `Or by the yard: ${roll.name}`, quantity: offTheRoll(input, roll) }]),
    size,
  ];
}

function packageTable(input: BattingInput, sheet: BattingDetails): Table {
  return {
    title: 'Packages',
    columns: ['Package', 'Size', 'Covers', 'Left over'],
    rows: input.packages.map((one) => {
      const [fit] = fittingPackages(sheet, [one]);
      const verdict = fit === undefined ? 'too small' : fit.isTurned ? 'yes, turned' : 'yes';
      const spare: Quantity = fit === undefined ? wordsQuantity('–') : areaQuantity(fit.spare);
      return [
        wordsQuantity(one.name),
        sizeQuantity(givenLength(one.width), givenLength(one.length)),
        wordsQuantity(verdict),
        spare,
      ];
    }),
  };
}

function rollTable(input: BattingInput, { rolls }: BattingDetails): Table {
  return {
    title: 'By the yard',
    columns: ['Roll', 'Width', 'Widths side by side', 'Length of each', 'To buy'],
    rows: rolls.map((roll) => [
      wordsQuantity(roll.name),
      givenLength(roll.width),
      countQuantity(roll.widths, ['width', 'widths']),
      givenLength(roll.each),
      offTheRoll(input, roll),
    ]),
  };
}

function battingNotes({ sizesFrom }: BattingInput, { packages, rolls }: BattingDetails): readonly Note[] {
  const thick: Note = {
    kind: 'caution',
    says: 'Batting is thick, so a rotary blade needs more force and slips more easily: use a sharp blade. Keep loose batting away from stoves, candles and hot irons.',
    values: {},
  };
  const unfold: Note = {
    kind: 'tip',
    says: 'Unfold the batting a day before you use it, so the creases relax.',
    values: {},
  };
  const joined: Note = {
    kind: 'warning',
    says: 'Join widths of batting edge to edge, with a wide zigzag or by hand. An overlap leaves a ridge.',
    values: {},
  };
  const source: Note = {
    kind: 'tip',
    says: 'Package and roll sizes come from: {source}.',
    values: { source: wordsQuantity(sizesFrom) },
  };
  const isForCrib = /\b(crib|baby)\b/i.test(packages[0]?.name ?? '');
  return [
    ...cautionNotes('rotaryBlade', 'usedBlades'),
    thick,
    ...(isForCrib ? cautionNotes('crib') : []),
    unfold,
    ...(sizesFrom === '' ? [] : [source]),
    ...((rolls[0]?.widths ?? 1) > 1 ? [joined] : []),
  ];
}
