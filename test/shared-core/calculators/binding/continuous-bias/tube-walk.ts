/**
 * A square sewn into a tube, kept as the two triangles of fabric it is made of. It knows where there is fabric, where the seams run
 * and where a walker comes out who steps over one; it knows no formula for rows or lengths. In inches, y up, each half in the
 * place it had in the square: the lower half has its right angle at (a, 0), the upper at (0, a).
 */
export interface TubeWalk {
  readonly length: number;
  readonly rounds: number;
}

interface Spot {
  readonly half: 'lower' | 'upper';
  readonly x: number;
  readonly y: number;
}

interface Tube {
  readonly side: number;
  readonly strip: number;
  readonly seam: number;
}

const CLOSE = 1e-9;

/** The first seam joins the lower half's bottom (y = s) to the upper half's top (y = a - s), the tube seam x = a - s to x = s. */
function isOnFabric({ half, x, y }: Spot, { side, seam }: Tube): boolean {
  const [near, far] = [seam - CLOSE, side - seam + CLOSE];
  return half === 'lower' ? y <= x + CLOSE && y >= near && x <= far : y >= x - CLOSE && y <= far && x >= near;
}

/**
 * From the tube seam on the upper half at 45° over the first seam to the tube seam on the lower half; null where fabric runs out.
 * Both halves are convex, so fabric at both ends of a stretch is fabric all along it.
 */
function walkRound(height: number, tube: Tube): { readonly leaves: number; readonly length: number } | null {
  const { side, seam } = tube;
  const start: Spot = { half: 'upper', x: seam, y: height };
  const toSeam = side - seam - start.y;
  const atSeam: Spot = { half: 'upper', x: start.x + toSeam, y: side - seam };
  const over: Spot = { half: 'lower', x: atSeam.x, y: seam };
  const toTube = side - seam - over.x;
  const end: Spot = { half: 'lower', x: side - seam, y: over.y + toTube };
  if (toSeam < -CLOSE || toTube < -CLOSE) return null;
  if (![start, atSeam, over, end].every((spot) => isOnFabric(spot, tube))) return null;
  return { leaves: end.y, length: Math.hypot(toSeam, toSeam) + Math.hypot(toTube, toTube) };
}

/**
 * Cuts round and round from where the diagonal cut meets the tube seam. In the tube the lower half's edge is sewn to the upper
 * half's moved by one line, measured along the seam: height h on the lower half meets h + w√2 on the upper. The walk goes on as
 * long as both edges of the strip lie on fabric the whole way round.
 */
export function walkTube(tube: Tube): TubeWalk {
  const crossing = tube.strip / Math.sin(Math.PI / 4);
  let [height, length, rounds] = [tube.seam, 0, 0];
  for (;;) {
    const [one, other] = [walkRound(height, tube), walkRound(height + crossing, tube)];
    if (one === null || other === null) return { length, rounds };
    length += (one.length + other.length) / 2;
    rounds += 1;
    height = one.leaves + crossing;
  }
}
