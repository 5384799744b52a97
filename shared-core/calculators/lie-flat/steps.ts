import type { Explanation, Rule, Step, Term } from '../explanation';
import { countQuantity, degreesQuantity, fineLength, lengthNearest, percentQuantity } from '../quantities';
import { commonPractice, derived, fineTerm, givenTerm, term } from '../working/terms';
import type { LieFlatInput } from './input';
import { shapeSteps } from './shape-steps';
import type { LieFlatWork } from './work';

/** Angles of the wedges, what seams and cut take from them, the test, the shape that comes of it, and the limits. */
export function lieFlatSteps(input: LieFlatInput, work: LieFlatWork): Explanation {
  return [
    ...wedgeSteps(input, work),
    ...lossSteps(input, work),
    ...sizeSteps(input, work),
    ...missingSteps(input, work),
    ...halfToTestSteps(work),
    ...shapeSteps(input, work),
    ...limitSteps(input, work),
    ...correctionSteps(work),
  ];
}

const WHOLE_TURN = derived('A flat ring has 360° around its middle.');

function degreesTerm(symbol: string, means: string, radians: number): Term {
  return term(symbol, means, degreesQuantity((radians * 180) / Math.PI));
}

function degreesStep(step: Omit<Step, 'result'>, radians: number): Step {
  return { ...step, result: degreesQuantity((radians * 180) / Math.PI) };
}

function countTerm(symbol: string, means: string, count: number): Term {
  return term(symbol, means, countQuantity(count, ['wedge', 'wedges']));
}

const halfTerm = ({ half }: LieFlatWork) => degreesTerm('t', 'half the angle of a right wedge', half);
const legTerm = ({ leg }: LieFlatWork) => term('l', 'leg of a wedge', lengthNearest(leg));
const allTerm = ({ wedges }: LieFlatInput) => countTerm('n', 'wedges', wedges);

function wedgeSteps(input: LieFlatInput, work: LieFlatWork): readonly Step[] {
  const { innerRadius, outerRadius, cutWedge } = input;
  const rule = derived('A leg is longer than the straight way from edge to edge, because it slants.');
  return [
    {
      label: 'Half the angle of a right wedge',
      formula: '180 ÷ n',
      terms: [allTerm(input)],
      result: degreesQuantity((work.half * 180) / Math.PI),
      rule: WHOLE_TURN,
    },
    {
      label: 'Leg of a wedge',
      formula: '(R − r) ÷ cos t',
      terms: [
        givenTerm('R', 'middle to the outer edge', outerRadius),
        givenTerm('r', 'middle to the inner edge', innerRadius),
        halfTerm(work),
      ],
      result: lengthNearest(work.leg),
      rule,
    },
    ...(cutWedge.known === 'sides' ? [cutAngleStep(cutWedge, work)] : []),
  ];
}

function cutAngleStep(
  { long, short, height }: Extract<LieFlatInput['cutWedge'], { known: 'sides' }>,
  { wedgeAngle }: LieFlatWork,
): Step {
  return degreesStep(
    {
      label: 'Angle of a wedge as cut',
      formula: '2 · atan((a − b) ÷ 2h)',
      terms: [
        givenTerm('a', 'long side, cut', long),
        givenTerm('b', 'short side, cut', short),
        givenTerm('h', 'height, cut', height),
      ],
      rule: derived('Each leg goes half of the difference to one side over the height.'),
    },
    wedgeAngle,
  );
}

function lossSteps(input: LieFlatInput, work: LieFlatWork): readonly Step[] {
  const { seamInner, seamOuter } = input;
  return [
    degreesStep(
      {
        label: 'One side of a seam takes from its wedge',
        formula: 'atan((y − x) ÷ l)',
        terms: [
          fineTerm('y', 'seam at the outer end', seamOuter),
          fineTerm('x', 'seam at the inner end', seamInner),
          legTerm(work),
        ],
        rule: derived('A seam that widens turns the leg. One that is off evenly does not.'),
      },
      work.turn,
    ),
    degreesStep(
      {
        label: 'Missing by the cut (below zero: too much)',
        formula: '360° − n · w',
        terms: [allTerm(input), degreesTerm('w', 'angle of a wedge as cut', work.wedgeAngle)],
        rule: WHOLE_TURN,
      },
      work.lostByCutting,
    ),
    degreesStep(
      {
        label: 'Missing by the seams (below zero: too much)',
        formula: '2n · q',
        terms: [allTerm(input), degreesTerm('q', 'what one side of a seam takes', work.turn)],
        rule: derived('Every wedge has two legs.'),
      },
      work.lostBySeams,
    ),
  ];
}

function sizeSteps({ seamInner, seamAllowance }: LieFlatInput, work: LieFlatWork): readonly Step[] {
  if (work.movedIn === 0) return [];
  return [
    {
      label:
        work.movedIn > 0 ? 'The seams make the radius smaller by' : 'The seams make the radius larger by',
      formula: '|x − s − k · tan q| ÷ (sin t − cos t · tan q)',
      terms: [
        fineTerm('x', 'seam at the inner end', seamInner),
        fineTerm('s', 'seam that the wedges are cut for', seamAllowance),
        term('k', 'middle to the inner end of a leg', lengthNearest(work.legStart)),
        degreesTerm('q', 'what one side of a seam takes', work.turn),
        halfTerm(work),
      ],
      result: fineLength(Math.abs(work.movedIn), 'nearest'),
      rule: derived(
        'A wedge that is narrower reaches its middle line nearer to the middle. With an even error this is the error ÷ sin t.',
      ),
    },
  ];
}

