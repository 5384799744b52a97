import { seamCheck } from '#core/calculators/seam-check/seam-check';
import type { SeamCheckInput } from '#core/calculators/seam-check/input';
import { type Length, lengthFromInches } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';

const inches = lengthFromInches;

/** Blocks of three patches that are so much off in turn, with patches cut right. */
export function blocksOff(...offs: readonly number[]): Pick<SeamCheckInput, 'measured' | 'cutsAreRight'> {
  const size = inches(9.5);
  const measured = offs.map((off) => {
    return { size, seams: 2, patches: 3, end: 'along', found: inches(9.5 + off) } as const;
  });
  return { measured, cutsAreRight: true };
}

/** The same as a whole input, read to a tenth of a millimeter unless said. */
export function seamCheckOf(offs: readonly number[], readTo: Length = inches(1 / 254)): SeamCheckInput {
  return { ...seamCheck.fromProject(SAMPLE_MEASUREMENTS), ...blocksOff(...offs), readTo };
}
