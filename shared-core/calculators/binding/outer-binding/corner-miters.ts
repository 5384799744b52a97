/**
 * A mitered corner of a bound edge with inner angle α, in degrees. The seam runs s inside the edge, so at an outer corner it
 * ends s·cot(α/2) before the corner on either side; that much strip on either side, folded up and back, is the miter, and no
 * more raw edge than the edge itself is used. At an inner corner (α over 180°) the seam is longer than the edge instead.
 */
export function stitchStopBefore(angleDegrees: number, seam: number): number {
  return angleDegrees < 180 ? seam / Math.tan(radians(angleDegrees) / 2) : 0;
}

/** Strip needed beyond the length of the edge: none at an outer corner, 2s·tan((α - 180°)/2) at an inner one. */
export function cornerExtra(angleDegrees: number, seam: number): number {
  return 2 * seam * Math.max(0, Math.tan(radians(angleDegrees - 180) / 2));
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
