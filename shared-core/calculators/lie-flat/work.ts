import { roundDownTo, roundNearest } from '#core/units/rounding';
import { angleForFullness, coneRise, waveHeight } from './cone';
import { type Correction, correctionOf } from './correction';
import type { LieFlatInput } from './input';

/** Lengths in 1/320 mm and angles in radians, neither rounded. An angle that is missing is positive, one too much negative. */
export interface LieFlatWork {
  /** Half the angle that a wedge should have. */
  readonly half: number;
  /** The angle of a wedge as cut. */
  readonly wedgeAngle: number;
  /** Along the seam line of a finished wedge. */
  readonly leg: number;
  /** From the middle of the ring to the inner end of a leg. */
  readonly legStart: number;
  /** By how much a seam is wider than meant on one piece of fabric, at either end. */
  readonly innerOff: number;
  readonly outerOff: number;
  /** What one side of a seam takes from the angle of its wedge. */
  readonly turn: number;
  readonly lostByCutting: number;
  readonly lostBySeams: number;
  /** How far the seams move the ring toward its middle. */
  readonly movedIn: number;
  /** Wedges in the half that is tested: the smaller one of an odd number. */
  readonly halfWedges: number;
  /** What is missing from that half by the seams and the cut, without its open legs. */
  readonly halfExpected: number;
  /** From the middle to the outer end of an open leg, at the cut edge. */
  readonly legEnd: number;
  /** What is missing from the half by the test; null without one. */
  readonly halfMeasured: number | null;
  /** What is missing from the ring: by the test if there is one. */
  readonly missing: number;
  readonly flatness: Flatness;
  readonly limits: Limits;
  /** Null without a test, or if the half is right. */
  readonly correction: Correction | null;
}

type Flatness =
  | { readonly shape: 'flat' }
  | {
      readonly shape: 'cup';
      readonly middle: number;
      readonly innerEdge: number;
      readonly isTakenUp: boolean;
    }
  | {
      readonly shape: 'ruffle';
      /** How much longer the outer edge is than a flat one. */
      readonly extraEdge: number;
      /** From low to high, in two, three and four waves. */
      readonly waves: readonly { readonly count: number; readonly height: number }[];
      readonly isTakenUp: boolean;
    };

interface Limits {
  /** What may be missing from the ring. */
  readonly angle: number;
  /** What one side of a seam may take from its wedge. */
  readonly turn: number;
  /** By how much one side of a seam may be wider at one end than at the other. */
  readonly taper: number;
  /** In the middle, where it cups. */
  readonly rise: number;
  /** From low to high in two waves, where it ruffles. */
  readonly wave: number;
}

/** Less than this is no error: it lifts the middle of a ring 60 in across by about 1/16 in. In radians. */
const NOTHING = Math.PI / 180 / 1_000;

/** The input must have an outer radius larger than its inner one. */
export function workOutLieFlat(input: LieFlatInput): LieFlatWork {
  const ring = ringOf(input);
  const { wedges, halfRing } = input;
  const halfWedges = roundDownTo(wedges / 2, 1);
  const lostByCutting = 2 * Math.PI - wedges * ring.wedgeAngle;
  const lostBySeams = 2 * wedges * ring.turn;
  const halfExpected = (halfWedges * lostByCutting) / wedges + 2 * (halfWedges - 1) * ring.turn;
  const legEnd =
    (input.outerRadius + input.seamAllowance) / Math.cos(ring.half) +
    input.seamAllowance * Math.tan(ring.half);
  const halfMeasured = halfRing.found === 'not-yet' ? null : measuredAngle(halfRing, legEnd);
  const missing = halfMeasured === null ? lostByCutting + lostBySeams : (halfMeasured * wedges) / halfWedges;
  return {
    ...ring,
    lostByCutting,
    lostBySeams,
    movedIn: movedIn(ring),
    halfWedges,
    halfExpected,
    legEnd,
    halfMeasured,
    missing,
    flatness: flatnessOf(input, missing),
    limits: limitsOf(input, ring.leg),
    correction:
      halfMeasured === null || Math.abs(halfMeasured) < NOTHING
        ? null
        : correctionOf(input, { ...ring, halfWedges, halfMeasured }),
  };
}

