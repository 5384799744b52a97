import { lengthFromInches } from '#core/units/length';
import { success } from '#core/result';
import type { Point } from '#core/geometry/point';
import type { Calculator } from '#core/calculators/calculator';
import type { Figure, Note } from '#core/calculators/explanation';
import { fineLength, lengthNearest, wordsQuantity } from '#core/calculators/quantities';
import { cautionNotes } from '#core/calculators/caution-notes';
import { centerFindDiagram } from './diagram';
import { type CenterFindInput, centerFindFromProject, centerFindInput } from './input';
import { type CenterFindDetails, workOutCenterFind } from './work';
import { centerFindSteps, centersTable, markTable, misfitTable, squareTable } from './tables';

export const centerFind: Calculator<CenterFindInput, CenterFindDetails> = {
  name: 'center-find',
  version: 2,
  title: 'Find the center',
  question: 'Where is the center of a project that is not quite square?',
  stageKinds: ['center-cut'],
  input: centerFindInput,
  fromProject: centerFindFromProject,
  calculate(input) {
    const work = workOutCenterFind(input);
    if (!work.ok) return work;
    const details = work.value;
    return success({
      figures: figuresOf(details),
      tables: [markTable(details), centersTable(details), squareTable(details), misfitTable(input, details)],
      explanation: centerFindSteps(input, details),
      notes: notesOf(input, details),
      diagram: centerFindDiagram(details),
      details,
    });
  },
};

function figuresOf(details: CenterFindDetails): readonly Figure[] {
  const [fromTop = 0, , , fromLeft = 0] = details.fromSides;
  return [
    { label: 'Center from the left side', quantity: lengthNearest(fromLeft) },
    { label: 'Center from the top side', quantity: lengthNearest(fromTop) },
    { label: 'The methods differ by', quantity: fineLength(details.apart, 'nearest') },
    ...misfitFigures(details.misfit),
    { label: 'Out of square by', quantity: fineLength(details.outOfSquare, 'nearest') },
    ...moveFigures(details.move),
  ];
}

/** Finer than a tape can show: lengths that disagree by less agree. */
const AGREES = lengthFromInches(1 / 64);

function misfitFigures(misfit: number): readonly Figure[] {
  return misfit < AGREES
    ? [{ label: 'Your six lengths', quantity: wordsQuantity('Your measurements agree.') }]
    : [{ label: 'Your six lengths disagree by', quantity: fineLength(misfit, 'nearest') }];
}

function moveFigures(move: Point | null): readonly Figure[] {
  if (move === null) return [];
  return [
    {
      label: `From the middle of the motif, move ${move.x < 0 ? 'left' : 'right'}`,
      quantity: lengthNearest(Math.abs(move.x)),
    },
    { label: `and ${move.y < 0 ? 'up' : 'down'}`, quantity: lengthNearest(Math.abs(move.y)) },
  ];
}

function notesOf(input: CenterFindInput, details: CenterFindDetails): readonly Note[] {
  const { misfit, apart, move } = details;
  const again: Note = {
    kind: 'warning',
    says: 'Your lengths disagree by {misfit}, more than you can be off, so one of them is wrong. Measure all six again before you cut.',
    values: { misfit: fineLength(misfit, 'up') },
  };
  const far: Note = {
    kind: 'warning',
    says: 'The methods give centers that are {apart} apart. Decide which one the eye will follow, and mark only that one.',
    values: { apart: fineLength(apart, 'up') },
  };
  const motif: Note = {
    kind: 'tip',
    says: 'The middle of the motif is not the middle of the project. The eye compares a hole close to the motif with the motif, and a hole far from it with the edge.',
    values: {},
  };
  return [
    ...(misfit > input.accuracy ? [again] : []),
    ...(apart > input.accuracy ? [far] : []),
    ...(move !== null && Math.hypot(move.x, move.y) > input.accuracy ? [motif] : []),
    {
      kind: 'tip',
      says: 'Lay the project flat and measure from raw corner to raw corner without pulling. Then fold it in four and check that the folds meet at your mark.',
      values: {},
    },
    {
      kind: 'warning',
      says: 'A hole can’t be undone. Measure the center twice before you cut.',
      values: {},
    },
    ...cautionNotes('rotaryBlade', 'scissors', 'pins', 'usedBlades'),
  ];
}
