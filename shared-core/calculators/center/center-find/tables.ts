import { type Point, pointDistance } from '#core/geometry/point';
import type { Explanation, Quantity, Table } from '#core/calculators/explanation';
import {
  degreesQuantity,
  givenLength,
  lengthNearest,
  lengthUp,
  wordsQuantity,
} from '#core/calculators/quantities';
import type { CenterFindInput } from './input';
import type { CenterFindDetails } from './work';

/** How to mark the center from every side and corner. */
export function markTable({ fromSides, fromCorners }: CenterFindDetails): Table {
  const names = ['top side', 'right side', 'bottom side', 'left side'];
  const corners = ['top left corner', 'top right corner', 'bottom right corner', 'bottom left corner'];
  const rows = [
    ...fromSides.map((distance, index) => [names[index] ?? '', distance] as const),
    ...fromCorners.map((distance, index) => [corners[index] ?? '', distance] as const),
  ];
  return {
    title: 'Where to mark it',
    columns: ['From the', 'Distance'],
    rows: rows.map(([name, distance]): readonly Quantity[] => [wordsQuantity(name), lengthNearest(distance)]),
  };
}

export function centersTable({ best, diagonalsCross, motif }: CenterFindDetails): Table {
  const row = (name: string, point: Point): readonly Quantity[] => [
    wordsQuantity(name),
    lengthNearest(point.x - best.x),
    lengthNearest(point.y - best.y),
    lengthNearest(pointDistance(point, best)),
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

export function squareTable({ cornerReports }: CenterFindDetails): Table {
  return {
    title: 'Corners',
    columns: ['Corner', 'Angle', 'Off a right angle', 'Out by'],
    rows: cornerReports.map(({ name, degrees, outBy }): readonly Quantity[] => [
      wordsQuantity(name),
      degreesQuantity(degrees),
      degreesQuantity(degrees - 90),
      lengthUp(outBy),
    ]),
  };
}

const LENGTH_NAMES = ['top', 'right', 'bottom', 'left', 'falling', 'rising'] as const;

export function misfitTable(asked: CenterFindInput, { residuals }: CenterFindDetails): Table {
  return {
    title: 'Your lengths, and what they would be to fit each other',
    columns: ['Length', 'Measured', 'Fitted', 'Changed by'],
    rows: LENGTH_NAMES.map((name, index): readonly Quantity[] => {
      const changed = residuals[index] ?? 0;
      const words = name === 'falling' || name === 'rising' ? `${name} diagonal` : `${name} side`;
      return [
        wordsQuantity(words),
        givenLength(asked[name]),
        lengthNearest(asked[name] + changed),
        lengthNearest(changed),
      ];
    }),
  };
}

/** The fit, the center it gives, and how far the piece is from a true rectangle. */
export function centerFindSteps(asked: CenterFindInput, details: CenterFindDetails): Explanation {
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
      result: lengthUp(details.misfit),
      rule: {
        kind: 'derived',
        says: 'Five lengths fix a four-sided shape; the sixth shows by how much you mismeasured. The greatest change is the misfit.',
      },
    },
    {
      label: 'Best center',
      formula: '(A + B + C + D) ÷ 4',
      terms: [
        { symbol: 'x', means: 'from the left side', quantity: lengthNearest(fromLeft) },
        { symbol: 'y', means: 'from the top side', quantity: lengthNearest(fromTop) },
      ],
      result: lengthNearest(pointDistance(details.best, details.corners[0])),
      rule: {
        kind: 'derived',
        says: 'The lines between the middles of opposite sides cross at the average of the corners, the point nearest to all four. Given here from the top left corner.',
      },
    },
    {
      label: 'Crossing of the diagonals, from the best center',
      formula: '|X − M|',
      terms: [],
      result: lengthNearest(pointDistance(details.best, details.diagonalsCross)),
      rule: { kind: 'derived', says: 'In a true rectangle both are one point.' },
    },
    {
      label: 'Out of square',
      formula: 'shorter side · |cos α|, at the worst corner',
      terms: [],
      result: lengthUp(details.outOfSquare),
      rule: {
        kind: 'derived',
        says: 'How far a corner’s shorter side ends from where a right angle would put it.',
      },
    },
  ];
}
