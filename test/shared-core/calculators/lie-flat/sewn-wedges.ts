import type { Point } from '#core/geometry/point';

/** A wedge on the table, worked with lines and points only: nothing here uses a formula of the calculator. */
export interface SewnWedge {
  /** Angle between the legs of the cut wedge, in radians. */
  readonly angle: number;
  /** From the middle to the inner and to the outer side, finished. */
  readonly inner: number;
  readonly outer: number;
  /** The seam that it is cut for. */
  readonly seam: number;
}

/** The seam as sewn on one piece of fabric, beside the inner and the outer end of the finished leg. */
export interface SewnSeam {
  readonly inner: number;
  readonly outer: number;
}

interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** The cut edge of the right leg, from the inner to the outer corner. The middle line of the wedge points up from (0, 0). */
function cutEdge({ angle, inner, outer, seam }: SewnWedge): Line {
  const [along, across] = [
    { x: Math.sin(angle / 2), y: Math.cos(angle / 2) },
    { x: Math.cos(angle / 2), y: -Math.sin(angle / 2) },
  ];
  const at = (level: number): Point => {
    const far = (level - seam * across.y) / along.y;
    return { x: far * along.x + seam * across.x, y: level };
  };
  return { from: at(inner - seam), to: at(outer + seam) };
}

/** The stitching of the right leg: as far inside the cut edge as was sewn at either end of the finished leg. */
function stitching(wedge: SewnWedge, sewn: SewnSeam): Line {
  const { angle, inner, outer, seam } = wedge;
  const [sin, cos] = [Math.sin(angle / 2), Math.cos(angle / 2)];
  const at = (level: number, off: number): Point => ({
    x: (level / cos) * sin - off * cos,
    y: level + off * sin,
  });
  return { from: at(inner, sewn.inner - seam), to: at(outer, sewn.outer - seam) };
}

/** The angle that is left between both stitched legs, in radians. */
export function sewnAngle(wedge: SewnWedge, sewn: SewnSeam): number {
  const { from, to } = stitching(wedge, sewn);
  return 2 * Math.atan2(to.x - from.x, to.y - from.y);
}

/** Where the stitching of both legs meets, above (0, 0). */
export function sewnTip(wedge: SewnWedge, sewn: SewnSeam): number {
  const { from, to } = stitching(wedge, sewn);
  return from.y - (from.x * (to.y - from.y)) / (to.x - from.x);
}

const mirrored = ({ from, to }: Line): Line => ({
  from: { x: -from.x, y: from.y },
  to: { x: -to.x, y: to.y },
});

/** Puts `moving` on `place`, outer end on outer end and along it, and takes `rest` with it. */
function carried(moving: Line, place: Line, rest: readonly Line[]): readonly Line[] {
  const direction = ({ from, to }: Line) => Math.atan2(to.y - from.y, to.x - from.x);
  const turn = direction(place) - direction(moving);
  const point = ({ x, y }: Point): Point => {
    const [right, up] = [x - moving.to.x, y - moving.to.y];
    return {
      x: place.to.x + right * Math.cos(turn) - up * Math.sin(turn),
      y: place.to.y + right * Math.sin(turn) + up * Math.cos(turn),
    };
  };
  return rest.map(({ from, to }) => ({ from: point(from), to: point(to) }));
}

/**
 * How far the outer corner of the last leg is from the straight line along the first, once the wedges are sewn to each other:
 * above zero for a gap. The first lies with the cut edge of its right leg on the line; the others follow counterclockwise.
 */
export function gapOfHalf(wedges: readonly SewnWedge[], sewn: SewnSeam): number {
  const [first, ...others] = wedges;
  const line: Line = { from: { x: 0, y: 0 }, to: { x: first!.outer, y: 0 } };
  let [left, edge] = carried(cutEdge(first!), line, [
    mirrored(stitching(first!, sewn)),
    mirrored(cutEdge(first!)),
  ]);
  for (const wedge of others) {
    const legs = [mirrored(stitching(wedge, sewn)), mirrored(cutEdge(wedge))];
    [left, edge] = carried(stitching(wedge, sewn), left!, legs);
  }
  return edge!.to.y;
}
