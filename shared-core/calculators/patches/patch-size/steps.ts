import type { Explanation, Rule, Step, Term } from '#core/calculators/explanation';
import {
  countQuantity,
  degreesQuantity,
  lengthDown,
  lengthNearest,
  lengthUp,
} from '#core/calculators/quantities';
import { commonPractice, derived, givenTerm, term } from '#core/calculators/working/terms';
import { fabricSteps, stripSteps } from '../fabric-steps';
import type { CutEdge } from '../cut-edge';
import type { SizedPatch } from '../cut-sizes';
import { patchesPerStrip } from '../fill-strips';
import { asCommon } from './unit-fabrics';
import { isFromFabric, type PatchSizeWork } from './work';
import { patchUnits } from '../patch-units';

/** A log cabin of twelve rounds has almost fifty patches with two formulas; the rest are in the table only. */
const MOST_EDGES = 12;

const GROWN: Rule = derived(
  'The finished shape plus the seam allowance on every side, rounded up to your step.',
);
const CUSTOMARY: Rule = commonPractice(
  'The customary add-on, rounded up to your step. It is never smaller than the exact size.',
);

export function patchSizeSteps(work: PatchSizeWork): Explanation {
  const patches = work.sized.filter(isFromFabric);
  return [
    ...reverseStep(work),
    ...cutSteps(work, patches),
    ...patches.slice(0, 1).map((first) => perStripStep(work, first)),
    ...stripSteps(work.needed.strips, asCommon),
    ...fabricSteps(work.needed.strips, work.input.yardageStep, asCommon),
  ];
}

function reverseStep({ fromCut, input }: PatchSizeWork): Explanation {
  if (fromCut === null) return [];
  const { cutMeans } = patchUnits[input.unit.unit];
  return [
    {
      label: 'Finished size',
      formula: fromCut.formula,
      terms: [
        term('C', `cut size of ${cutMeans}`, lengthNearest(fromCut.cut)),
        seamTerm(input),
        ...(fromCut.terms ?? []).map(termOf),
      ],
      result: lengthDown(fromCut.finished),
      rule: derived('The cut shape minus the seam allowance on every side.'),
    },
  ];
}

function cutSteps(work: PatchSizeWork, patches: readonly SizedPatch[]): Explanation {
  const seen = new Set<string>();
  const edges = patches.flatMap((one) => [
    { label: `Cut ${one.patch.name.toLowerCase()}, width`, edge: one.patch.across, result: one.across },
    { label: `Cut ${one.patch.name.toLowerCase()}, length`, edge: one.patch.along, result: one.along },
  ]);
  const distinct = edges.filter(({ edge }) => {
    const key = `${edge.formula} ${String(edge.exact)}`;
    return seen.has(key) ? false : seen.add(key);
  });
  return distinct.slice(0, MOST_EDGES).flatMap(({ label, edge, result }): Explanation => {
    const { customary } = edge;
    const terms = [...edge.terms.map(termOf), seamTerm(work.input)];
    const isEntered = work.fromCut !== null;
    const exact = isEntered ? result : lengthUp(edge.exact, work.input.cutStep);
    const step: Step = { label, formula: edge.formula, terms, result: exact, rule: GROWN };
    const isCustomaryUsed =
      !isEntered &&
      customary !== null &&
      work.input.rounding === 'customary' &&
      customary.exact >= edge.exact;
    if (!isCustomaryUsed) return [step];
    const customaryResult = { ...result, exact: customary.exact };
    return [
      step,
      {
        label: `${label}, customary`,
        formula: customary.formula,
        terms: edge.terms.map(termOf),
        result: customaryResult,
        rule: CUSTOMARY,
      },
    ];
  });
}

function perStripStep({ input }: PatchSizeWork, { patch, strip }: SizedPatch): Step {
  return {
    label: `${patch.name} from one strip`,
    formula: 'n = 1 + ⌊(U − a)/p⌋',
    terms: [
      givenTerm('U', 'usable width of the fabric', input.fabricWidth),
      term('a', 'length that the first takes', lengthUp(strip.first)),
      term('p', 'length that each one after it takes', lengthUp(strip.pitch)),
    ],
    result: countQuantity(patchesPerStrip(strip, input.fabricWidth), ['patch', 'patches']),
    rule: derived('Rounded down to whole patches.'),
  };
}

function termOf({ symbol, means, exact, isAngle }: CutEdge['terms'][number]): Term {
  const quantity = isAngle ? degreesQuantity(exact) : lengthNearest(exact);
  return { symbol, means, quantity };
}

function seamTerm({ seamAllowance }: PatchSizeWork['input']): Term {
  return givenTerm('s', 'seam allowance', seamAllowance);
}
