import type { Rule, Step } from '../explanation';
import { countQuantity, degreesQuantity, fineLength } from '../quantities';
import { derived, givenTerm, term } from '../working/terms';
import type { WedgeRingInput } from './input';
import { stripWidth } from './strip-words';
import type { WedgeRingWork } from './work';

const CHORD: Rule = derived('Both ends of the arc are on the legs, at the radius from the middle.');
const MOVED: Rule = derived(
  'The cut leg runs a seam allowance beside its seam line, and the arc ends on it.',
);

/** The wedge with arcs at both edges; nothing if its edges are straight. */
export function arcSteps(input: WedgeRingInput, work: WedgeRingWork): readonly Step[] {
  const { arcs, half } = work;
  if (arcs === null) return [];
  const angle = term('t', 'half the angle of a wedge', degreesQuantity((180 * half) / Math.PI));
  const seam = givenTerm('s', 'seam allowance', input.seamAllowance);
  const inner = givenTerm('r', 'middle to the inner edge', input.innerRadius);
  const outer = givenTerm('R', 'middle to the outer edge', input.outerRadius);
  const { finished, cut } = arcs;
  return [
    {
      label: 'Half the angle of a wedge',
      formula: '180 ÷ n',
      terms: [term('n', 'wedges', countQuantity(input.wedges, ['wedge', 'wedges']))],
      result: angle.quantity,
      rule: derived('All wedges together make 360°.'),
    },
    {
      label: 'Outer arc from corner to corner, finished',
      formula: '2R · sin t',
      terms: [outer, angle],
      result: fineLength(finished.outer.chord, 'nearest'),
      rule: CHORD,
    },
    {
      label: 'Height of the outer arc, finished',
      formula: 'R · (1 − cos t)',
      terms: [outer, angle],
      result: fineLength(finished.outer.sagitta, 'nearest'),
      rule: CHORD,
    },
    {
      label: 'Outer arc from corner to corner, cut',
      formula: '2 · (√((R + s)² − s²) · sin t + s · cos t)',
      terms: [outer, seam, angle],
      result: fineLength(cut.outer.chord, 'up'),
      rule: MOVED,
    },
    {
      label: 'Inner arc from corner to corner, cut',
      formula: '2 · (√((r − s)² − s²) · sin t + s · cos t)',
      terms: [inner, seam, angle],
      result: fineLength(cut.inner.chord, 'up'),
      rule: MOVED,
    },
    ...(work.set === null ? [heightStep(input, work)] : []),
  ];
}

function heightStep(input: WedgeRingInput, work: WedgeRingWork): Step {
  return {
    label: 'Width of a strip, cut',
    formula: 'R + s − √((r − s)² − s²) · cos t + s · sin t',
    terms: [
      givenTerm('R', 'middle to the outer edge', input.outerRadius),
      givenTerm('r', 'middle to the inner edge', input.innerRadius),
      givenTerm('s', 'seam allowance', input.seamAllowance),
      term('t', 'half the angle of a wedge', degreesQuantity((180 * work.half) / Math.PI)),
    ],
    result: stripWidth(input, work),
    rule: derived('From the top of the outer arc to the corners of the inner one.'),
  };
}
