import type { Explanation, Step, Term } from '../explanation';
import {
  countQuantity,
  degreesQuantity,
  fineLength,
  lengthNearest,
  lengthUp,
  numberQuantity,
} from '../quantities';
import { derived, fineTerm, givenTerm, term } from '../working/terms';
import type { SeamCheckInput } from './input';
import { halfWedge } from './whole';
import type { Estimate, RingAngle, Scatter, SeamCheckWork } from './work';

const DEGREES = 180 / Math.PI;

const LEAST_SQUARES = derived(
  'Least squares: the error that leaves the least unexplained. A measurement counts less the more patches it has, because each of them scatters. Less than 0 means too little or too narrow.',
);
const STUDENT = derived(
  'The truth lies within this in 95 of 100 cases. Student’s factor makes it wider for few measurements.',
);

export function seamCheckSteps(input: SeamCheckInput, work: SeamCheckWork): Explanation {
  const { scatter, seam, cut, ring } = work;
  const needed: Step = {
    label: 'Measurements needed',
    formula: 'k + 1',
    terms: [term('k', 'errors to tell apart', countQuantity(Math.max(work.errors, 1), ['error', 'errors']))],
    result: countQuantity(work.needed, ['measurement', 'measurements']),
    rule: derived('One more than there are errors, or nothing is left to show the scatter.'),
  };
  if (scatter === null) return [needed];
  return [
    needed,
    scatterStep(input, scatter),
    ...(seam === null ? [] : estimateSteps('Each seam takes too much', work, seam, scatter)),
    ...(cut === null ? [] : estimateSteps('Each patch is too wide', work, cut, scatter)),
    ...growthSteps(work),
    ...(seam === null ? [] : [moveStep(seam)]),
    ...wholeSteps(input, work),
    ...(ring === null ? [] : ringSteps(input, scatter, ring)),
  ];
}

function scatterStep({ readTo }: SeamCheckInput, { each, left, freedom }: Scatter): Step {
  return {
    label: 'Scatter of one patch',
    formula: 'max(R ÷ √v, r ÷ √12)',
    terms: [
      term('R', 'what is left unexplained, root of the sum of squares', lengthNearest(left)),
      term('v', 'measurements less errors', countQuantity(freedom, ['', ''])),
      fineTerm('r', 'what the ruler is read to', readTo),
    ],
    result: fineLength(each, 'up'),
    rule: derived('The standard deviation. It cannot be less than what the ruler hides.'),
  };
}

function estimateSteps(
  label: string,
  { made }: SeamCheckWork,
  { value, within, product, square }: Estimate,
  { each, factor }: Pick<Scatter, 'each' | 'factor'>,
): readonly Step[] {
  const own = term('Q', 'average square of what only this error explains', numberQuantity(square));
  return [
    {
      label,
      formula: 'P ÷ Q',
      terms: [term('P', 'average of that times what is off', lengthNearest(product)), own],
      result: fineLength(value, 'nearest'),
      rule: LEAST_SQUARES,
    },
    {
      label: `${label}, give or take`,
      formula: 't · z ÷ √(n · Q)',
      terms: [
        ...scatterTerms({ each, factor }),
        term('n', 'measurements', countQuantity(made.length, ['', ''])),
        own,
      ],
      result: fineLength(within, 'up'),
      rule: STUDENT,
    },
  ];
}

function scatterTerms({ each, factor }: Pick<Scatter, 'each' | 'factor'>): readonly Term[] {
  return [
    term('t', 'Student’s factor', numberQuantity(factor)),
    term('z', 'scatter of one patch', fineLength(each, 'up')),
  ];
}

function growthSteps(work: SeamCheckWork): readonly Step[] {
  const { growth } = work;
  return growth === null ? [] : estimateSteps('From the first to the last, more by', work, growth, growth);
}

function moveStep({ value }: Estimate): Step {
  return {
    label: 'Off on each side of a seam',
    formula: 'b ÷ 2',
    terms: [term('b', 'each seam takes too much', fineLength(value, 'nearest'))],
    result: fineLength(value / 2, 'nearest'),
    rule: derived('A seam takes from the two patches it joins.'),
  };
}

