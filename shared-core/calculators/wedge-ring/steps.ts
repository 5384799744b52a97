import type { Explanation, LengthQuantity, Step } from '../explanation';
import {
  countQuantity,
  degreesQuantity,
  fineLength,
  lengthNearest,
  lengthUp,
  percentQuantity,
  yardageUp,
} from '../quantities';
import { derived, givenTerm, term } from '../working/terms';
import type { WedgeRingInput } from './input';
import type { WedgeRingWork } from './work';

/** The wedge from its angle, then its strips and the fabric. */
export function wedgeRingSteps(input: WedgeRingInput, work: WedgeRingWork): Explanation {
  return [...sideSteps(input, work), ...stripSteps(input, work)];
}

function sideSteps(input: WedgeRingInput, { half, finished, cut }: WedgeRingWork): readonly Step[] {
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
    {
      label: 'Width of a strip, cut',
      formula: 'R − r + 2s',
      terms: [outer, inner, seam],
      result: stripWidth(input, cut.height),
      rule: grown,
    },
  ];
}

/** The height of a cut wedge, rounded up to the cut step. */
export function stripWidth({ cutStep }: WedgeRingInput, height: number): LengthQuantity {
  return lengthUp(height, cutStep);
}

function stripSteps(input: WedgeRingInput, work: WedgeRingWork): readonly Step[] {
  const { fromStrip, perStrip, strips, strip } = work;
  const width = givenTerm('U', 'usable width of the fabric', input.fabricWidth);
  const long = term('a', 'long side from the rounded strip', lengthNearest(fromStrip.long));
  const short = term('b', 'short side', lengthNearest(fromStrip.short));
  const each = term('k', 'wedges from a strip', countQuantity(perStrip, ['wedge', 'wedges']));
  const count = term('m', 'strips', countQuantity(strips, ['strip', 'strips']));
  return [
    {
      label: 'Wedges from a strip',
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
      label: 'Strips',
      formula: 'n ÷ k, rounded up',
      terms: [term('n', 'wedges', countQuantity(input.wedges, ['wedge', 'wedges'])), each],
      result: countQuantity(input.wedges / perStrip, ['strip', 'strips'], 'up'),
      rule: derived('A strip that is only partly used is cut whole.'),
    },
    {
      label: 'Fabric',
      formula: 'm · h · (1 + e)',
      terms: [
        count,
        givenTerm('h', 'width of a strip', strip),
        term('e', 'safety extra', percentQuantity(input.safetyExtraPercent)),
      ],
      result: yardageUp(work.withExtra, input.yardageStep),
      rule: derived('Strips are cut across the usable width.'),
    },
  ];
}

function exactPerStrip({ fabricWidth, isDirectional }: WedgeRingInput, { fromStrip }: WedgeRingWork): number {
  const { long, short } = fromStrip;
  return isDirectional ? fabricWidth / long : (2 * fabricWidth - (long - short)) / (long + short);
}
