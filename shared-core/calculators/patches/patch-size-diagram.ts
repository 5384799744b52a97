import { growPolygon } from '#core/geometry/offset-polygon';
import { type Polygon, polygonSides } from '#core/geometry/polygon';
import { lengthFromExact } from '#core/units/length';
import type { Diagram, DiagramPart, Tone } from '../diagram';
import type { SizedPatch } from './cut-sizes';
import { isFromCloth, type PatchSizeWork } from './patch-size-work';
import type { ShapePiece } from './cut-shapes';
import type { FabricRole } from './patch-unit';

const MOST_PATCHES = 4;

const TONES: Readonly<Record<FabricRole, Tone>> = {
  first: 'cloth',
  second: 'cloth-alternate',
  third: 'leftover',
};

/** The finished unit, and to its right each cut patch with its seam lines and the cuts inside it; all to one scale. */
export function patchSizeDiagram(work: PatchSizeWork): Diagram {
  const { plan, input } = work;
  const patches = distinctPatches(work.sized.filter(isFromCloth)).slice(0, MOST_PATCHES);
  const gap = Math.max(plan.width, ...patches.map((one) => one.along.exact)) / 6;
  const height = Math.max(plan.length, ...patches.map((one) => one.across.exact));
  let x = gap;
  const parts: DiagramPart[] = [
    ...finishedParts(work, x, gap),
    label('Finished', x + plan.width / 2, height + 1.7 * gap),
  ];
  x += plan.width + gap;
  for (const one of patches) {
    parts.push(...cutParts(one, input.seamAllowance, x, gap));
    parts.push(label(one.patch.name, x + extent(one) / 2, height + 1.7 * gap));
    x += extent(one) + gap;
  }
  return { title: 'Finished unit and cut patches, to scale', width: x, height: height + 2.2 * gap, parts };
}

function distinctPatches(sized: readonly SizedPatch[]): readonly SizedPatch[] {
  const known = new Set<string>();
  return sized.filter(({ patch, across, along }) => {
    const key = [patch.role, across.exact, along.exact].join(' ');
    return known.has(key) ? false : known.add(key);
  });
}

function extent({ patch }: SizedPatch): number {
  return Math.max(...patch.shape.outline.map((corner) => corner.x));
}

function finishedParts({ plan }: PatchSizeWork, x: number, y: number): readonly DiagramPart[] {
  const pieces = plan.pieces.map(({ patch, polygon }): DiagramPart => {
    const role = plan.patches[patch]?.role ?? 'first';
    return { part: 'polygon', points: moved(polygon, x, y), tone: TONES[role] };
  });
  const seams = plan.pieces.flatMap(({ polygon }) => outlineParts(moved(polygon, x, y), 'seam'));
  return [...pieces, ...seams, dimension(x, y, plan.width, y / 3)];
}

function cutParts({ patch, along }: SizedPatch, seam: number, x: number, y: number): readonly DiagramPart[] {
  const { outline, pieces, cuts, isRectangle } = patch.shape;
  const seams = pieces.flatMap((piece) => outlineParts(moved(seamLines(piece, seam), x, y), 'seam'));
  const inside = cuts.map(({ from, to }): DiagramPart => {
    const [start, end] = moved([from, to], x, y);
    return { part: 'line', from: start ?? from, to: end ?? to, tone: 'cut' };
  });
  return [
    { part: 'polygon', points: moved(outline, x, y), tone: TONES[patch.role] },
    ...outlineParts(moved(outline, x, y), 'cut'),
    ...seams,
    ...inside,
    dimension(x, y, isRectangle ? along.exact : extentOf(outline), y / 3),
  ];
}

/** A piece smaller than its seams has none to show. */
function seamLines({ cut, finished }: ShapePiece, seam: number): Polygon {
  return finished ?? growPolygon(cut, -seam);
}

function extentOf(outline: Polygon): number {
  return Math.max(...outline.map((corner) => corner.x));
}

function outlineParts(polygon: Polygon, tone: Tone): readonly DiagramPart[] {
  return polygonSides(polygon).map(({ from, to }) => ({ part: 'line', from, to, tone }));
}

function moved(points: Polygon, x: number, y: number): Polygon {
  return points.map((point) => ({ x: point.x + x, y: point.y + y }));
}

function label(text: string, x: number, y: number): DiagramPart {
  return { part: 'label', at: { x, y }, text, anchor: 'middle' };
}

/** Above the edge that starts at (x, y) and runs to the right. */
function dimension(x: number, y: number, length: number, offset: number): DiagramPart {
  const to = { x: x + length, y };
  return { part: 'dimension', from: { x, y }, to, offset, length: lengthFromExact(length, 'nearest') };
}