function wholeSteps({ top: asked, ring }: SeamCheckInput, work: SeamCheckWork): readonly Step[] {
  const { whole, top, seam, cut, scatter } = work;
  if (whole === null || top === null || seam === null || scatter === null) return [];
  const size = term('S', 'what it should measure, from edge to edge', lengthNearest(whole.size));
  const takes = term('b', 'each seam takes too much', fineLength(seam.value, 'nearest'));
  const wide = cut === null ? [] : [term('c', 'each patch is too wide', fineLength(cut.value, 'nearest'))];
  const spread = term(
    'h',
    'what the errors of seam and cut may be off by, in squares of the scatter',
    numberQuantity(top.spread),
  );
  const value = (formula: string, terms: readonly Term[], says: string): Step => ({
    label: `The ${whole.kind} will measure`,
    formula,
    terms,
    result: fineLength(top.value, 'nearest'),
    rule: derived(says),
  });
  const within = (formula: string, terms: readonly Term[]): Step => ({
    label: `The ${whole.kind}, give or take`,
    formula,
    terms: [...scatterTerms(scatter), ...terms, spread],
    result: fineLength(top.within, 'up'),
    rule: STUDENT,
  });
  if (asked !== null) {
    const seams = term('k', 'seams across', countQuantity(asked.seams, ['', '']));
    const patches = term('m', 'patches across', countQuantity(asked.patches, ['', '']));
    const formula = cut === null ? 'S − k · b' : 'S − k · b + m · c';
    const terms = [size, seams, takes, ...(cut === null ? [] : [patches]), ...wide];
    return [value(formula, terms, 'If you go on as before.'), within('t · z · √(m + h)', [patches])];
  }
  if (ring === null) return [];
  const angle = term('u', 'half the angle of a wedge', degreesQuantity(halfWedge(ring.wedges) * DEGREES));
  const wedges = term('n', 'wedges', countQuantity(ring.wedges, ['wedge', 'wedges']));
  const formula = cut === null ? 'S − b ÷ sin u' : 'S − (b − c) ÷ sin u';
  return [
    value(
      formula,
      [size, takes, ...wide, angle],
      'Wedges that are all narrower by the same keep their angle, and every side of the ring moves in.',
    ),
    within('t · z · √(1 ÷ (n · (sin u)²) + h)', [wedges, angle]),
  ];
}

function ringSteps({ ring }: SeamCheckInput, scatter: Scatter, angle: RingAngle): readonly Step[] {
  if (ring === null) return [];
  const wedges = term('n', 'wedges', countQuantity(ring.wedges, ['wedge', 'wedges']));
  const leg = givenTerm('L', 'from the inner to the outer end', ring.leg);
  const lacks = term('D', 'the wedges lack', degreesQuantity(angle.lacks * DEGREES));
  const rise: Step = {
    label: 'The middle rises by',
    formula: 'R · √(1 − (1 − D ÷ 360°)²)',
    terms: [givenTerm('R', 'middle to the outer edge', ring.radius), lacks],
    result: lengthUp(angle.rise),
    rule: derived('Closed all the same, the ring is a cone whose edge is shorter by that angle.'),
  };
  return [
    {
      label: 'The wedges lack',
      formula: '180 ÷ π · n · w ÷ L',
      terms: [
        wedges,
        term(
          'w',
          'lost at the outer end more than at the inner, for each wedge',
          fineLength(angle.taper, 'nearest'),
        ),
        leg,
      ],
      result: degreesQuantity(angle.lacks * DEGREES),
      rule: derived('A wedge that is too narrow at its outer end has too small an angle.'),
    },
    {
      label: 'The wedges lack, give or take',
      formula: '180 ÷ π · t · z · √(n² · h + 2n) ÷ L',
      terms: [
        ...scatterTerms(scatter),
        wedges,
        term('h', 'what that loss may be off by, in squares of the scatter', numberQuantity(angle.spread)),
        leg,
      ],
      result: degreesQuantity(angle.within * DEGREES),
      rule: STUDENT,
    },
    ...(angle.lacks > 0 ? [rise] : []),
  ];
}
