import { growPolygon } from '#core/geometry/offset-polygon';
import type { Point } from '#core/geometry/point';
import type { Polygon } from '#core/geometry/polygon';
import { regularPolygonCorners, regularPolygonFromInradius } from '#core/geometry/regular-polygon';
import { edgeTerm, exactEdge, plainEdge } from '../patches/cut-edge';
import { polygonOf, stripShape } from '../patches/cut-shapes';
import type { CutPatch } from '../patches/patch-unit';
import { type Assembly, lengthTerm, type PlacedPatch, type RingPatch, type TopStep } from './assembly';
import type { LayoutOf } from './input';

const NUMBER_OF_SIDES = { six: 6, eight: 8, ten: 10, twelve: 12 } as const;

/** A regular polygon in the middle with rings of equal patches around it, mitered at every corner. */
export function layRings(layout: LayoutOf<'rings'>, seam: number): Assembly {
  const sides = NUMBER_OF_SIDES[layout.sides];
  const center = regular(sides, layout.centerAcross);
  const patches: PlacedPatch[] = [
    { fabric: layout.centerFabric, patch: centerPatch(center, layout.centerAcross, seam), polygon: center },
  ];
  const first = layout.centerAcross;
  const middle = lengthTerm('A', 'from side to side', first);
  const rings: RingPatch[] = [];
  const steps: TopStep[] = [{ label: 'Center', width: first, length: first, formula: 'A', terms: [middle] }];
  let across: number = layout.centerAcross;
  layout.rings.forEach((ring, index) => {
    const [inner, outer] = [regular(sides, across), regular(sides, across + 2 * ring.width)];
    const name = `Ring ${String(index + 1)}`;
    const toCut = { name, sides, across, width: ring.width, seam };
    const patch = ringPatch(toCut);
    rings.push({ ...ringPatchSizes(toCut), name, fabric: ring.fabric, count: sides });
    patches.push(...ringPatches(inner, outer).map((polygon) => ({ fabric: ring.fabric, patch, polygon })));
    const terms = [
      lengthTerm('A', 'from side to side, before', across),
      lengthTerm('w', 'width of the ring', ring.width),
    ];
    across += 2 * ring.width;
    steps.push({ label: name, width: across, length: across, formula: 'A + 2w', terms });
  });
  const outline = regular(sides, across);
  const [left, top] = [Math.min(...outline.map(({ x }) => x)), Math.min(...outline.map(({ y }) => y))];
  return {
    blocks: [],
    patches,
    steps,
    misfits: [],
    x: left,
    y: top,
    width: -2 * left,
    length: -2 * top,
    outline,
    rings,
  };
}

/** With a side at the top. */
function regular(sides: number, across: number): Polygon {
  const start = -Math.PI / 2 - Math.PI / sides;
  return regularPolygonCorners(regularPolygonFromInradius(sides, across / 2), { x: 0, y: 0 }, start);
}

function ringPatches(inner: Polygon, outer: Polygon): readonly Polygon[] {
  return outer.map((corner, index) => {
    const next = (index + 1) % outer.length;
    const at = (polygon: Polygon, place: number): Point => polygon[place] ?? corner;
    return [corner, at(outer, next), at(inner, next), at(inner, index)];
  });
}

interface RingToCut {
  readonly name: string;
  readonly sides: number;
  /** From side to side inside the ring. */
  readonly across: number;
  readonly width: number;
  readonly seam: number;
}

/** The corners at the long side are half those of the polygon (90° − 180°/n), and each adds s/tan of half its angle. */
function ringPatchSizes({ sides, across, width, seam }: RingToCut) {
  const half = Math.PI / 4 - Math.PI / (2 * sides);
  const perAcross = Math.tan(Math.PI / sides);
  const outer = (across + 2 * width) * perAcross;
  const long = outer + (2 * seam) / Math.tan(half);
  const short = across * perAcross + 2 * seam * Math.tan(half);
  return { outer, long, short, height: width + 2 * seam, degrees: 90 - 180 / sides };
}

function ringPatch(ring: RingToCut): CutPatch {
  const { name, width, seam } = ring;
  const { outer, long: longSide, short } = ringPatchSizes(ring);
  const term = edgeTerm('W', `finished width, ${name.toLowerCase()}`, width);
  const strip = plainEdge(term, seam);
  const long = exactEdge('L + 2s/tan(45° − 90°/n)', longSide, [edgeTerm('L', 'finished outer side', outer)]);
  const inset = (long.exact - short) / 2;
  const shape = polygonOf([0, strip.exact], [inset, 0], [inset + short, 0], [long.exact, strip.exact]);
  return {
    name,
    role: 'first',
    across: strip,
    along: long,
    shape: stripShape(shape, long.exact, (long.exact + short) / 2),
    takes: 1,
    makes: 1,
    source: 'fabric',
  };
}

/** Cut from the rectangle around it. */
function centerPatch(center: Polygon, across: number, seam: number): CutPatch {
  const cut = growPolygon(center, seam);
  const [left, top] = [Math.min(...cut.map(({ x }) => x)), Math.min(...cut.map(({ y }) => y))];
  const placed = cut.map(({ x, y }) => ({ x: x - left, y: y - top }));
  const strip = plainEdge(edgeTerm('A', 'center from side to side', across), seam);
  const along = exactEdge('widest, cut', -2 * left, [edgeTerm('A', 'center from side to side', across)]);
  const shape = stripShape(placed, along.exact, along.exact);
  return {
    name: 'Center',
    role: 'first',
    across: strip,
    along,
    shape,
    takes: 1,
    makes: 1,
    source: 'fabric',
  };
}
