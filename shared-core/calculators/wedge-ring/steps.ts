import type { Explanation, Step } from '../explanation';
import {
  countQuantity,
  degreesQuantity,
  fineLength,
  lengthNearest,
  percentQuantity,
  yardageUp,
} from '../quantities';
import { derived, givenTerm, term } from '../working/terms';
import { arcSteps } from './arc-steps';
import { bandSteps } from './band-steps';
import type { WedgeRingInput } from './input';
import { stripWidth, stripWords } from './strip-words';
import type { WedgeRingWork } from './work';

/** The wedge from its angle, then its strips and the fabric. */
export function wedgeRingSteps(input: WedgeRingInput, work: WedgeRingWork): Explanation {
  const sides = work.arcs === null ? sideSteps(input, work) : arcSteps(input, work);
  return [...sides, ...bandSteps(input, work), ...stripSteps(input, work), ...fabricSteps(input, work)];
}

function sideSteps(input: WedgeRingInput, work: WedgeRingWork): readonly Step[] {
  const { half, finished, cut } = work;
  const wedges = term('n', 'wedges', countQuantity(input.wedges, ['wedge', 'wedges']));
  const angle = term('t', 'half the angle of a wedge', degreesQuantity((180 * half) / Math.PI));
  const seam = givenTerm('s', 'seam allowance', input.seamAllowance);
  const inner = givenTerm('r', 'middle to the inner edge', input.innerRadius);
  const outer = givenTerm('R', 'middle to the outer edge', input.outerRadius);
  const grown = derived('The cut edge runs one seam allowance outside every seam line.');
  const chord = derived('All wedges together make 360°, and a side is cut straight across its wedge.');
  return [
    {
      label: 'Half the angle of a wedge',
      formula: '180 ÷ n',
      terms: [wedges],
      result: angle.quantity,
      rule: chord,
    },
    {
      label: 'Short side, finished',
      formula: '2 · r · tan t',
      terms: [inner, angle],
      result: lengthNearest(finished.short),
      rule: chord,
    },
    {
      label: 'Long side, finished',
      formula: '2 · R · tan t',
      terms: [outer, angle],
      result: lengthNearest(finished.long),
      rule: chord,
    },
    {
      label: 'Short side, cut',
      formula: '2 · ((r − s) · tan t + s ÷ cos t)',
      terms: [inner, seam, angle],
      result: fineLength(cut.short, 'up'),
      rule: grown,
    },
    {
      label: 'Long side, cut',
      formula: '2 · ((R + s) · tan t + s ÷ cos t)',
      terms: [outer, seam, angle],
      result: fineLength(cut.long, 'up'),
      rule: grown,
    },
    ...(work.set === null ? [heightStep(input, work)] : []),
  ];
}

function heightStep(input: WedgeRingInput, work: WedgeRingWork): Step {
  return {
    label: 'Width of a strip, cut',
    formula: 'R − r + 2s',
    terms: [
      givenTerm('R', 'middle to the outer edge', input.outerRadius),
      givenTerm('r', 'middle to the inner edge', input.innerRadius),
      givenTerm('s', 'seam allowance', input.seamAllowance),
    ],
    result: stripWidth(input, work),
    rule: derived('The cut edge runs one seam allowance outside every seam line.'),
  };
}

function stripSteps(input: WedgeRingInput, work: WedgeRingWork): readonly Step[] {
  const { fromStrip, perStrip } = work;
  const width = givenTerm('U', 'usable width of the fabric', input.fabricWidth);
  const long = term('a', 'long side from the rounded strip', lengthNearest(fromStrip.long));
  const short = term('b', 'short side', lengthNearest(fromStrip.short));
  const each = term(
    'k',
    `wedges from a ${stripWords(work)[0]}`,
    countQuantity(perStrip, ['wedge', 'wedges']),
  );
  return [
    {
      label: work.set === null ? 'Wedges from a strip' : 'Wedges from a set',
      formula: input.isDirectional ? 'U ÷ a, rounded down' : '(2U − (a − b)) ÷ (a + b), rounded down',
      terms: input.isDirectional ? [width, long] : [width, long, short],
      result: countQuantity(exactPerStrip(input, work), ['wedge', 'wedges'], 'down'),
      rule: derived(
        input.isDirectional
          ? 'All wedges stand the same way up, with their long sides end to end.'
          : 'Every second wedge is turned around, so that each one after the first takes (a + b) ÷ 2.',
      ),
    },
    {
      label: work.set === null ? 'Strips' : 'Strip sets',
      formula: 'n ÷ k, rounded up',
      terms: [term('n', 'wedges', countQuantity(input.wedges, ['wedge', 'wedges'])), each],
      result: countQuantity(input.wedges / perStrip, stripWords(work), 'up'),
      rule: derived('A strip that is only partly used is cut whole.'),
    },
  ];
}

/** One step for each fabric. */
function fabricSteps(input: WedgeRingInput, work: WedgeRingWork): readonly Step[] {
  const isPlain = work.set === null;
  return work.fabrics.map(({ name, ofSet, withExtra }) => ({
    label: isPlain ? 'Fabric' : `Fabric, ${name}`,
    formula: 'm · h · (1 + e)',
    terms: [
      term('m', stripWords(work)[1], countQuantity(work.strips, stripWords(work))),
      term('h', isPlain ? 'width of a strip' : 'its strips in a set, together', lengthNearest(ofSet)),
      term('e', 'safety extra', percentQuantity(input.safetyExtraPercent)),
    ],
    result: yardageUp(withExtra, input.yardageStep),
    rule: derived('Strips are cut across the usable width.'),
  }));
}

function exactPerStrip({ fabricWidth, isDirectional }: WedgeRingInput, { fromStrip }: WedgeRingWork): number {
  const { long, short } = fromStrip;
  return isDirectional ? fabricWidth / long : (2 * fabricWidth - (long - short)) / (long + short);
}
