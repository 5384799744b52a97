import { lengthFromExact } from '#core/units/length';
import type { Explanation, Quantity, Table } from '#core/calculators/explanation';
import {
  givenLength,
  lengthDown,
  lengthNearest,
  lengthQuantity,
  lengthUp,
} from '#core/calculators/quantities';
import { givenTerm } from '#core/calculators/working/terms';
import { type HoleSizeDetails, type HoleSizeInput, isMeasured, rulerRounding } from './input';

/** The ruler sizes on both sides of the exact one, and what each leaves beside the thing that goes through. */
export function rulerTable(asked: HoleSizeInput, { exactDiameter }: HoleSizeDetails): Table {
  const above = lengthFromExact(exactDiameter, 'up', asked.rulerStep);
  const through = isMeasured(asked) ? exactDiameter - asked.ease : exactDiameter;
  const sizes = [above - 2 * asked.rulerStep, above - asked.rulerStep, above, above + asked.rulerStep];
  return {
    title: 'Sizes of a circle ruler nearby',
    columns: ['Across', 'Radius', isMeasured(asked) ? 'Room on each side' : 'Against your size', 'Edge'],
    rows: sizes
      .filter((size) => size > 0)
      .map((size): readonly Quantity[] => [
        lengthNearest(size),
        lengthNearest(size / 2),
        lengthDown(isMeasured(asked) ? (size - through) / 2 : size - through),
        lengthUp(Math.PI * size),
      ]),
  };
}

/** From what was measured to the hole and the seam line of its binding. */
export function holeSizeSteps(asked: HoleSizeInput, details: HoleSizeDetails): Explanation {
  const ease = givenTerm('e', 'ease', asked.ease);
  const measured = {
    symbol: asked.from === 'around' ? 'C' : 'd',
    means: asked.from === 'around' ? 'measured around' : 'across',
    quantity: givenLength(asked.measure),
  };
  return [
    {
      label: 'Hole across',
      formula: asked.from === 'around' ? 'D = C ÷ π + e' : isMeasured(asked) ? 'D = d + e' : 'D = d',
      terms: isMeasured(asked) ? [measured, ease] : [measured],
      result: lengthQuantity(details.exactDiameter, rulerRounding(asked)),
      rule: isMeasured(asked)
        ? {
            kind: 'derived',
            says: 'What goes through, and room round it; rounded up to a size your ruler has.',
          }
        : { kind: 'common practice', says: 'Taken as it is given.' },
    },
    {
      label: 'Seam line of its binding',
      formula: 'π(D + 2s)',
      terms: [
        givenTerm('D', 'hole across', details.diameter),
        givenTerm('s', 'seam allowance', asked.seamAllowance),
      ],
      result: lengthUp(details.seamLine),
      rule: { kind: 'derived', says: 'The binding is stitched a seam outside the cut edge.' },
    },
  ];
}
