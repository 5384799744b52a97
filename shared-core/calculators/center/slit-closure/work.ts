import { assertNever } from '#core/assert-never';
import { failure, type Result, success } from '#core/result';
import type { Length } from '#core/units/length';
import { roundDownTo, roundUpTo } from '#core/units/rounding';
import { stripsNeeded } from '#core/calculators/binding/strip-joins';
import type { Refusal } from '#core/calculators/calculator';
import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { lengthUp } from '#core/calculators/quantities';
import type { Closing, SlitClosureInput } from './input';
import { noRoom, overlapTooNarrow, stripsTooShort, tieTooLong, tooClose, TOO_MANY } from './refusals';

/** What is cut for a closing. Lengths in 1/320 mm. */
type ClosingParts =
  | {
      readonly with: 'ties';
      readonly cutWidth: Length;
      readonly cutLength: Length;
      readonly ties: number;
      readonly perStrip: number;
      readonly strips: number;
      readonly fabric: number;
      readonly fabricToBuy: Length;
    }
  | {
      readonly with: 'buttons-and-loops';
      /** Finished, from the binding around the button and back. */
      readonly loop: number;
      readonly cutLength: Length;
      /** Of all loops. */
      readonly cord: number;
      /** From the edge of the other side to the middle of the button. */
      readonly buttonIn: number;
    }
  | { readonly with: 'buttons-and-buttonholes'; readonly buttonhole: number }
  | { readonly with: 'snaps' };

/** Half of it, folded, is the overlap; its cut edges go into the seam of the binding. */
export interface Flap {
  readonly cutWidth: Length;
  readonly cutLength: Length;
  readonly strips: number;
  readonly fabric: number;
  readonly fabricToBuy: Length;
}

export interface SlitClosureDetails {
  readonly places: number;
  /** From one place to the next, before rounding; 0 with one place. */
  readonly pitch: number;
  /** From the outer edge to each place, before rounding: errors of rounding don't add up. */
  readonly positions: readonly number[];
  readonly parts: ClosingParts;
  readonly flap: Flap | null;
}

const MOST_PLACES = 200;

export function planSlitClosure(input: SlitClosureInput): Result<SlitClosureDetails, Refusal> {
  const span = spanOf(input);
  if (span < 0) return failure(noRoom(input));
  const gaps = roundUpTo(span / input.apart, 1);
  if (gaps >= MOST_PLACES) return failure(TOO_MANY);
  const places = gaps + 1;
  const pitch = gaps === 0 ? 0 : span / gaps;
  const size = sizeOf(input.closing);
  if (gaps > 0 && pitch < size) return failure(tooClose(size, pitch));
  const parts = partsOf(input, places);
  if (!parts.ok) return parts;
  const flap = flapOf(input);
  if (!flap.ok) return flap;
  const positions = Array.from({ length: places }, (_, index) => input.first + index * pitch);
  return success({ places, pitch, positions, parts: parts.value, flap: flap.value });
}

export function spanOf({ slit, first, last }: SlitClosureInput): number {
  return slit - first - last;
}

/** What one place takes along the slit. */
export function sizeOf(closing: Closing): Length {
  switch (closing.with) {
    case 'ties':
      return closing.tieWidth;
    case 'buttons-and-loops':
    case 'buttons-and-buttonholes':
      return closing.buttonAcross;
    case 'snaps':
      return closing.snapAcross;
    default:
      return assertNever(closing);
  }
}

function partsOf(input: SlitClosureInput, places: number): Result<ClosingParts, Refusal> {
  const { closing, overlap } = input;
  switch (closing.with) {
    case 'ties':
      return tiesOf(input, closing, places);
    case 'buttons-and-loops': {
      const loop = 2 * (closing.buttonAcross + closing.buttonThickness) + closing.loopEase;
      const cutLength = lengthUp(loop + 2 * input.seamAllowance, input.cutStep).rounded;
      return success({
        with: closing.with,
        loop,
        cutLength,
        cord: places * cutLength,
        buttonIn: loop / 2,
      });
    }
    case 'buttons-and-buttonholes': {
      if (overlap < closing.buttonAcross) return failure(overlapTooNarrow(overlap, closing.buttonAcross));
      return success({
        with: closing.with,
        buttonhole: closing.buttonAcross + closing.buttonThickness,
      });
    }
    case 'snaps':
      return overlap < closing.snapAcross
        ? failure(overlapTooNarrow(overlap, closing.snapAcross))
        : success({ with: closing.with });
    default:
      return assertNever(closing);
  }
}

/** Two ties at each place, cut across the fabric from strips that lie one below the other. */
function tiesOf(
  input: SlitClosureInput,
  { tieWidth, tieLength, endFold }: Extract<Closing, { with: 'ties' }>,
  places: number,
): Result<ClosingParts, Refusal> {
  const cutWidth = lengthUp(4 * tieWidth, input.cutStep).rounded;
  const cutLength = lengthUp(tieLength + endFold + input.seamAllowance, input.cutStep).rounded;
  const perStrip = roundDownTo(input.fabricWidth / cutLength, 1);
  if (perStrip === 0) return failure(tieTooLong(input, cutLength));
  const ties = 2 * places;
  const strips = roundUpTo(ties / perStrip, 1);
  const fabric = strips * cutWidth;
  const bought = fabricToBuy(input, fabric).rounded;
  return success({ with: 'ties', cutWidth, cutLength, ties, perStrip, strips, fabric, fabricToBuy: bought });
}

function flapOf(input: SlitClosureInput): Result<Flap | null, Refusal> {
  const { overlap, seamAllowance, slit, cutStep } = input;
  if (overlap === 0) return success(null);
  const cutWidth = lengthUp(2 * overlap + 2 * seamAllowance, cutStep).rounded;
  const cutLength = lengthUp(slit + 2 * seamAllowance, cutStep).rounded;
  const strips = stripsNeeded(cutLength, input.fabricWidth, 2 * seamAllowance);
  if (strips === null || strips > MOST_PLACES) return failure(stripsTooShort(input));
  const fabric = strips * cutWidth;
  return success({ cutWidth, cutLength, strips, fabric, fabricToBuy: fabricToBuy(input, fabric).rounded });
}
