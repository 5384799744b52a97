import { wedgeWithAngle } from '../wedge-ring/work';
import type { LieFlatInput } from './input';

/** Ways to bring a tested half ring back to its straight line. One of them is enough. Lengths in 1/320 mm, not rounded. */
export interface Correction {
  /** Sewing all its seams again: by how much at one end, on each piece of fabric, running out to nothing at the other. */
  readonly seams: number;
  /** In radians: what one side of each seam has to turn. */
  readonly turn: number;
  /** At the end where the seam gets narrower enough of it is left. */
  readonly canBeNarrower: boolean;
  /** One new wedge for another of the half, with this angle in radians and these cut sides; null if none would do. */
  readonly newWedge: { readonly angle: number; readonly long: number; readonly short: number } | null;
  /** Trimming one open leg along the line: at its outer and at its inner end. Null for a gap. */
  readonly trim: { readonly outer: number; readonly inner: number } | null;
}

/** A seam made narrower keeps at least this part of its allowance (from memory). */
const PART_TO_KEEP = 1 / 2;

/** Angles in radians; what is missing is positive, what is too much negative. */
interface TestedHalf {
  /** Half the angle that a wedge should have. */
  readonly half: number;
  readonly wedgeAngle: number;
  readonly leg: number;
  readonly halfWedges: number;
  readonly halfMeasured: number;
}

export function correctionOf(input: LieFlatInput, tested: TestedHalf): Correction {
  const { leg, halfWedges, halfMeasured } = tested;
  const turn = Math.abs(halfMeasured) / (2 * (halfWedges - 1));
  const seams = leg * Math.tan(turn);
  const sewn = halfMeasured > 0 ? input.seamOuter : input.seamInner;
  return {
    turn,
    seams,
    canBeNarrower: sewn - seams >= PART_TO_KEEP * input.seamAllowance,
    newWedge: newWedgeOf(input, tested),
    trim: halfMeasured > 0 ? null : trimOf(input, tested),
  };
}

function newWedgeOf(input: LieFlatInput, { wedgeAngle, halfMeasured }: TestedHalf): Correction['newWedge'] {
  const angle = wedgeAngle + halfMeasured;
  if (angle <= 0 || angle >= Math.PI / 2) return null;
  const { cut } = wedgeWithAngle(input, angle / 2);
  return { angle, long: cut.long, short: cut.short };
}

/** Off the leg from its inner to its outer cut corner; the line that it is trimmed along runs through the middle of the ring. */
function trimOf(
  { innerRadius, outerRadius, seamAllowance: seam }: LieFlatInput,
  { half, halfMeasured }: TestedHalf,
): Correction['trim'] {
  const along = (radius: number) => radius / Math.cos(half) + seam * Math.tan(half);
  const off = Math.sin(Math.abs(halfMeasured));
  return { outer: along(outerRadius + seam) * off, inner: Math.max(0, along(innerRadius - seam)) * off };
}
