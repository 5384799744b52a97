import type { Step } from '../explanation';
import { givenLength, percentQuantity } from '../quantities';
import { derived, givenTerm, term } from '../working/terms';
import type { WashingInput } from './input';
import { shrinkagePercent, type SideSizes } from './work';

export function washingSteps(
  input: WashingInput,
  { width, length }: { readonly width: SideSizes; readonly length: SideSizes },
): readonly Step[] {
  return [...sampleSteps(input), ...sideSteps('width', width, input), ...sideSteps('length', length, input)];
}

function sampleSteps(input: WashingInput): readonly Step[] {
  const { sample } = input;
  if (sample === null) return [];
  return (['across', 'along'] as const).map((direction) => ({
    label: `Shrinkage ${direction}`,
    formula: '100 × (before − after) ÷ before',
    terms: [
      givenTerm('before', 'as marked', sample.marked),
      givenTerm('after', 'after washing', sample[direction]),
    ],
    result: percentQuantity(shrinkagePercent(input, direction)),
    rule: {
      kind: 'published',
      says: 'AATCC TM135 (like ISO 5077) gives 100 × (after − before) ÷ before, for length and width separately. Here a loss is positive.',
    },
  }));
}

function sideSteps(name: string, sizes: SideSizes, { quiltingPercent }: WashingInput): readonly Step[] {
  const lost = term('p', 'shrinkage', percentQuantity(sizes.percent));
  const wanted = givenTerm('F', `the ${name}`, sizes.wanted);
  return [
    {
      label: `To end at this ${name}`,
      formula: 'F ÷ (1 − p)',
      terms: [wanted, lost],
      result: sizes.make,
      rule: derived('The wash shrinks the larger size, so adding p of F is not quite enough.'),
    },
    {
      label: `The top’s ${name}`,
      formula: 'M ÷ (1 − q)',
      terms: [
        term('M', 'size to make, as above', givenLength(sizes.make.rounded)),
        term('q', 'shrinkage from quilting', percentQuantity(quiltingPercent)),
      ],
      result: sizes.top,
      rule: derived('Quilting shrinks the top before it is bound.'),
    },
    {
      label: `Made at this ${name}`,
      formula: 'F × (1 − p)',
      terms: [wanted, lost],
      result: sizes.washed,
      rule: derived('What is left after the first wash.'),
    },
  ];
}
