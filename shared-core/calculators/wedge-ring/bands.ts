import { type Length, lengthAdd, lengthFromExact, lengthFromUnits, LENGTH_ZERO } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';
import type { WedgeRingInput } from './input';

/** One band of the wedges, from the inner edge outward. */
interface BandStrip {
  readonly fabric: string;
  readonly finished: Length;
  /** Cut width of its strip, rounded up to the cut step. */
  readonly cut: Length;
}

/** Strips sewn side by side, from which the wedges are cut across all bands. */
export interface StripSet {
  readonly bands: readonly BandStrip[];
  /** As sewn, with a seam allowance at both edges. */
  readonly height: Length;
}

/** What the bands are short of the wedge, finished; below zero if they are too wide. 0 without bands. */
export function bandsShort({ bands, innerRadius, outerRadius }: WedgeRingInput): number {
  return bands.length === 0 ? 0 : outerRadius - innerRadius - widthOf(bands);
}

function widthOf(bands: WedgeRingInput['bands']): Length {
  return lengthAdd(LENGTH_ZERO, ...bands.map(({ width }) => width));
}

/**
 * What a band's strip takes beside its seams: the innermost one what arcs need, the outermost one what the bands are short by less
 * than a step. Below zero if they are too wide.
 */
export function bandAllowance(input: WedgeRingInput, index: number, frameHeight: number): number {
  const forArcs = frameHeight - (input.outerRadius - input.innerRadius) - 2 * input.seamAllowance;
  const atInner = index === 0 ? forArcs : 0;
  return atInner + (index === input.bands.length - 1 ? bandsShort(input) : 0);
}

/** The strips of a set for a wedge whose cut frame has this height; null without bands. */
export function stripSetOf(input: WedgeRingInput, frameHeight: number): StripSet | null {
  const { bands, seamAllowance: seam, cutStep } = input;
  if (bands.length === 0) return null;
  const strips = bands.map(({ fabric, width }, index): BandStrip => {
    const exact = width + 2 * seam + bandAllowance(input, index, frameHeight);
    return { fabric, finished: width, cut: lengthFromExact(exact, 'up', cutStep) };
  });
  const sewn = lengthAdd(LENGTH_ZERO, ...strips.map(({ cut }) => cut)) - 2 * seam * (strips.length - 1);
  return { bands: strips, height: lengthFromUnits(sewn) };
}

/** One way to cut the sets: how many sets, and how many wedges have their bands in order and reversed. */
export interface SetWay {
  readonly way: 'both-orders' | 'same-way-up' | 'second-ring';
  readonly perSet: number;
  readonly sets: number;
  readonly inOrder: number;
  readonly reversed: number;
}

/** The wedges that one set gives. Head to tail, every second wedge has its inner band outside. */
export interface WedgesOfSet {
  readonly oneWay: number;
  readonly headToTail: number;
}

/** Every way to get a ring of this many wedges. A set must give at least one wedge. */
export function setWays(wedges: number, { oneWay, headToTail }: WedgesOfSet): readonly SetWay[] {
  const upright = roundUpTo(headToTail / 2, 1);
  const turned = headToTail - upright;
  const setsFor = (perSet: number) => roundUpTo(wedges / perSet, 1);
  const both = setsFor(headToTail);
  const second = setsFor(upright);
  const plain: SetWay = {
    way: 'same-way-up',
    perSet: oneWay,
    sets: setsFor(oneWay),
    inOrder: setsFor(oneWay) * oneWay,
    reversed: 0,
  };
  if (turned === 0) return [plain];
  return [
    { way: 'both-orders', perSet: headToTail, sets: both, inOrder: both * upright, reversed: both * turned },
    plain,
    {
      way: 'second-ring',
      perSet: headToTail,
      sets: second,
      inOrder: second * upright,
      reversed: second * turned,
    },
  ];
}