function missingSteps(input: LieFlatInput, work: LieFlatWork): readonly Step[] {
  const { halfRing, wedges } = input;
  const what = work.missing < 0 ? 'Too much' : 'Missing';
  if (halfRing.found === 'not-yet')
    return [
      degreesStep(
        {
          label: `${what} in the ring`,
          formula: '|c + g|',
          terms: [
            degreesTerm('c', 'by the cut', work.lostByCutting),
            degreesTerm('g', 'by the seams', work.lostBySeams),
          ],
          rule: derived('Cut and seams turn the same legs.'),
        },
        Math.abs(work.missing),
      ),
    ];
  return [
    halfStep(`${what} in the half, by the test`, halfRing.off, work),
    degreesStep(
      {
        label: `${what} in the ring`,
        formula: 'v · n ÷ m',
        terms: [
          degreesTerm('v', 'in the half', Math.abs(work.halfMeasured ?? 0)),
          allTerm(input),
          countTerm('m', 'wedges of the half', work.halfWedges),
        ],
        rule: derived(
          wedges === 2 * work.halfWedges
            ? 'The other half is like it, and the last two seams are right.'
            : 'The other half is like it but for one wedge more, and the last two seams are right.',
        ),
      },
      Math.abs(work.missing),
    ),
  ];
}

function halfStep(label: string, off: number, { legEnd, halfMeasured }: LieFlatWork): Step {
  return degreesStep(
    {
      label,
      formula: 'asin(o ÷ d)',
      terms: [
        term('o', 'from the leg to the line, at the outer end', fineLength(off, 'nearest')),
        term('d', 'middle to the outer end of the open leg', lengthNearest(legEnd)),
      ],
      rule: derived('Both open legs of a right half lie on one line through the middle, a seam beside it.'),
    },
    Math.abs(halfMeasured ?? 0),
  );
}

/** What the test of a half ring should find; none where it was made, or the half would be far from a straight line. */
export function halfToTestSteps({ halfMeasured, halfExpected, legEnd }: LieFlatWork): readonly Step[] {
  if (halfMeasured !== null || Math.abs(halfExpected) >= Math.PI / 2) return [];
  return [
    {
      label:
        halfExpected < 0 ? 'A half ring should reach over the line by' : 'A half ring should show a gap of',
      formula: 'd · sin e',
      terms: [
        term('d', 'middle to the outer end of the open leg', lengthNearest(legEnd)),
        degreesTerm('e', 'off in the half, by its cut and its seams', Math.abs(halfExpected)),
      ],
      result: fineLength(legEnd * Math.sin(Math.abs(halfExpected)), 'nearest'),
      rule: derived('Both open legs of a right half lie on one line through the middle, a seam beside it.'),
    },
  ];
}

function limitSteps(input: LieFlatInput, work: LieFlatWork): readonly Step[] {
  const fullness = term('f', 'fullness that quilting takes up', percentQuantity(input.fullness));
  const easing: Rule = commonPractice(
    'How much fullness quilting eases in depends on batting and pattern. It is the share of 360° that may be missing.',
  );
  return [
    degreesStep(
      {
        label: 'One side of a seam may take',
        formula: 'f · 360° ÷ 2n',
        terms: [fullness, allTerm(input)],
        rule: easing,
      },
      work.limits.turn,
    ),
    {
      label: 'A leg may be off at one end by',
      formula: 'l · tan u',
      terms: [legTerm(work), degreesTerm('u', 'what one side of a seam may take', work.limits.turn)],
      result: fineLength(work.limits.taper, 'down'),
      rule: derived('On each piece of fabric, cut and seam together.'),
    },
    shapeLimitStep(input, work, fullness),
  ];
}

function shapeLimitStep(input: LieFlatInput, { flatness, limits }: LieFlatWork, fullness: Term): Step {
  const terms = [givenTerm('R', 'middle to the outer edge', input.outerRadius), fullness];
  const rule = derived('The height at which easing it flat takes just this fullness.');
  return flatness.shape === 'ruffle'
    ? {
        label: 'Quilting takes up two waves of',
        formula: '2R · sin(2√(f ÷ 3))',
        terms,
        result: fineLength(limits.wave, 'down'),
        rule,
      }
    : {
        label: 'Quilting takes up a rise of',
        formula: 'R · √(1 − (1 − f)²)',
        terms,
        result: fineLength(limits.rise, 'down'),
        rule,
      };
}

function correctionSteps(work: LieFlatWork): readonly Step[] {
  const { correction, halfMeasured, halfWedges } = work;
  if (correction === null || halfMeasured === null) return [];
  return [
    degreesStep(
      {
        label: 'Each side of a seam of the half has to turn by',
        formula: 'v ÷ 2(m − 1)',
        terms: [
          degreesTerm('v', 'in the half, by the test', Math.abs(halfMeasured)),
          countTerm('m', 'wedges of the half', halfWedges),
        ],
        rule: derived('The half has one seam less than it has wedges, and a seam has two sides.'),
      },
      correction.turn,
    ),
    {
      label: 'Correct each seam of the half at one end by',
      formula: 'l · tan z',
      terms: [legTerm(work), degreesTerm('z', 'what each side has to turn', correction.turn)],
      result: fineLength(correction.seams, 'nearest'),
      rule: derived('On each piece of fabric, running out to nothing at the other end.'),
    },
  ];
}
