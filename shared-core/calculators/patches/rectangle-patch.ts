import type { Polygon } from '#core/geometry/polygon';
import { edgeTerm, plainEdge } from './cut-edge';
import { wholeShape } from './cut-shapes';
import type { CutPatch, UnitPlan } from './patch-unit';

interface RectangleToCut extends Pick<CutPatch, 'name' | 'role'> {
  readonly width: number;
  readonly length: number;
  readonly seam: number;
  readonly takes?: number;
  readonly source?: CutPatch['source'];
}

/** A rectangular patch of this finished size; its shorter side goes across the strip. By default one patch makes one unit. */
export function rectanglePatch(to: RectangleToCut): CutPatch {
  const [short, long] = [Math.min(to.width, to.length), Math.max(to.width, to.length)];
  const name = to.name.toLowerCase();
  const across = plainEdge(edgeTerm('W', `finished width, ${name}`, short), to.seam);
  const along = plainEdge(edgeTerm('L', `finished length, ${name}`, long), to.seam);
  return {
    name: to.name,
    role: to.role,
    across,
    along: short === long ? across : along,
    shape: wholeShape(across.exact, along.exact),
    takes: to.takes ?? 1,
    makes: 1,
    source: to.source ?? 'fabric',
    standsUp: to.length > to.width,
  };
}

/** A rectangle at its place in the finished unit. All rectangles with the same name have the same size. */
export interface NamedRectangle extends Pick<CutPatch, 'name' | 'role' | 'source'> {
  readonly width: number;
  readonly length: number;
  readonly polygon: Polygon;
}

/** One cut patch for each name, with its count, and every finished patch at its place. */
export function mergedPatches(
  rectangles: readonly NamedRectangle[],
  seam: number,
): Pick<UnitPlan, 'finishedPatches' | 'patches'> {
  const byName = new Map<string, NamedRectangle[]>();
  for (const rectangle of rectangles) {
    const group = byName.get(rectangle.name);
    if (group === undefined) byName.set(rectangle.name, [rectangle]);
    else group.push(rectangle);
  }
  const groups = [...byName.values()];
  return {
    patches: groups.flatMap((group) =>
      group.slice(0, 1).map((one) => rectanglePatch({ ...one, seam, takes: group.length })),
    ),
    finishedPatches: groups.flatMap((group, patch) => group.map(({ polygon }) => ({ patch, polygon }))),
  };
}
