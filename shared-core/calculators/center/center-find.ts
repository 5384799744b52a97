import { success } from '#core/result';
import type { Calculator } from '../calculator';
import type { Diagram, DiagramPart, Tone } from '../diagram';
import type { Explanation, Figure, Note, Quantity, Table } from '../explanation';
import { pointDistance, pointMidway, pointMove, type Point } from '#core/geometry/point';
import { degreesQuantity, givenLength, lengthQuantity, wordsQuantity } from '../quantities';
import { type CenterFindInput, centerFindFromProject, centerFindInput } from './center-find-input';
import { type CenterFindDetails, planCenterFind } from './center-find-plan';
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
      explanation: stepsOf(asked, details),
      notes: notesOf(asked, details),
      diagram: diagramOf(details),
      details,
    });
  },
};

const nearest = (exact: number) => lengthQuantity(exact, { direction: 'nearest' });
const up = (exact: number) => lengthQuantity(exact, { direction: 'up' });

function figuresOf(details: CenterFindDetails): readonly Figure[] {
  const [fromTop = 0, , , fromLeft = 0] = details.fromSides;
  return [
    { label: 'Center from the left side', quantity: nearest(fromLeft) },
    { label: 'Center from the top side', quantity: nearest(fromTop) },
    { label: 'The ways to find it lie apart by', quantity: up(details.apart) },
    { label: 'Your six lengths disagree by', quantity: up(details.misfit) },
    { label: 'Out of square by', quantity: up(details.outOfSquare) },
    ...moveFigures(details.move),
  ];
}

function moveFigures(move: Point | null): readonly Figure[] {
  if (move === null) return [];
  return [
    {
      label: `From the motif’s middle, move ${move.x < 0 ? 'left' : 'right'}`,
      quantity: nearest(Math.abs(move.x)),
    },
    { label: `and ${move.y < 0 ? 'up' : 'down'}`, quantity: nearest(Math.abs(move.y)) },
  ];
}

function markTable({ fromSides, fromCorners }: CenterFindDetails): Table {
  const names = ['top side', 'right side', 'bottom side', 'left side'];
  const corners = ['top left corner', 'top right corner', 'bottom right corner', 'bottom left corner'];
  const rows = [
    ...fromSides.map((distance, index) => [names[index] ?? '', distance] as const),
    ...fromCorners.map((distance, index) => [corners[index] ?? '', distance] as const),
  ];
  return {
    title: 'Where to mark it',
    columns: ['From the', 'Distance'],
    rows: rows.map(([name, distance]): readonly Quantity[] => [wordsQuantity(name), nearest(distance)]),
  };
}

function centersTable({ best, diagonalsCross, motif }: CenterFindDetails): Table {
  const row = (name: string, point: Point): readonly Quantity[] => [
    wordsQuantity(name),
    nearest(point.x - best.x),
    nearest(point.y - best.y),
    nearest(pointDistance(point, best)),
  ];
  return {
    title: 'Centers found in different ways, against the crossing of the midlines',
    columns: ['Way', 'To the right', 'Down', 'Apart'],
    rows: [
      row('midlines cross (the best center)', best),
      row('diagonals cross', diagonalsCross),
      ...(motif === null ? [] : [row('the motif’s own middle', motif)]),
    ],
  };
}

function squareTable({ cornerReports }: CenterFindDetails): Table {
  return {
    title: 'Corners',
    columns: ['Corner', 'Angle', 'Off a right angle', 'Out by'],
    rows: cornerReports.map(({ name, degrees, outBy }): readonly Quantity[] => [
      wordsQuantity(name),
      degreesQuantity(degrees),
      degreesQuantity(degrees - 90),
      up(outBy),
    ]),
  };
}

const LENGTH_NAMES = ['top', 'right', 'bottom', 'left', 'falling', 'rising'] as const;

function misfitTable(asked: CenterFindInput, { residuals }: CenterFindDetails): Table {
  return {
    title: 'Your lengths, and what they would be to fit each other',
    columns: ['Length', 'Measured', 'Fitted', 'Changed by'],
    rows: LENGTH_NAMES.map((name, index): readonly Quantity[] => {
      const changed = residuals[index] ?? 0;
      const words = name === 'falling' || name === 'rising' ? `${name} diagonal` : `${name} side`;
      return [
        wordsQuantity(words),
        givenLength(asked[name]),
        nearest(asked[name] + changed),
        nearest(changed),
      ];
    }),
  };
}

function stepsOf(asked: CenterFindInput, details: CenterFindDetails): Explanation {
  const lengths = LENGTH_NAMES.map((name, index) => ({
    symbol: `ℓ${'₁₂₃₄₅₆'[index] ?? ''}`,
    means: name,
    quantity: givenLength(asked[name]),
  }));
  const [fromTop = 0, , , fromLeft = 0] = details.fromSides;
  return [
    {
      label: 'Fit the six lengths',
      formula: 'Σ (fitted − ℓ)² as small as can be',
      terms: lengths,
      result: up(details.misfit),
      rule: {
        kind: 'derived',
        says: 'Five lengths fix a four-sided shape; the sixth shows by how much you mismeasured. The greatest change is the misfit.',
      },
    },
    {
      label: 'Best center',
      formula: '(A + B + C + D) ÷ 4',
      terms: [
        { symbol: 'x', means: 'from the left side', quantity: nearest(fromLeft) },
        { symbol: 'y', means: 'from the top side', quantity: nearest(fromTop) },
      ],
      result: nearest(pointDistance(details.best, details.corners[0])),
      rule: {
        kind: 'derived',
        says: 'The lines between the middles of opposite sides cross at the average of the corners, the point nearest to all four. Given here from the top left corner.',
      },
    },
    {
      label: 'Crossing of the diagonals, from the best center',
      formula: '|X − M|',
      terms: [],
      result: nearest(pointDistance(details.best, details.diagonalsCross)),
      rule: { kind: 'derived', says: 'In a true rectangle both are one point.' },
    },
    {
      label: 'Out of square',
      formula: 'shorter side · |cos α|, at the worst corner',
      terms: [],
      result: up(details.outOfSquare),
      rule: {
        kind: 'derived',
        says: 'How far a corner’s shorter side ends from where a right angle would put it.',
      },
    },
  ];
}

function notesOf(asked: CenterFindInput, details: CenterFindDetails): readonly Note[] {
  const { misfit, apart, move } = details;
  const again: Note = {
    kind: 'warning',
    says: 'The lengths disagree by {misfit}, more than you measure: one of them is wrong. Measure all six again before you cut.',
    values: { misfit: up(misfit) },
  };
  const far: Note = {
    kind: 'warning',
    says: 'The ways to find the center lie {apart} apart. Decide which center the eye will follow, and mark only that one.',
    values: { apart: up(apart) },
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
      { part: 'polygon', points, tone: 'cloth' },
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
