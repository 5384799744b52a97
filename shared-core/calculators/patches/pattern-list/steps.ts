import { outlineEdgeStep } from '#core/calculators/binding/outer-binding/edge-step';
import type { Explanation } from '#core/calculators/explanation';
import { countQuantity, lengthDown, lengthUp } from '#core/calculators/quantities';
import { commonPractice, givenTerm, term } from '#core/calculators/working/terms';
import { outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { fabricSteps, stripSteps } from '../fabric-steps';
import type { PatternListWork } from './work';

const asNamed = (fabric: string) => fabric;

export function patternListSteps(work: PatternListWork): Explanation {
  const { needed, input } = work;
  return [
    ...stripSteps(needed.strips, asNamed),
    ...fabricSteps(needed.strips, input.yardageStep, asNamed),
    ...bindingSteps(work),
  ];
}

function bindingSteps({ input, binding }: PatternListWork): Explanation {
  const [strips] = input.bindingStrips;
  if (binding === null || strips === undefined) return [];
  return [
    outlineEdgeStep(input.outline),
    {
      label: 'Binding needed',
      formula: 'N = E + o',
      terms: [
        term('E', 'edge to bind', lengthUp(outlinePerimeter(input.outline))),
        givenTerm('o', 'overlap', input.bindingOverlap),
      ],
      result: lengthUp(binding.needed),
      rule: commonPractice('The overlap is for the closing join and for safety.'),
    },
    {
      label: 'Its binding strips give',
      formula: 'max(0, n · U − (n − 1) · w)',
      terms: [
        term('n', 'binding strips', countQuantity(strips.count, ['strip', 'strips'])),
        givenTerm('U', 'usable width of the fabric', input.fabricWidth),
        givenTerm('w', 'width of a binding strip, which a diagonal join takes', strips.width),
      ],
      result: lengthDown(binding.given),
      rule: commonPractice('Strips of binding are joined on the diagonal.'),
    },
  ];
}
