import { lengthFromInches } from '#core/units/length';
import { success } from '#core/result';
import type { Point } from '#core/geometry/point';
import type { Calculator } from '#core/calculators/calculator';
import type { Figure, Note } from '#core/calculators/explanation';
import { countQuantity, fineLength, lengthNearest, wordsQuantity } from '#core/calculators/quantities';
import { cautionNotes } from '#core/calculators/caution-notes';
import { centerFindDiagram } from './diagram';
import { type CenterFindInput, centerFindFromProject, centerFindInput } from './input';
import { type CenterFindDetails, workOutCenterFind } from './work';
import { centerFindSteps, centersTable, LENGTH_WORDS, markTable, misfitTable, squareTable } from './tables';

export const centerFind: Calculator<CenterFindInput, CenterFindDetails> = {
  name: 'center-find',
  version: 3,
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
    : [{ label: 'One length alone would have to change by', quantity: fineLength(misfit, 'nearest') }];
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
    says: 'Your lengths do not fit together: one of them alone would have to change by at least {misfit}, more than you can be off. One is wrong, or several are a little off. Measure all six again before you cut.',
    values: { misfit: fineLength(misfit, 'nearest') },
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
    ...(misfit > input.accuracy ? [again, suspectNote(details)] : []),
    ...(apart > input.accuracy ? [far] : []),
    ...(move !== null && Math.hypot(move.x, move.y) > input.accuracy ? [motif] : []),
    {
      kind: 'tip',
      says: 'Lay the project flat and measure from corner to corner of the finished edge, all four alike, without pulling. Then fold it in four and check that the folds meet at your mark.',
      values: {},
    },
    UNSEEN,
    {
      kind: 'warning',
      says: 'A hole can’t be undone. Measure the center twice before you cut.',
      values: {},
    },
    ...cautionNotes('rotaryBlade', 'scissors', 'pins', 'usedBlades'),
  ];
}

/** Six lengths cannot prove that they are right: the check is blind to an error that bends the shape without breaking it. */
const UNSEEN: Note = {
  kind: 'tip',
  says: 'This check sees a wrong length best on a piece that is about as long as it is wide. On a long, narrow piece (6 to 12 in by 48 in) about 15 of 100 errors of 1/2 to 1 in are missed, mostly in the short sides, so measure those twice.',
  values: {},
};

/** Any single length can be the wrong one; this names those that leave a piece with sides alike, and says that it is a guess. */
function suspectNote({ suspects }: CenterFindDetails): Note {
  const [first, second] = suspects;
  if (first === undefined || suspects.length > 2) {
    return {
      kind: 'tip',
      says: 'No length stands out: {count} are equally suspect.',
      values: { count: countQuantity(suspects.length, ['length', 'lengths']) },
    };
  }
  const one = { first: wordsQuantity(LENGTH_WORDS[first.name]), fits: fineLength(first.fits, 'nearest') };
  if (second === undefined) {
    return {
      kind: 'tip',
      says: 'Measure this one first: {first}. At {fits} it would fit the others, and the piece would be closest to a rectangle.',
      values: one,
    };
  }
  return {
    kind: 'tip',
    says: 'Two lengths are equally suspect: {first}, which would fit at {fits}, and {second}, which would fit at {other}. Measure these two first.',
    values: {
      ...one,
      second: wordsQuantity(LENGTH_WORDS[second.name]),
      other: fineLength(second.fits, 'nearest'),
    },
  };
}
