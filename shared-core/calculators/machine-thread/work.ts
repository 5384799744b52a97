import { UNITS_PER_INCH } from '#core/units/length';
import type { Quantity, Step } from '../explanation';
import { givenLength, lengthQuantity, numberQuantity, percentQuantity } from '../quantities';
import type { MachineThreadInput } from './input';

/** In 1/320 mm before rounding, waste included; `factor` is thread for one length of seam. */
export interface ThreadUse {
  readonly factor: number;
  readonly total: number;
  readonly needle: number;
  readonly bobbin: number;
}

/** By the factor of the stitch type, and by stitch length and thickness; a balanced lockstitch takes half from each side. */
export function threadUse(input: MachineThreadInput): {
  readonly byFactor: ThreadUse;
  readonly byStitch: ThreadUse;
} {
  const stitchesPerInch = UNITS_PER_INCH / input.stitchLength;
  const byStitch = 2 + 2 * (input.thickness / UNITS_PER_INCH) * stitchesPerInch;
  return { byFactor: useOf(input, input.factor), byStitch: useOf(input, byStitch) };
}

function useOf({ seamLength, wastePercent }: MachineThreadInput, factor: number): ThreadUse {
  const total = seamLength * factor * (1 + wastePercent / 100);
  return { factor, total, needle: total / 2, bobbin: total / 2 };
}

export function threadSteps(
  input: MachineThreadInput,
  { byFactor, byStitch }: ReturnType<typeof threadUse>,
  bobbins: Quantity,
): readonly Step[] {
  const thread = (exact: number) => lengthQuantity(exact, { direction: 'up', use: 'yardage' });
  return [
    {
      label: 'Thread in all',
      formula: 'S × f × (1 + e)',
      terms: [
        { symbol: 'S', means: 'length of seam', quantity: givenLength(input.seamLength) },
        { symbol: 'f', means: 'thread for one length of seam', quantity: numberQuantity(input.factor) },
        { symbol: 'e', means: 'waste', quantity: percentQuantity(input.wastePercent) },
      ],
      result: thread(byFactor.total),
      rule: {
        kind: 'published',
        says: 'A lockstitch (stitch type 301) takes 2.5 times its seam: Carr and Latham, Technology of Clothing Manufacture.',
      },
    },
    {
      label: 'From the bobbin',
      formula: 'thread ÷ 2',
      terms: [{ symbol: 'thread', means: 'in all', quantity: thread(byFactor.total) }],
      result: thread(byFactor.bobbin),
      rule: {
        kind: 'common practice',
        says: 'A balanced lockstitch takes as much from the bobbin as from the needle.',
      },
    },
    {
      label: 'Bobbins to wind',
      formula: 'B ÷ h, up to the next whole bobbin',
      terms: [
        { symbol: 'B', means: 'from the bobbin', quantity: thread(byFactor.bobbin) },
        { symbol: 'h', means: 'thread on one bobbin', quantity: givenLength(input.bobbinHolds) },
      ],
      result: bobbins,
      rule: { kind: 'derived', says: 'A bobbin begun counts as one.' },
    },
    {
      label: 'The other way to reckon the factor',
      formula: '2 + 2 × T × N',
      terms: [
        { symbol: 'T', means: 'thickness of the seam', quantity: givenLength(input.thickness) },
        {
          symbol: 'N',
          means: 'stitches an inch',
          quantity: numberQuantity(UNITS_PER_INCH / input.stitchLength),
        },
      ],
      result: numberQuantity(byStitch.factor),
      rule: {
        kind: 'published',
        says: 'Thread runs along both faces and through the fabric at each stitch, T in inches: course problems, textilecalculation 2015.',
      },
    },
  ];
}
