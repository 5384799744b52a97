import { outlineBounds } from '../outline/outline-measures';
import type { LengthQuantity, Quantity, Step } from '../explanation';
import {
  countQuantity,
  givenLength,
  lengthUp,
  numberQuantity,
  percentQuantity,
  sizeQuantity,
  yardageUp,
} from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { BackingInput } from './input';
import { outerPanelWidth, type PanelWay, wholePanels } from './work';

/** The rectangle to cut: the top's bounding rectangle with the overhang on every side, rounded up. */
export function backingSize({
  outline,
  overhang,
  cutStep,
}: BackingInput): Extract<Quantity, { kind: 'size' }> {
  const bounds = outlineBounds(outline);
  return sizeQuantity(
    lengthUp(bounds.width + 2 * overhang, cutStep),
    lengthUp(bounds.length + 2 * overhang, cutStep),
  );
}

/** With the extra, rounded up to what shops cut. */
export function fabricToBuy(
  { safetyExtraPercent, yardageStep }: BackingInput,
  { fabricLength }: PanelWay,
): Quantity {
  return yardageUp(fabricLength * (1 + safetyExtraPercent / 100), yardageStep);
}

export function backingSteps(input: BackingInput, best: PanelWay): readonly Step[] {
  const bounds = outlineBounds(input.outline);
  const cut = backingSize(input);
  return [
    sideStep({ label: 'Width of the backing', symbol: 'W', exact: bounds.width, result: cut.width }, input),
    sideStep(
      { label: 'Length of the backing', symbol: 'L', exact: bounds.length, result: cut.length },
      input,
    ),
    best.last === 'outer' ? outerStep(best, cut) : panelsStep(best, cut),
    ...matchSteps(input, best, cut),
    fabricStep(best),
    {
      label: 'Fabric to buy',
      formula: 'fabric × (1 + e), rounded up to what shops cut',
      terms: [
        givenTerm('fabric', 'needed', best.fabricLength),
        term('e', 'safety extra', percentQuantity(input.safetyExtraPercent)),
      ],
      result: fabricToBuy(input, best),
      rule: commonPractice('A little more than needed, rounded up to what shops cut.'),
    },
  ];
}

function sideStep(
  side: {
    readonly label: string;
    readonly symbol: string;
    readonly exact: number;
    readonly result: LengthQuantity;
  },
  { overhang }: BackingInput,
): Step {
  return {
    label: side.label,
    formula: `${side.symbol} + 2 × o`,
    terms: [
      term(side.symbol, 'side of the top', lengthUp(side.exact)),
      givenTerm('o', 'overhang on each side', overhang),
    ],
    result: side.result,
    rule: commonPractice('Backing and batting reach past the top on every side; the frame needs it.'),
  };
}

function panelsStep({ panelsRun, panels, fabric }: PanelWay, cut: ReturnType<typeof backingSize>): Step {
  const isUp = panelsRun === 'up';
  const span = isUp ? cut.width.rounded : cut.length.rounded;
  const exact = panels === 1 ? 1 : (span - 2 * fabric.seam) / (fabric.width - 2 * fabric.seam);
  return {
    label: 'Panels side by side',
    formula: '(D − 2s) ÷ (U − 2s), rounded up, at least one',
    terms: [
      givenTerm('D', isUp ? 'width to cover' : 'length to cover', span),
      givenTerm('U', 'usable width of the fabric', fabric.width),
      givenTerm('s', 'seam allowance on each panel', fabric.seam),
    ],
    result: countQuantity(exact, ['panel', 'panels'], 'up'),
    rule: derived('n panels reach nU less two seam allowances at each of the n − 1 joins.'),
  };
}

function outerStep(best: PanelWay, cut: ReturnType<typeof backingSize>): Step {
  const { panelsRun, fabric } = best;
  const span = panelsRun === 'up' ? cut.width.rounded : cut.length.rounded;
  const whole = wholePanels(best);
  return {
    label: 'Width of each outer panel',
    formula: '(D − m × U + 2 × (m + 1) × s) ÷ 2',
    terms: [
      givenTerm('D', panelsRun === 'up' ? 'width to cover' : 'length to cover', span),
      term('m', 'whole panels in the middle', numberQuantity(whole)),
      givenTerm('U', 'usable width of the fabric', fabric.width),
      givenTerm('s', 'seam allowance on each panel', fabric.seam),
    ],
    result: lengthUp(outerPanelWidth(span, whole, fabric), fabric.cutStep),
    rule: derived('A whole panel lies in the middle, so the rest is shared between the two sides.'),
  };
}

/** Whole repeats in the length of a panel, where the print is matched. */
function matchSteps(
  { printRepeat }: BackingInput,
  { panelsRun, panelLength }: PanelWay,
  cut: ReturnType<typeof backingSize>,
): readonly Step[] {
  if (printRepeat === 0) return [];
  const plain = panelsRun === 'up' ? cut.length.rounded : cut.width.rounded;
  const repeat = givenTerm('r', 'print repeat', printRepeat);
  const repeats = countQuantity(plain / printRepeat, ['repeat', 'repeats'], 'up');
  return [
    {
      label: 'Repeats in a panel',
      formula: 'P ÷ r, rounded up',
      terms: [givenTerm('P', 'length of a panel without matching', plain), repeat],
      result: repeats,
      rule: commonPractice('Every panel starts at the same place of the print, so it takes whole repeats.'),
    },
    {
      label: 'Length of a panel',
      formula: 'k × r',
      terms: [term('k', 'repeats in a panel', numberQuantity(repeats.rounded)), repeat],
      result: givenLength(panelLength),
      rule: derived('Trim the panels after they are joined.'),
    },
  ];
}

function fabricStep(best: PanelWay): Step {
  const label = 'Fabric needed';
  const panels = term('n', 'panels', countQuantity(best.panels, ['panel', 'panels']));
  const length = givenTerm('l', 'length of a panel', best.panelLength);
  const result = givenLength(best.fabricLength);
  if (best.last === 'whole') {
    const rule = derived('Every panel is cut from selvage to selvage.');
    return { label, formula: 'n × l', terms: [panels, length], result, rule };
  }
  if (best.last === 'outer') {
    const lengths = term('k', 'lengths of fabric', numberQuantity(best.fabricLength / best.panelLength));
    const rule = derived('Both outer panels come from one length of fabric where its width holds them.');
    return { label, formula: 'k × l', terms: [lengths, length], result, rule };
  }
  const rule = derived('The last panel is narrow, so it is joined from strips instead of a whole length.');
  if (best.last === 'along') {
    const strip = givenTerm('p', 'length of one strip', best.lastStripLength);
    return { label, formula: '(n − 1) × l + p', terms: [panels, length, strip], result, rule };
  }
  const strips = [
    term('k', 'strips', numberQuantity(best.lastStrips)),
    givenTerm('w', 'width of a strip', best.lastWidth),
  ];
  return { label, formula: '(n − 1) × l + k × w', terms: [panels, length, ...strips], result, rule };
}
