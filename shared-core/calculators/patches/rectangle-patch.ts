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

/** A rectangular patch of this finished size; the shorter side goes across the strip. One makes one unit unless said otherwise. */
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

/** A rectangle where it lies in the finished unit; all of one name are of one size. */
export interface NamedRectangle extends Pick<CutPatch, 'name' | 'role' | 'source'> {
  readonly width: number;
  readonly length: number;
  readonly polygon: Polygon;
}

/** One patch a name, counted, and every piece where it lies. */
export function mergedPatches(
  parts: readonly NamedRectangle[],
  seam: number,
): Pick<UnitPlan, 'pieces' | 'patches'> {
  const byName = new Map<string, NamedRectangle[]>();
  for (const part of parts) {
    const group = byName.get(part.name);
    if (group === undefined) byName.set(part.name, [part]);
    else group.push(part);
  }
  const groups = [...byName.values()];
  return {
    patches: groups.flatMap((group) =>
      group.slice(0, 1).map((part) => rectanglePatch({ ...part, seam, takes: group.length })),
    ),
    pieces: groups.flatMap((group, patch) => group.map(({ polygon }) => ({ patch, polygon }))),
  };
}