/** As many wedges like these come nearest to a full circle. Less than a full circle may be missing. */
export function wedgesThatFit(wedges: number, missing: number): number {
  return roundNearest((2 * Math.PI * wedges) / (2 * Math.PI - missing), 1);
}

type Ring = Pick<LieFlatWork, 'half' | 'wedgeAngle' | 'leg' | 'legStart' | 'innerOff' | 'outerOff' | 'turn'>;

function ringOf(input: LieFlatInput): Ring {
  const half = Math.PI / input.wedges;
  const leg = (input.outerRadius - input.innerRadius) / Math.cos(half);
  const [innerOff, outerOff] = [input.seamInner - input.seamAllowance, input.seamOuter - input.seamAllowance];
  return {
    half,
    wedgeAngle: wedgeAngleOf(input),
    leg,
    legStart: input.innerRadius / Math.cos(half),
    innerOff,
    outerOff,
    turn: seamTurn(outerOff - innerOff, leg),
  };
}

/** The angle by which a seam line turns that is `taper` farther from its place at one end of its length than at the other. */
export function seamTurn(taper: number, leg: number): number {
  return Math.atan(taper / leg);
}

function wedgeAngleOf({ wedges, cutWedge }: LieFlatInput): number {
  switch (cutWedge.known) {
    case 'right':
      return (2 * Math.PI) / wedges;
    case 'angle':
      return (cutWedge.angle * Math.PI) / 180;
    case 'sides':
      return 2 * Math.atan((cutWedge.long - cutWedge.short) / 2 / cutWedge.height);
  }
}

/**
 * Where the sewn leg of a wedge meets the middle line of that wedge, as a distance from where it should. With an even error e and
 * half the angle t it is e ÷ sin t; a leg that also turns meets the line elsewhere.
 */
function movedIn({ innerOff, legStart, turn, half }: Ring): number {
  return (innerOff - legStart * Math.tan(turn)) / (Math.sin(half) - Math.cos(half) * Math.tan(turn));
}

/** `off` at the outer end of the leg, as an angle; a gap is an angle that is missing. */
function measuredAngle(
  { found, off }: { readonly found: 'gap' | 'overlap'; readonly off: number },
  legEnd: number,
): number {
  const angle = Math.asin(Math.min(1, off / legEnd));
  return found === 'gap' ? angle : -angle;
}

function flatnessOf({ innerRadius, outerRadius, fullness }: LieFlatInput, missing: number): Flatness {
  const amount = Math.abs(missing);
  if (amount < NOTHING) return { shape: 'flat' };
  const isTakenUp = amount <= angleForFullness(fullness / 100);
  if (missing > 0) {
    const rise = (reach: number) => coneRise(reach, Math.min(amount, 2 * Math.PI));
    return { shape: 'cup', middle: rise(outerRadius), innerEdge: rise(outerRadius - innerRadius), isTakenUp };
  }
  const waves = [2, 3, 4].map((count) => ({ count, height: waveHeight(outerRadius, amount, count) }));
  return { shape: 'ruffle', extraEdge: outerRadius * amount, waves, isTakenUp };
}

/** Cut and seams share the limit: an error of either turns a leg the same way. */
function limitsOf({ wedges, outerRadius, fullness }: LieFlatInput, leg: number): Limits {
  const angle = angleForFullness(fullness / 100);
  const turn = angle / (2 * wedges);
  return {
    angle,
    turn,
    taper: leg * Math.tan(turn),
    rise: coneRise(outerRadius, angle),
    wave: waveHeight(outerRadius, angle, 2),
  };
}
