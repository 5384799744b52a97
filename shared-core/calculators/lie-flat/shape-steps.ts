import type { Step, Term } from '../explanation';
import { degreesQuantity, fineLength } from '../quantities';
import { derived, givenTerm, term } from '../working/terms';
import type { LieFlatInput } from './input';
import type { LieFlatWork } from './work';

/** How high the ring cups or ruffles for what is missing or too much; nothing if it lies flat. */
export function shapeSteps(input: LieFlatInput, work: LieFlatWork): readonly Step[] {
  switch (work.flatness.shape) {
    case 'flat':
      return [];
    case 'cup':
      return cupSteps(input, work, work.flatness);
    case 'ruffle':
      return ruffleSteps(input, work, work.flatness);
  }
}

type ShapeOf<Shape extends LieFlatWork['flatness']['shape']> = Extract<
  LieFlatWork['flatness'],
  { shape: Shape }
>;

function outerTerm({ outerRadius }: LieFlatInput): Term {
  return givenTerm('R', 'middle to the outer edge', outerRadius);
}

function angleTerm({ missing }: LieFlatWork): Term {
  const means = missing < 0 ? 'too much in the ring' : 'missing in the ring';
  return term('D', means, degreesQuantity((Math.abs(missing) * 180) / Math.PI));
}

const CONE = derived('The ring stands up as a cone: its edge is as long as that of a smaller circle.');
const EXTRA = derived('The edge of a wider turn is longer than the flat circle.');
const WAVES = derived(
  'The edge keeps its distance from the middle, so it waves up and down on a ball. Up to 20° it is less than 3% too low.',
);

function cupSteps(
  input: LieFlatInput,
  work: LieFlatWork,
  { middle, innerEdge }: ShapeOf<'cup'>,
): readonly Step[] {
  return [
    {
      label: 'Rise in the middle',
      formula: 'R · √(1 − (1 − D ÷ 360°)²)',
      terms: [outerTerm(input), angleTerm(work)],
      result: fineLength(middle, 'up'),
      rule: CONE,
    },
    {
      label: 'The inner edge stands up by',
      formula: '(R − r) · √(1 − (1 − D ÷ 360°)²)',
      terms: [
        outerTerm(input),
        givenTerm('r', 'middle to the inner edge', input.innerRadius),
        angleTerm(work),
      ],
      result: fineLength(innerEdge, 'up'),
      rule: CONE,
    },
  ];
}

function ruffleSteps(
  input: LieFlatInput,
  work: LieFlatWork,
  { extraEdge, waves }: ShapeOf<'ruffle'>,
): readonly Step[] {
  return [
    {
      label: 'The outer edge is too long by',
      formula: '2πR · D ÷ 360°',
      terms: [outerTerm(input), angleTerm(work)],
      result: fineLength(extraEdge, 'up'),
      rule: EXTRA,
    },
    ...waves.slice(0, 1).map(({ height }) => ({
      label: 'In two waves, from low to high',
      formula: '2R · sin(2√(D ÷ 360° ÷ 3))',
      terms: [outerTerm(input), angleTerm(work)],
      result: fineLength(height, 'up'),
      rule: WAVES,
    })),
  ];
}
