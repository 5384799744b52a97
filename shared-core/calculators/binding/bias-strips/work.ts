import type { Point } from '#core/geometry/point';
import { smallestStep } from '../smallest-step';

/** A rectangle of fabric to be cut into strips at 45°; all in 1/320 mm. */
export interface BiasFabric {
  readonly width: number;
  readonly length: number;
  readonly strip: number;
  readonly seam: number;
  /** Strips shorter than this along their middle are not worth joining. */
  readonly shortest: number;
}

/** One strip as the parallelogram that is used of it, its ends on the straight grain ready for a diagonal join. */
export interface BiasStrip {
  readonly middle: number;
  readonly corners: readonly [Point, Point, Point, Point];
}

export interface BiasStripsLayout {
  /** The straight grain along which all ends are cut, so that every end fits every other. */
  readonly ends: 'across' | 'along';
  readonly strips: readonly BiasStrip[];
  /** Sum of the middles less the joins; 0 where no strip is long enough. */
  readonly joined: number;
}

/** What a join of two slanted ends costs along the middle: s√2 at either end. */
export function slantedJoinCost(seam: number): number {
  return 2 * seam * Math.SQRT2;
}

/**
 * The first cut runs at 45° from a corner, and strips are cut on both sides of it. A band between the lines x - y = c and
 * x - y = d, with d - c = w√2, holds a parallelogram whose ends lie across the fabric (y constant) or along it (x constant);
 * the way that gives more in all is taken.
 */
export function layBiasStrips(fabric: BiasFabric): BiasStripsLayout {
  const [across, along] = [layWithEnds(fabric, 'across'), layWithEnds(fabric, 'along')];
  return along.joined > across.joined ? along : across;
}

function layWithEnds(fabric: BiasFabric, ends: 'across' | 'along'): BiasStripsLayout {
  const strips = [...bandsOnOneSide(fabric, ends, -1).reverse(), ...bandsOnOneSide(fabric, ends, 1)];
  const sum = strips.reduce((so, { middle }) => so + middle, 0);
  const joins = Math.max(0, strips.length - 1) * slantedJoinCost(fabric.seam);
  return { ends, strips, joined: sum - joins };
}

/** Bands only grow shorter away from the first cut, so the first that is too short is the last looked at. */
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

/** The band from x - y = `from` to x - y = `to`; its middle is negative where nothing fits. */
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

/** Joined length with both ends cut square, which takes half a strip's width at either end. */
export function squaredStripsLength(layout: BiasStripsLayout, strip: number): number {
  return Math.max(0, layout.joined - strip);
}

/** Shortest length of fabric of the given width, in whole steps up to `longest`, whose strips reach `needed`. */
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
