import type { Explanation, Rule, Step, Term } from '#core/calculators/explanation';
import {
  countQuantity,
  degreesQuantity,
  givenLength,
  lengthDown,
  lengthNearest,
  lengthQuantity,
  yardageUp,
} from '#core/calculators/quantities';
import { givenTerm } from '#core/calculators/working/terms';
import { lengthPerFabric } from '../fabric-needed';
import type { CutEdge } from '../cut-edge';
import type { SizedPatch } from '../cut-sizes';
import { piecesPerStrip } from '../fill-strips';
import { isFromFabric, type PatchSizeWork } from './work';
import { patchUnits } from '../patch-units';

/** A log cabin of twelve rounds has fifty patches of two formulas: the rest stands in the table. */
const MOST_EDGES = 12;

const GROWN: Rule = {
  kind: 'derived',
  says: 'The finished shape grown outward by the seam on every side, then rounded up to your step.',
};
const HABIT: Rule = {
  kind: 'common practice',
  says: 'What makers add by setting; it is never under the exact size here, and is rounded up to your step.',
};

export function patchSizeSteps(work: PatchSizeWork): Explanation {
  const patches = work.sized.filter(isFromFabric);
  return [
    ...reverseStep(work),
    ...cutSteps(work, patches),
    ...patches.slice(0, 1).map((first) => perStripStep(work, first)),
    ...stripSteps(work),
    ...fabricSteps(work),
  ];
}

function reverseStep({ fromCut, input }: PatchSizeWork): Explanation {
  if (fromCut === null) return [];
  const { cutMeans } = patchUnits[input.unit.unit];
  return [
    {
      label: 'Finished size of what you have',
      formula: fromCut.formula,
      terms: [
        {
          symbol: 'C',
          means: `cut size of ${cutMeans}`,
          quantity: lengthNearest(fromCut.cut),
        },
        seamTerm(input),
        ...(fromCut.terms ?? []).map(termOf),
      ],
      result: lengthDown(fromCut.finished),
      rule: { kind: 'derived', says: 'The cut shape with the seam taken off on every side.' },
    },
  ];
}

function cutSteps(work: PatchSizeWork, patches: readonly SizedPatch[]): Explanation {
  const known = new Set<string>();
  const edges = patches.flatMap((one) => [
    { label: `Cut ${one.patch.name.toLowerCase()}, width`, edge: one.patch.across, result: one.across },
    { label: `Cut ${one.patch.name.toLowerCase()}, length`, edge: one.patch.along, result: one.along },
  ]);
  const distinct = edges.filter(({ edge }) => {
    const key = `${edge.formula} ${String(edge.exact)}`;
    return known.has(key) ? false : known.add(key);
  });
  return distinct.slice(0, MOST_EDGES).flatMap(({ label, edge, result }): Explanation => {
    const { customary } = edge;
    const terms = [...edge.terms.map(termOf), seamTerm(work.input)];
    const rounding = { step: work.input.cutStep, direction: 'up' } as const;
    const exact = lengthQuantity(edge.exact, rounding);
    const step: Step = { label, formula: edge.formula, terms, result: exact, rule: GROWN };
    const isSettingUsed =
      customary !== null && work.input.rounding === 'customary' && customary.exact >= edge.exact;
    if (!isSettingUsed) return [step];
    const setting = { ...result, exact: customary.exact };
    const bySetting = `${label}, by setting`;
    return [
      step,
      {
        label: bySetting,
        formula: customary.formula,
        terms: edge.terms.map(termOf),
        result: setting,
        rule: HABIT,
      },
    ];
  });
}

function perStripStep({ input }: PatchSizeWork, { patch, strip }: SizedPatch): Step {
  const upToUnit = { direction: 'up' } as const;
  return {
    label: `${patch.name} from one strip`,
    formula: 'n = 1 + ⌊(U − a)/p⌋',
    terms: [
      givenTerm('U', 'usable width of the fabric', input.fabricWidth),
      {
        symbol: 'a',
        means: 'what the first takes of the strip',
        quantity: lengthQuantity(strip.first, upToUnit),
      },
      { symbol: 'p', means: 'what each further one takes', quantity: lengthQuantity(strip.pitch, upToUnit) },
    ],
    result: countQuantity(piecesPerStrip(strip, input.fabricWidth), ['patch', 'patches']),
    rule: { kind: 'derived', says: 'Rounded down: a part of a patch is none.' },
  };
}

function stripSteps({ needed }: PatchSizeWork): Explanation {
  const rule: Rule = {
    kind: 'derived',
    says: 'Each strip is filled with the longest patches that still fit; strips too short for one are joined end to end.',
  };
  return needed.strips.slice(0, MOST_EDGES).map(({ fabric, width, strips, length }) => ({
    label: `Strips of ${fabric.toLowerCase()}`,
    formula: 'fabric = k × b',
    terms: [
      { symbol: 'k', means: 'strips', quantity: countQuantity(strips, ['strip', 'strips']) },
      givenTerm('b', 'what a strip is cut at', width),
    ],
    result: givenLength(length),
    rule,
  }));
}

function fabricSteps({ input, needed }: PatchSizeWork): Explanation {
  return lengthPerFabric(needed.strips).map(({ fabric, length }) => ({
    label: `Fabric to have of ${fabric.toLowerCase()}`,
    formula: 'Σ, rounded up to whole y',
    terms: [
      givenTerm('Σ', 'all strips of it', length),
      givenTerm('y', 'what fabric is sold by', input.yardageStep),
    ],
    result: yardageUp(length, input.yardageStep),
    rule: {
      kind: 'common practice',
      says: 'Bought by the eighth of a yard or by 5 cm; nothing is added for slips.',
    },
  }));
}

function termOf({ symbol, means, exact, isAngle }: CutEdge['terms'][number]): Term {
  const quantity = isAngle ? degreesQuantity(exact) : lengthNearest(exact);
  return { symbol, means, quantity };
}

function seamTerm({ seamAllowance }: PatchSizeWork['input']): Term {
  return givenTerm('s', 'seam allowance', seamAllowance);
}
