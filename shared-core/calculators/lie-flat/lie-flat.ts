import { failure, type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure } from '../explanation';
import { countQuantity, degreesQuantity, fineLength, wordsQuantity } from '../quantities';
import { refuseNoWidth } from '../wedge-ring/ring-fields';
import { lieFlatDiagram } from './diagram';
import { lieFlatFromProject, lieFlatInput, type LieFlatInput } from './input';
import { lieFlatNotes } from './notes';
import { halfToTestSteps, lieFlatSteps } from './steps';
import { lieFlatTables } from './tables';
import { type LieFlatWork, workOutLieFlat } from './work';

/** Whether a ring of wedges lies flat as it was cut and sewn, by what its seams measure or by the test of a half. */
export const lieFlat: Calculator<LieFlatInput, LieFlatWork> = {
  name: 'lie-flat',
  version: 1,
  title: 'Will it lie flat?',
  question: 'Will my ring of wedges lie flat, and what do I correct if not?',
  stageKinds: ['piecing'],
  isOccasional: true,
  input: lieFlatInput,
  fromProject: lieFlatFromProject,
  startsFromProject: ['seamInner', 'seamOuter'],
  calculate: calculateLieFlat,
};

function calculateLieFlat(input: LieFlatInput): Result<Calculation<LieFlatWork>, Refusal> {
  if (input.innerRadius >= input.outerRadius) return failure(refuseNoWidth(input));
  const details = workOutLieFlat(input);
  const refusal = refusalOf(input, details);
  if (refusal !== null) return failure(refusal);
  return success({
    figures: figuresOf(details),
    tables: lieFlatTables(details),
    explanation: lieFlatSteps(input, details),
    notes: lieFlatNotes(input, details),
    diagram: lieFlatDiagram(input, details),
    details,
  });
}

function refusalOf(input: LieFlatInput, work: LieFlatWork): Refusal | null {
  if (work.wedgeAngle <= 0)
    return {
      code: 'no-wedge',
      field: ['cutWedge', 'short'],
      says: 'The short side of a wedge must be shorter than its long side.',
      values: {},
    };
  if (work.turn >= work.half || work.movedIn >= input.innerRadius)
    return {
      code: 'nothing-left',
      field: ['seamInner'],
      says: 'Seams that take this much leave nothing of a wedge at its inner end. Measure them on one piece of fabric only.',
      values: {},
    };
  return Math.abs(work.missing) >= Math.PI ? refuseFarOff(input, work) : null;
}

function refuseFarOff({ wedges }: LieFlatInput, work: LieFlatWork): Refusal {
  return {
    code: 'far-from-a-circle',
    field: ['wedges'],
    says: '{wedges} make {sum} in all. That is half a circle or more away from 360°, so no seam can correct it.',
    values: {
      wedges: countQuantity(wedges, ['wedge', 'wedges']),
      sum: degrees(2 * Math.PI - work.missing),
    },
  };
}

function figuresOf(work: LieFlatWork): readonly Figure[] {
  const { missing, limits } = work;
  const label = missing < 0 ? 'Angle too much for the circle' : 'Angle missing from the circle';
  return [
    { label: 'Does it lie flat', quantity: wordsQuantity(verdict(work)) },
    { label, quantity: degrees(Math.abs(missing)) },
    ...shapeFigures(work),
    ...sizeFigures(work),
    ...testFigures(work),
    {
      label: 'A leg may be off at one end, cut and seam together, by',
      quantity: fineLength(limits.taper, 'down'),
    },
    limitFigure(work),
  ];
}

/** In the shape that the ring has. */
function limitFigure({ flatness, limits }: LieFlatWork): Figure {
  return flatness.shape === 'ruffle'
    ? { label: 'Quilting takes up two waves of', quantity: fineLength(limits.wave, 'down') }
    : { label: 'Quilting takes up a rise of', quantity: fineLength(limits.rise, 'down') };
}

function verdict({ flatness }: LieFlatWork): string {
  if (flatness.shape === 'flat') return 'yes';
  const what = flatness.shape === 'cup' ? 'cups' : 'ruffles';
  return flatness.isTakenUp
    ? `almost: it ${what}, but quilting takes that up`
    : `no: it ${what}. Correct it before the last seams`;
}

function shapeFigures({ flatness }: LieFlatWork): readonly Figure[] {
  switch (flatness.shape) {
    case 'flat':
      return [];
    case 'cup':
      return [
        { label: 'Rise in the middle', quantity: fineLength(flatness.middle, 'up') },
        { label: 'The inner edge stands up by', quantity: fineLength(flatness.innerEdge, 'up') },
      ];
    case 'ruffle':
      return [
        { label: 'The outer edge is too long by', quantity: fineLength(flatness.extraEdge, 'up') },
        ...flatness.waves.slice(0, 1).map(({ height }) => ({
          label: 'In two waves, from low to high',
          quantity: fineLength(height, 'up'),
        })),
      ];
  }
}

function sizeFigures({ movedIn }: LieFlatWork): readonly Figure[] {
  if (movedIn === 0) return [];
  const label = movedIn > 0 ? 'The seams make the radius smaller by' : 'The seams make the radius larger by';
  return [{ label, quantity: fineLength(Math.abs(movedIn), 'nearest') }];
}

/** What the test should find, or by how much to correct what it found. */
function testFigures(work: LieFlatWork): readonly Figure[] {
  const { correction } = work;
  if (correction !== null)
    return [
      {
        label: 'Correct each seam of the half at one end by',
        quantity: fineLength(correction.seams, 'nearest'),
      },
    ];
  return halfToTestSteps(work).map(({ label, result }) => ({ label, quantity: result }));
}

function degrees(radians: number) {
  return degreesQuantity((radians * 180) / Math.PI);
}
