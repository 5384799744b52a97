import type { Explanation } from '../explanation';
import { lengthPerFabric } from '../patches/fabric-needed';
import { countQuantity, lengthNearest, percentQuantity, yardageUp } from '../quantities';
import { givenTerm } from '../working/terms';
import { lengthTerm } from './assembly';
import type { TopWork } from './work';

export function topSteps(work: TopWork): Explanation {
  const { assembly, input } = work;
  const sizes = assembly.steps.map(({ label, width, formula, terms }) => ({
    label: `${label}, finished width`,
    formula,
    terms,
    result: lengthNearest(width),
    rule: { kind: 'derived', says: 'Finished sizes add up; seams are added once, at the end.' } as const,
  }));
  const unfinished = {
    label: 'Width before quilting, with its seam allowance',
    formula: 'W + 2s',
    terms: [
      lengthTerm('W', 'finished width', assembly.width),
      givenTerm('s', 'seam allowance', input.seamAllowance),
    ],
    result: lengthNearest(assembly.width + 2 * input.seamAllowance),
    rule: { kind: 'derived', says: 'One seam allowance on each side is still there.' } as const,
  };
  return [...sizes, unfinished, ...seamSteps(work), ...fabricSteps(work)];
}

function seamSteps({ seams, seamLength, halfPatchEdges, topEdge }: TopWork): Explanation {
  return [
    {
      label: 'Seams to sew',
      formula: 'n − 1',
      terms: [{ symbol: 'n', means: 'patches', quantity: countQuantity(seams + 1, ['patch', 'patches']) }],
      result: countQuantity(seams, ['seam', 'seams']),
      rule: { kind: 'derived', says: 'Every seam makes one part of two; a seam set in at a corner is one.' },
    },
    {
      label: 'Length of all seams, finished',
      formula: 'h − P ÷ 2, or nothing',
      terms: [
        lengthTerm('h', 'half the edges of all patches', halfPatchEdges),
        lengthTerm('P', 'edge of the top', topEdge),
      ],
      result: lengthNearest(seamLength),
      rule: {
        kind: 'derived',
        says: 'Each seam lies between two edges; only the outer edge has none. True where all parts meet.',
      },
    },
  ];
}

function fabricSteps({ input, needed }: TopWork): Explanation {
  return lengthPerFabric(needed.strips).map(({ fabric, length }) => ({
    label: `Fabric of ${fabric}`,
    formula: 'Σ(k × b)·(1 + e)',
    terms: [
      givenTerm('Σ(k × b)', 'strips times their width', length),
      { symbol: 'e', means: 'safety extra', quantity: percentQuantity(input.safetyExtraPercent) },
    ],
    result: yardageUp(length * (1 + input.safetyExtraPercent / 100), input.yardageStep),
    rule: {
      kind: 'derived',
      says: 'Strips across the usable width, filled with the longest patches that still fit.',
    },
  }));
}
