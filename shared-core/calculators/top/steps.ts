import type { Explanation } from '../explanation';
import { countQuantity, lengthNearest, percentQuantity, yardageUp } from '../quantities';
import { derived, givenTerm, term } from '../working/terms';
import { lengthTerm } from './assembly';
import type { TopWork } from './work';

export function topSteps(work: TopWork): Explanation {
  const { assembly, sewn } = work;
  const sizes = assembly.steps.map(({ label, width, formula, terms }) => ({
    label: `${label}, finished width`,
    formula,
    terms,
    result: lengthNearest(width),
    rule: derived('Finished sizes are added. The seam allowance is added once, at the end.'),
  }));
  const unfinished = {
    label: 'Width before quilting, with seam allowance',
    formula: 'W + 2a',
    terms: [
      lengthTerm('W', 'finished width', assembly.width),
      lengthTerm('a', 'what the seam allowance adds at each end', (sewn.width - assembly.width) / 2),
    ],
    result: lengthNearest(sewn.width),
    rule: derived(
      'The outer edge still has its seam allowance: s along a side, and s ÷ cos(180°/n) at the points of a polygon of n sides.',
    ),
  };
  return [...sizes, unfinished, ...seamSteps(work), ...fabricSteps(work)];
}

function seamSteps({ seams, seamLength, halfPatchEdges, topEdge }: TopWork): Explanation {
  return [
    {
      label: 'Seams to sew',
      formula: 'n − 1',
      terms: [term('n', 'patches', countQuantity(seams + 1, ['patch', 'patches']))],
      result: countQuantity(seams, ['seam', 'seams']),
      rule: derived('Every seam joins two parts into one. A set-in seam around a corner counts as one.'),
    },
    {
      label: 'Length of all seams, finished',
      formula: 'h − P ÷ 2, or nothing',
      terms: [
        lengthTerm('h', 'half the edges of all patches', halfPatchEdges),
        lengthTerm('P', 'edge of the top', topEdge),
      ],
      result: lengthNearest(seamLength),
      rule: derived(
        'Each seam takes two edges, and only the outer edge of the top has none. True if all patches meet.',
      ),
    },
  ];
}

function fabricSteps({ input, fabrics }: TopWork): Explanation {
  return fabrics.map(({ fabric, length, withExtra }) => ({
    label: `Fabric, ${fabric}`,
    formula: 'Σ(k × b)·(1 + e)',
    terms: [
      givenTerm('Σ(k × b)', 'strips times their width', length),
      term('e', 'safety extra', percentQuantity(input.safetyExtraPercent)),
    ],
    result: yardageUp(withExtra, input.yardageStep),
    rule: derived('Strips across the usable width, each filled with the longest patches that still fit.'),
  }));
}
