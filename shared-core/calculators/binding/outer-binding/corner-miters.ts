/**
 * How far before a corner to stop stitching. α is the angle through the quilt, in degrees. The seam runs s inside the edge, so at
 * an outer corner it stops s·cot(α/2) before the corner; that much strip on each side, folded up and back, makes the miter, and
 * the corner takes no extra strip. 0 at an inner corner (α over 180°), where the seam is longer than the edge.
 */
export function stitchStopBefore(angleDegrees: number, seam: number): number {
  return angleDegrees < 180 ? seam / Math.tan(radians(angleDegrees) / 2) : 0;
}

/** Extra strip for a corner: none at an outer corner, 2s·tan((α - 180°)/2) at an inner one. */
export function cornerExtra(angleDegrees: number, seam: number): number {
  return 2 * seam * Math.max(0, Math.tan(radians(angleDegrees - 180) / 2));
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
