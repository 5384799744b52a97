import { outlineBounds } from '../outline/outline-measures';
import type { LengthQuantity, Quantity, Step } from '../explanation';
import {
  countQuantity,
  givenLength,
  lengthQuantity,
  numberQuantity,
  percentQuantity,
  sizeQuantity,
} from '../quantities';
import type { BackingInput } from './input';
import type { PanelWay } from './work';

/** The rectangle to cut: the top's bounding rectangle with the overhang on every side, rounded up. */
export function backingSize({
  outline,
  overhang,
  cutStep,
}: BackingInput): Extract<Quantity, { kind: 'size' }> {
  const bounds = outlineBounds(outline);
  const side = (exact: number) => lengthQuantity(exact + 2 * overhang, { step: cutStep, direction: 'up' });
  return sizeQuantity(side(bounds.width), side(bounds.length));
}

/** Fabric to buy: with the extra, up to what the shop sells. */
export function fabricToBuy(
  { safetyExtraPercent, yardageStep }: BackingInput,
  { fabricLength }: PanelWay,
): Quantity {
  const exact = fabricLength * (1 + safetyExtraPercent / 100);
  return lengthQuantity(exact, { step: yardageStep, direction: 'up', use: 'yardage' });
}

export function backingSteps(input: BackingInput, best: PanelWay): readonly Step[] {
  const bounds = outlineBounds(input.outline);
  const cut = backingSize(input);
  const isUp = best.panelsRun === 'up';
  const span = isUp ? cut.width.rounded : cut.length.rounded;
  const gain = best.fabric.width - 2 * best.fabric.seam;
  return [
    sideStep('Width of the backing', 'W', bounds.width, input, cut.width),
    sideStep('Length of the backing', 'L', bounds.length, input, cut.length),
    {
      label: 'Panels side by side',
      formula: '(D − 2s) ÷ (U − 2s), up to the next whole panel; one where U reaches D',
      terms: [
        { symbol: 'D', means: isUp ? 'width to cover' : 'length to cover', quantity: givenLength(span) },
        { symbol: 'U', means: 'usable width of the fabric', quantity: givenLength(best.fabric.width) },
        { symbol: 's', means: 'seam on each panel', quantity: givenLength(best.fabric.seam) },
      ],
      result: countQuantity(
        best.panels === 1 ? 1 : (span - 2 * best.fabric.seam) / gain,
        ['panel', 'panels'],
        'up',
      ),
      rule: { kind: 'derived', says: 'n panels reach nU less two seam allowances at each of n − 1 joins.' },
    },
    lastPanelStep(best),
    {
      label: 'Fabric to buy',
      formula: 'fabric × (1 + e), up to what the shop sells',
      terms: [
        { symbol: 'fabric', means: 'off the bolt', quantity: givenLength(best.fabricLength) },
        { symbol: 'e', means: 'safety extra', quantity: percentQuantity(input.safetyExtraPercent) },
      ],
      result: fabricToBuy(input, best),
      rule: {
        kind: 'common practice',
        says: 'A little more than needed, rounded up to what fabric is sold by.',
      },
    },
  ];
}

function sideStep(
  label: string,
  symbol: string,
  exact: number,
  input: BackingInput,
  result: LengthQuantity,
): Step {
  return {
    label,
    formula: `${symbol} + 2 × o`,
    terms: [
      { symbol, means: 'side of the top', quantity: lengthQuantity(exact, { direction: 'up' }) },
      { symbol: 'o', means: 'overhang on each side', quantity: givenLength(input.overhang) },
    ],
    result,
    rule: {
      kind: 'common practice',
      says: 'Backing and batting reach beyond the top on every side; the frame needs it.',
    },
  };
}

function lastPanelStep(best: PanelWay): Step {
  const panels = { symbol: 'n', means: 'panels', quantity: countQuantity(best.panels, ['panel', 'panels']) };
  const length = { symbol: 'l', means: 'length of a panel', quantity: givenLength(best.panelLength) };
  const result = givenLength(best.fabricLength);
  if (best.last === 'whole') {
    const rule = { kind: 'derived', says: 'Every panel is cut from selvage to selvage.' } as const;
    return { label: 'Fabric off the bolt', formula: 'n × l', terms: [panels, length], result, rule };
  }
  const isAlong = best.last === 'along';
  return {
    label: 'Fabric off the bolt',
    formula: isAlong ? '(n − 1) × l + p' : '(n − 1) × l + k × w',
    terms: [
      panels,
      length,
      ...(isAlong
        ? [{ symbol: 'p', means: 'length of one strip', quantity: givenLength(best.lastPieceLength) }]
        : [
            { symbol: 'k', means: 'strips', quantity: numberQuantity(best.lastPieces) },
            { symbol: 'w', means: 'width of a strip', quantity: givenLength(best.lastWidth) },
          ]),
    ],
    result,
    rule: {
      kind: 'derived',
      says: 'The last panel is narrow: it is joined from strips instead of a whole length.',
    },
  };
}
