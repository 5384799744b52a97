import { fabricToBuyStep } from '#core/calculators/fabric-to-buy';
import type { Explanation, Step } from '#core/calculators/explanation';
import { countQuantity, lengthDown, lengthNearest, lengthUp } from '#core/calculators/quantities';
import { derived, givenTerm, term } from '#core/calculators/working/terms';
import type { PrairiePointsInput } from './input';
import { type PointsOfSide, type PrairiePointsDetails, squareToCut } from './work';

/** The square, the points along the first side, and the fabric. The other sides are in the table. */
export function prairiePointsSteps(input: PrairiePointsInput, details: PrairiePointsDetails): Explanation {
  const [first] = details.sides;
  return [
    ...squareSteps(input, details),
    ...(first === undefined
      ? []
      : details.isCurve
        ? curveSteps(input, details, first)
        : sideSteps(input, details, first)),
    ...fabricSteps(input, details),
  ];
}

function squareSteps(input: PrairiePointsInput, { square, base }: PrairiePointsDetails): readonly Step[] {
  const seam = givenTerm('s', 'seam allowance', input.seamAllowance);
  return [
    {
      label: 'Square to cut',
      formula: '2h + 2s, rounded up',
      terms: [givenTerm('h', 'finished height', input.height), seam],
      result: squareToCut(input),
      rule: derived(
        'Folded to a triangle, a square is half as high as it is wide. The seam takes s of that height.',
      ),
    },
    {
      label: 'Width of a point at the seam',
      formula: 'b = c − 2s',
      terms: [givenTerm('c', 'side of the square', square), seam],
      result: lengthDown(base),
      rule: derived('The slopes of the triangle are at 45°, so it loses s on both sides.'),
    },
  ];
}

function sideSteps(
  input: PrairiePointsInput,
  { base }: PrairiePointsDetails,
  { length, points, pitch }: PointsOfSide,
): readonly Step[] {
  const terms = [
    term('L', 'length of the side', lengthDown(length)),
    term('b', 'width of a point at the seam', lengthDown(base)),
  ];
  const count = countQuantity((length - base) / (base - input.overlap) + 1, ['point', 'points'], 'up');
  const pitchStep: Step = {
    label: 'From point to point along the first side',
    formula: '(L − b) ÷ (n − 1)',
    terms: [...terms, term('n', 'points', countQuantity(points, ['point', 'points']))],
    result: lengthNearest(pitch),
    rule: derived('Spread evenly, so that they overlap by at least as much as you asked.'),
  };
  return [
    {
      label: 'Points along the first side',
      formula: 'n = (L − b) ÷ (b − o) + 1, rounded up',
      terms: [...terms, givenTerm('o', 'least overlap', input.overlap)],
      result: count,
      rule: derived('The first begins at a corner and the last ends at the next.'),
    },
    ...(points === 1 ? [] : [pitchStep]),
  ];
}

function curveSteps(
  input: PrairiePointsInput,
  { base }: PrairiePointsDetails,
  { length, points, pitch }: PointsOfSide,
): readonly Step[] {
  const edge = term('P', 'length of the edge', lengthDown(length));
  return [
    {
      label: 'Points around the edge',
      formula: 'n = P ÷ (b − o), rounded up',
      terms: [
        edge,
        term('b', 'width of a point at the seam', lengthDown(base)),
        givenTerm('o', 'least overlap', input.overlap),
      ],
      result: countQuantity(length / (base - input.overlap), ['point', 'points'], 'up'),
      rule: derived('The last point tucks into the first.'),
    },
    {
      label: 'From point to point',
      formula: 'P ÷ n',
      terms: [edge, term('n', 'points', countQuantity(points, ['point', 'points']))],
      result: lengthNearest(pitch),
      rule: derived('Spread evenly around the edge.'),
    },
  ];
}

function fabricSteps(input: PrairiePointsInput, details: PrairiePointsDetails): readonly Step[] {
  const square = givenTerm('c', 'side of the square', details.square);
  const strips = term('k', 'strips', countQuantity(details.strips, ['strip', 'strips']));
  return [
    {
      label: 'Squares from a strip across the fabric',
      formula: 'U ÷ c, rounded down',
      terms: [givenTerm('U', 'usable fabric width', input.fabricWidth), square],
      result: countQuantity(input.fabricWidth / details.square, ['square', 'squares'], 'down'),
      rule: derived('Whole squares only.'),
    },
    {
      label: 'Strips',
      formula: 'N ÷ q, rounded up',
      terms: [
        term('N', 'points all around', countQuantity(details.points, ['point', 'points'])),
        term('q', 'squares from a strip', countQuantity(details.perStrip, ['square', 'squares'])),
      ],
      result: countQuantity(details.points / details.perStrip, ['strip', 'strips'], 'up'),
      rule: derived('A square for every point.'),
    },
    {
      label: 'Fabric for the squares',
      formula: 'k · c',
      terms: [strips, square],
      result: lengthUp(details.fabric),
      rule: derived('The strips lie one below the other.'),
    },
    fabricToBuyStep(input, details.fabric, { means: 'fabric for the squares' }),
  ];
}
