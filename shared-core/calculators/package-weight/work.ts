import { assertNever } from '#core/assert-never';
import { circleArea, circlePerimeter } from '#core/geometry/circle';
import { GRAMS_PER_POUND } from '#core/units/format-weight';
import { type Length, UNITS_PER_INCH, UNITS_PER_MILLIMETER } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';
import type { LengthQuantity } from '../explanation';
import { outlineArea } from '../outline/outline-inset';
import { outlineBounds, outlinePerimeter, outlineSlit } from '../outline/outline-measures';
import { lengthUp } from '../quantities';
import { gramsOf } from '../weight-fields';
import type { PackageWeightInput } from './input';

/** What the finished piece weighs, in grams before rounding, and the areas behind it in (1/320 mm)². */
interface PieceWeight {
  readonly area: number;
  readonly bindingArea: number;
  readonly topGrams: number;
  readonly layersGrams: number;
  readonly bindingGrams: number;
  readonly pieceGrams: number;
}

/** Three sides, the longest first. */
interface Box {
  readonly sides: readonly [LengthQuantity, LengthQuantity, LengthQuantity];
  readonly girth: number;
  readonly lengthAndGirth: number;
}

export interface PackageDetails extends PieceWeight {
  readonly packageGrams: number;
  /** As folded, in 1/320 mm. */
  readonly folded: { readonly width: number; readonly length: number; readonly thickness: number };
  readonly box: Box;
  /** In the pounds or kilograms of the carrier; null where it goes by weight alone. */
  readonly byVolume: number | null;
  /** The larger of weight and weight by volume, and the same rounded up, both in the carrier's unit. */
  readonly larger: number;
  readonly charged: number;
}

export interface CarrierUnit {
  readonly side: number;
  readonly grams: number;
  readonly sideName: string;
  readonly weightName: string;
}

export function carrierUnit({ boxUnits }: PackageWeightInput): CarrierUnit {
  switch (boxUnits) {
    case 'inches-and-pounds':
      return { side: UNITS_PER_INCH, grams: GRAMS_PER_POUND, sideName: 'inches', weightName: 'pounds' };
    case 'centimeters-and-kilograms':
      return {
        side: 10 * UNITS_PER_MILLIMETER,
        grams: 1_000,
        sideName: 'centimeters',
        weightName: 'kilograms',
      };
    default:
      return assertNever(boxUnits);
  }
}

/** Null where the hole leaves nothing of the piece. */
export function workOutPackage(input: PackageWeightInput): PackageDetails | null {
  const piece = pieceWeight(input);
  if (piece === null) return null;
  const unit = carrierUnit(input);
  const packageGrams = piece.pieceGrams + input.packing;
  const folded = foldedSize(input);
  const box = boxAround(folded, input.boxRoom, unit);
  const byVolume = input.divisor === 0 ? null : volumeIn(box, unit) / input.divisor;
  const larger = Math.max(packageGrams / unit.grams, byVolume ?? 0);
  const charged = roundUpTo(larger, input.chargedStep);
  return { ...piece, packageGrams, folded, box, byVolume, larger, charged };
}

/** The top with the fabric in its seams, backing and batting of the same size, the binding, and what else is sewn on. */
function pieceWeight(input: PackageWeightInput): PieceWeight | null {
  const { outline, hole, hasSlit, stripWidth } = input;
  const slit = hole === null ? 0 : outlineSlit(outline, hole);
  const area = outlineArea(outline) - (hole === null ? 0 : circleArea(hole.diameter / 2));
  if (area <= 0 || (hole !== null && slit <= 0)) return null;
  const around = hole === null ? 0 : circlePerimeter(hole.diameter / 2);
  const bindingArea = (outlinePerimeter(outline) + around + (hasSlit ? 2 * slit : 0)) * stripWidth;
  const topGrams = gramsOf(area, input.fabricWeight) * (1 + input.seamExtraPercent / 100);
  const layersGrams = gramsOf(area, input.backingWeight + input.battingWeight);
  const bindingGrams = gramsOf(bindingArea, input.fabricWeight);
  const pieceGrams = topGrams + layersGrams + bindingGrams + input.other;
  return { area, bindingArea, topGrams, layersGrams, bindingGrams, pieceGrams };
}

function foldedSize({ outline, partsAcross, partsAlong, layerThickness }: PackageWeightInput) {
  const bounds = outlineBounds(outline);
  return {
    width: bounds.width / partsAcross,
    length: bounds.length / partsAlong,
    thickness: partsAcross * partsAlong * layerThickness,
  };
}

function boxAround(
  { width, length, thickness }: PackageDetails['folded'],
  room: Length,
  unit: CarrierUnit,
): Box {
  const around = (side: number) => lengthUp(side + 2 * room, unit.side);
  const sides = [around(width), around(length), around(thickness)] as const;
  const [long, middle, short] = sides.toSorted(
    (one, other) => other.exact - one.exact,
  ) as unknown as Box['sides'];
  const girth = 2 * (middle.rounded + short.rounded);
  return { sides: [long, middle, short], girth, lengthAndGirth: long.rounded + girth };
}

/** In cubic inches or centimeters, of the whole sides. */
function volumeIn({ sides }: Box, { side }: CarrierUnit): number {
  return sides.reduce((product, { rounded }) => product * (rounded / side), 1);
}
