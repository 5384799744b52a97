import { UNITS_PER_INCH } from '#core/units/length';

/** A seam to be sewn with a lockstitch; lengths in 1/320 mm, whole or not. */
export interface LockstitchSeam {
  readonly seamLength: number;
  readonly factor: number;
  readonly wastePercent: number;
  readonly stitchLength: number;
  readonly thickness: number;
}

/** In 1/320 mm before rounding, with waste. `factor` is the thread for one length of seam. */
export interface ThreadUse {
  readonly factor: number;
  readonly total: number;
  readonly needle: number;
  readonly bobbin: number;
}

/**
 * The same seam by two methods: by the factor of the stitch type, and by stitch length and thickness. `enough` is the one that
 * takes more, because thread that runs out stops the work.
 */
export interface ThreadByMethod {
  readonly byFactor: ThreadUse;
  readonly byStitch: ThreadUse;
  readonly enough: ThreadUse;
}

export function threadUse(input: LockstitchSeam): ThreadByMethod {
  const stitchesPerInch = UNITS_PER_INCH / input.stitchLength;
  const factorByStitch = 2 + 2 * (input.thickness / UNITS_PER_INCH) * stitchesPerInch;
  const byFactor = useOf(input, input.factor);
  const byStitch = useOf(input, factorByStitch);
  return { byFactor, byStitch, enough: byStitch.total > byFactor.total ? byStitch : byFactor };
}

/** A balanced lockstitch takes half from the needle and half from the bobbin. */
function useOf({ seamLength, wastePercent }: LockstitchSeam, factor: number): ThreadUse {
  const total = seamLength * factor * (1 + wastePercent / 100);
  return { factor, total, needle: total / 2, bobbin: total / 2 };
}
