import { success } from '#core/result';
import { type Point, pointMidway, pointMove } from '#core/geometry/point';
import type { Calculator } from '#core/calculators/calculator';
import type { Diagram, DiagramPart, Tone } from '#core/calculators/diagram';
import type { Figure, Note } from '#core/calculators/explanation';
import { lengthNearest, lengthUp } from '#core/calculators/quantities';
import { type CenterFindInput, centerFindFromProject, centerFindInput } from './input';
import { type CenterFindDetails, planCenterFind } from './work';
import { centerFindSteps, centersTable, markTable, misfitTable, squareTable } from './tables';
import { quadMap } from './quad-fit';

export const centerFind: Calculator<CenterFindInput, CenterFindDetails> = {
  name: 'center-find',
  version: 1,
  title: 'Find the center',
  question: 'Where is the center of a piece that is not quite square?',
  stageKinds: ['center-cut'],
  input: centerFindInput,
  fromProject: centerFindFromProject,
  calculate(asked) {
    const plan = planCenterFind(asked);
    if (!plan.ok) return plan;
    const details = plan.value;
    return success({
      figures: figuresOf(details),
      tables: [markTable(details), centersTable(details), squareTable(details), misfitTable(asked, details)],
      explanation: centerFindSteps(asked, details),
      notes: notesOf(asked, details),
      diagram: diagramOf(details),
      details,
    });
  },
};

function figuresOf(details: CenterFindDetails): readonly Figure[] {
  const [fromTop = 0, , , fromLeft = 0] = details.fromSides;
  return [
    { label: 'Center from the left side', quantity: lengthNearest(fromLeft) },
    { label: 'Center from the top side', quantity: lengthNearest(fromTop) },
    { label: 'The ways to find it lie apart by', quantity: lengthUp(details.apart) },
    { label: 'Your six lengths disagree by', quantity: lengthUp(details.misfit) },
    { label: 'Out of square by', quantity: lengthUp(details.outOfSquare) },
    ...moveFigures(details.move),
  ];
}

function moveFigures(move: Point | null): readonly Figure[] {
  if (move === null) return [];
  return [
    {
      label: `From the motif’s middle, move ${move.x < 0 ? 'left' : 'right'}`,
      quantity: lengthNearest(Math.abs(move.x)),
    },
    { label: `and ${move.y < 0 ? 'up' : 'down'}`, quantity: lengthNearest(Math.abs(move.y)) },
  ];
}

function notesOf(asked: CenterFindInput, details: CenterFindDetails): readonly Note[] {
  const { misfit, apart, move } = details;
  const again: Note = {
    kind: 'warning',
    says: 'The lengths disagree by {misfit}, more than you measure: one of them is wrong. Measure all six again before you cut.',
    values: { misfit: lengthUp(misfit) },
  };
  const far: Note = {
    kind: 'warning',
    says: 'The ways to find the center lie {apart} apart. Decide which center the eye will follow, and mark only that one.',
    values: { apart: lengthUp(apart) },
  };
  const motif: Note = {
    kind: 'tip',
    says: 'The motif’s own middle is not the middle of the piece. A hole close to the motif is judged by the motif, a ring far from it by the edge.',
    values: {},
  };
  return [
    ...(misfit > asked.accuracy ? [again] : []),
    ...(apart > asked.accuracy ? [far] : []),
    ...(move !== null && Math.hypot(move.x, move.y) > asked.accuracy ? [motif] : []),
    {
      kind: 'tip',
      says: 'Measure flat, without pulling, from raw corner to raw corner; then fold the piece in four as a second way and see that the fold meets your mark.',
      values: {},
    },
    {
      kind: 'warning',
      says: 'A hole in a finished piece cannot be put back: the center is measured twice before anything is cut.',
      values: {},
    },
  ];
}

function diagramOf({ corners, best, diagonalsCross, motif }: CenterFindDetails): Diagram {
  const shift = {
    x: -Math.min(...corners.map(({ x }) => x)),
    y: -Math.min(...corners.map(({ y }) => y)),
  };
  const points = quadMap(corners, (corner) => pointMove(corner, shift));
  const [a, b, c, d] = points;
  const width = Math.max(...points.map(({ x }) => x));
  const height = Math.max(...points.map(({ y }) => y));
  const line = (from: Point, to: Point, tone: Tone): DiagramPart => ({ part: 'line', from, to, tone });
  const spot = (point: Point, radius: number, tone: Tone): DiagramPart => ({
    part: 'circle',
    center: pointMove(point, shift),
    radius,
    tone,
  });
  const size = Math.min(width, height);
  return {
    title: 'The piece with its diagonals, midlines and centers',
    width,
    height,
    parts: [
      { part: 'polygon', points, tone: 'fabric' },
      line(a, c, 'plan'),
      line(b, d, 'plan'),
      line(pointMidway(a, b), pointMidway(c, d), 'mark'),
      line(pointMidway(b, c), pointMidway(d, a), 'mark'),
      spot(diagonalsCross, size / 60, 'plan'),
      ...(motif === null ? [] : [spot(motif, size / 40, 'warning')]),
      spot(best, size / 100, 'mark'),
    ],
  };
}
