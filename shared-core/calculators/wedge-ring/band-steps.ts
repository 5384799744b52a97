import type { Step } from '../explanation';
import { countQuantity, givenLength, lengthNearest, lengthUp } from '../quantities';
import { derived, givenTerm, term } from '../working/terms';
import { bandAllowance } from './bands';
import type { WedgeRingInput } from './input';
import type { WedgeRingWork } from './work';

/** The strip of each band, then the set; nothing without bands. */
export function bandSteps(input: WedgeRingInput, work: WedgeRingWork): readonly Step[] {
  const { set, frame } = work;
  if (set === null) return [];
  const seam = givenTerm('s', 'seam allowance', input.seamAllowance);
  const strips = set.bands.map(({ finished }, index): Step => {
    const more = bandAllowance(input, index, frame.height);
    return {
      label: `Strip of band ${String(index + 1)}, cut`,
      formula: more === 0 ? 'w + 2s' : 'w + 2s + g',
      terms: [
        givenTerm('w', 'finished width', finished),
        seam,
        ...(more === 0 ? [] : [term('g', 'what the edge of the wedge still needs', lengthNearest(more))]),
      ],
      result: lengthUp(finished + 2 * input.seamAllowance + more, input.cutStep),
      rule: derived('A seam allowance at both edges of the strip.'),
    };
  });
  const together = set.bands.reduce((sum, { cut }) => sum + cut, 0);
  return [
    ...strips,
    {
      label: 'Width of a set, as sewn',
      formula: 'c − 2s · (b − 1)',
      terms: [
        term('c', 'all its strips', lengthNearest(together)),
        seam,
        term('b', 'bands', countQuantity(set.bands.length, ['band', 'bands'])),
      ],
      result: givenLength(set.height),
      rule: derived('Every seam between two bands takes two seam allowances.'),
    },
  ];
}
