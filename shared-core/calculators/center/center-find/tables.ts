import { type Point, pointDistance } from '#core/geometry/point';
import type { Explanation, Quantity, Table } from '#core/calculators/explanation';
import {
  degreesQuantity,
  fineLength,
  givenLength,
  lengthNearest,
  wordsQuantity,
} from '#core/calculators/quantities';
import { LENGTH_NAMES, type LengthName } from './closure';
import type { CenterFindInput } from './input';
import type { CenterFindDetails } from './work';
import { derived, givenTerm, term } from '#core/calculators/working/terms';

/** The distance of the center from every side and corner. */
export function markTable({ fromSides, fromCorners }: CenterFindDetails): Table {
  const names = ['top side', 'right side', 'bottom side', 'left side'];
  const corners = ['top left corner', 'top right corner', 'bottom right corner', 'bottom left corner'];
  const rows = [
    ...fromSides.map((distance, index) => [names[index] ?? '', distance] as const),
    ...fromCorners.map((distance, index) => [corners[index] ?? '', distance] as const),
  ];
  return {
    title: 'Where to mark the center',
    columns: ['From the', 'Distance'],
    rows: rows.map(([name, distance]): readonly Quantity[] => [wordsQuantity(name), lengthNearest(distance)]),
  };
}

export function centersTable({ best, diagonalsCross, motif }: CenterFindDetails): Table {
  const row = (name: string, point: Point): readonly Quantity[] => [
    wordsQuantity(name),
    fineLength(point.x - best.x, 'nearest'),
    fineLength(point.y - best.y, 'nearest'),
    fineLength(pointDistance(point, best), 'nearest'),
  ];
  return {
    title: 'Centers found by different methods',
    columns: ['Method', 'To the right', 'Down', 'Distance'],
    rows: [
      row('midlines cross (the best center)', best),
      row('diagonals cross', diagonalsCross),
      ...(motif === null ? [] : [row('the middle of the motif', motif)]),
    ],
  };
}

export function squareTable({ cornerReports }: CenterFindDetails): Table {
  return {
    title: 'Corners',
    columns: ['Corner', 'Angle', 'Off a right angle', 'Off by'],
    rows: cornerReports.map(({ name, degrees, outBy }): readonly Quantity[] => [
      wordsQuantity(name),
      degreesQuantity(degrees),
      degreesQuantity(degrees - 90),
      fineLength(outBy, 'nearest'),
    ]),
  };
}

export const LENGTH_WORDS: Readonly<Record<LengthName, string>> = {
  top: 'top side',
  right: 'right side',
  bottom: 'bottom side',
  left: 'left side',
  downToRight: 'diagonal from top left to bottom right',
  upToRight: 'diagonal from bottom left to top right',
};

export function misfitTable(input: CenterFindInput, { residuals, soleChanges }: CenterFindDetails): Table {
  return {
    title: 'Your lengths, and the nearest lengths that fit together',
    columns: ['Length', 'Measured', 'Fitted', 'Changed by', 'If only this one is wrong, it is'],
    rows: LENGTH_NAMES.map((name, index): readonly Quantity[] => {
      const changed = residuals[index] ?? 0;
      const sole = soleChanges.find((change) => change.name === name);
      return [
        wordsQuantity(LENGTH_WORDS[name]),
        givenLength(input[name], 'fine'),
        fineLength(input[name] + changed, 'nearest'),
        fineLength(changed, 'nearest'),
        sole === undefined ? wordsQuantity('not possible') : fineLength(sole.fits, 'nearest'),
      ];
    }),
  };
}

/** The fit, the center it gives, and how far the project is from a true rectangle. */
export function centerFindSteps(input: CenterFindInput, details: CenterFindDetails): Explanation {
  const lengths = LENGTH_NAMES.map((name, index) =>
    givenTerm(`ℓ${'₁₂₃₄₅₆'[index] ?? ''}`, LENGTH_WORDS[name], input[name]),
  );
  const [fromTop = 0, , , fromLeft = 0] = details.fromSides;
  return [
    {
      label: 'Six lengths that fit together',
      formula: 'the smallest change of one length alone',
      terms: lengths,
      result: fineLength(details.misfit, 'nearest'),
      rule: derived(
        'Five lengths fix a four-sided shape, so each length also follows from the other five. The result is the smallest change that one length alone would need. The center is then taken from six lengths changed as little as possible.',
      ),
    },
    {
      label: 'Best center',
      formula: '(A + B + C + D) ÷ 4',
      terms: [
        term('x', 'from the left side', lengthNearest(fromLeft)),
        term('y', 'from the top side', lengthNearest(fromTop)),
      ],
      result: lengthNearest(pointDistance(details.best, details.corners[0])),
      rule: derived(
        'The lines between the middles of opposite sides cross at the average of the corners. The result is its distance from the top left corner.',
      ),
    },
    {
      label: 'From the best center to where the diagonals cross',
      formula: '|X − M|',
      terms: [],
      result: fineLength(pointDistance(details.best, details.diagonalsCross), 'nearest'),
      rule: derived('In a true rectangle both are the same point.'),
    },
    {
      label: 'Out of square',
      formula: 'shorter side · |cos α|, at the worst corner',
      terms: [],
      result: fineLength(details.outOfSquare, 'nearest'),
      rule: derived(
        'How far the end of the shorter side at a corner is from where a right angle would put it.',
      ),
    },
  ];
}
