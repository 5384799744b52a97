import type { Point } from '#core/geometry/point';
import { smallestStep } from '../smallest-step';

/** A rectangle of fabric to cut into strips at 45°. In 1/320 mm. */
export interface BiasFabric {
  readonly width: number;
  readonly length: number;
  readonly strip: number;
  readonly seam: number;
  /** A strip shorter than this along its middle is not counted. */
  readonly shortest: number;
}

/** One strip, trimmed to a parallelogram whose ends are on the straight grain, ready for a diagonal join. */
interface BiasStrip {
  readonly middle: number;
  readonly corners: readonly [Point, Point, Point, Point];
}

export interface BiasStripsLayout {
  /** All ends are cut along the same straight grain, so any two strips can be joined. */
  readonly ends: 'across' | 'along';
  readonly strips: readonly BiasStrip[];
  /** Sum of the middles less the joins; 0 when no strip is long enough. */
  readonly joined: number;
}

/** Length that a join of two slanted ends takes along the middle: s√2 from each strip. */
export function slantedJoinCost(seam: number): number {
  return 2 * seam * Math.SQRT2;
}

/**
 * The first cut runs at 45° from a corner; strips are cut on both sides of it. A band between the lines x - y = c and x - y = d,
 * with d - c = w√2, holds a parallelogram whose ends run across the fabric (y constant) or along it (x constant). Takes the
 * direction that gives more strip.
 */
export function layBiasStrips(fabric: BiasFabric): BiasStripsLayout {
  const [across, along] = [layWithEnds(fabric, 'across'), layWithEnds(fabric, 'along')];
  return along.joined > across.joined ? along : across;
}

function layWithEnds(fabric: BiasFabric, ends: 'across' | 'along'): BiasStripsLayout {
  const strips = [...bandsOnOneSide(fabric, ends, -1).reverse(), ...bandsOnOneSide(fabric, ends, 1)];
  const sum = strips.reduce((total, { middle }) => total + middle, 0);
  const joins = Math.max(0, strips.length - 1) * slantedJoinCost(fabric.seam);
  return { ends, strips, joined: sum - joins };
}

/** Bands only get shorter away from the first cut, so the search stops at the first that is too short. */
function bandsOnOneSide(fabric: BiasFabric, ends: 'across' | 'along', side: 1 | -1): BiasStrip[] {
  const step = fabric.strip * Math.SQRT2;
  const strips: BiasStrip[] = [];
  for (let index = 0; index * step < fabric.width + fabric.length; index += 1) {
    const start = side === 1 ? index * step : -(index + 1) * step;
    const strip = parallelogramInBand(fabric, ends, start, start + step);
    if (strip.middle < Math.max(fabric.shortest, slantedJoinCost(fabric.seam))) break;
    strips.push(strip);
  }
  return strips;
}

/** The band from x - y = `from` to x - y = `to`. Its middle is negative when nothing fits. */
function parallelogramInBand(
  { width, length }: BiasFabric,
  ends: 'across' | 'along',
  from: number,
  to: number,
): BiasStrip {
  if (ends === 'across') {
    const [low, high] = [Math.max(0, -from), Math.min(length, width - to)];
    const at = (y: number, line: number): Point => ({ x: y + line, y });
    return {
      middle: (high - low) * Math.SQRT2,
      corners: [at(low, from), at(high, from), at(high, to), at(low, to)],
    };
  }
  const [low, high] = [Math.max(0, to), Math.min(width, length + from)];
  const at = (x: number, line: number): Point => ({ x, y: x - line });
  return {
    middle: (high - low) * Math.SQRT2,
    corners: [at(low, from), at(high, from), at(high, to), at(low, to)],
  };
}

/** Joined length with both ends cut square, which takes half a strip width at each end. */
export function squaredStripsLength(layout: BiasStripsLayout, strip: number): number {
  return Math.max(0, layout.joined - strip);
}

/** Shortest length of fabric, in whole steps up to `longest`, whose strips reach `needed`. */
export function biasFabricLength(
  fabric: Omit<BiasFabric, 'length'>,
  need: { readonly needed: number; readonly step: number; readonly longest: number },
): number | null {
  const isEnough = (length: number) =>
    squaredStripsLength(layBiasStrips({ ...fabric, length }), fabric.strip) >= need.needed;
  return smallestStep(isEnough, need.step, need.longest);
}

/** Smallest square, in whole steps up to `largest`, whose strips reach `needed`. */
export function biasSquareSide(
  fabric: Omit<BiasFabric, 'length' | 'width'>,
  need: { readonly needed: number; readonly step: number; readonly largest: number },
): number | null {
  const isEnough = (side: number) =>
    squaredStripsLength(layBiasStrips({ ...fabric, width: side, length: side }), fabric.strip) >= need.needed;
  return smallestStep(isEnough, need.step, need.largest);
}
