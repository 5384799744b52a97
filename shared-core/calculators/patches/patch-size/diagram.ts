import { growPolygon } from '#core/geometry/offset-polygon';
import { pointMove } from '#core/geometry/point';
import type { Polygon } from '#core/geometry/polygon';
import { lengthFromExact } from '#core/units/length';
import type { Diagram, DiagramPart, Tone } from '#core/calculators/diagram';
import type { SizedPatch } from '../cut-sizes';
import { patchLetter, type PatchSizeWork } from './work';
import type { ShapePatch } from '../cut-shapes';
import type { FabricRole, UnitPlan } from '../patch-unit';

const TONES: Readonly<Record<FabricRole, Tone>> = {
  first: 'fabric',
  second: 'fabric-alternate',
  third: 'fabric',
};

/** The finished unit, and to its right each cut patch with its seam lines and inner cuts, with the letters of the table. */
export function patchSizeDiagram({ plan, input, drawn }: PatchSizeWork): Diagram {
  const gap = Math.max(plan.width, ...drawn.map((one) => one.along.exact)) / 6;
  const height = Math.max(plan.length, ...drawn.map((one) => one.across.exact));
  const below = height + 1.7 * gap;
  let x = gap;
  const parts: DiagramPart[] = [...finishedParts(plan, x, gap), label('Finished', x + plan.width / 2, below)];
  x += plan.width + gap;
  drawn.forEach((one, index) => {
    parts.push(...cutParts(one, input.seamAllowance, x, gap));
    parts.push(label(patchLetter(index), x + extent(one) / 2, below));
    x += extent(one) + gap;
  });
  return { title: 'Finished unit and cut patches', width: x, height: height + 2.2 * gap, parts };
}

function extent({ patch }: SizedPatch): number {
  return Math.max(...patch.shape.outline.map((corner) => corner.x));
}

function finishedParts(plan: UnitPlan, x: number, y: number): readonly DiagramPart[] {
  const patches = plan.finishedPatches.map(({ patch, polygon }): DiagramPart => {
    const role = plan.patches[patch]?.role ?? 'first';
    return { part: 'polygon', points: moved(polygon, x, y), tone: TONES[role] };
  });
  return [...patches, dimension(x, y, plan.width, y / 3)];
}

function cutParts(one: SizedPatch, seam: number, x: number, y: number): readonly DiagramPart[] {
  const { patch, along } = one;
  const { outline, patches, cuts, isRectangle } = patch.shape;
  const seams = patches.map((shape) => lines(moved(seamLines(shape, seam), x, y), 'seam'));
  const inside = cuts.map(({ from, to }): DiagramPart => ({
    part: 'line',
    from: pointMove(from, { x, y }),
    to: pointMove(to, { x, y }),
    tone: 'cut',
  }));
  return [
    { part: 'polygon', points: moved(outline, x, y), tone: TONES[patch.role] },
    lines(moved(outline, x, y), 'cut'),
    ...seams,
    ...inside,
    dimension(x, y, isRectangle ? along.exact : extent(one), y / 3),
  ];
}

/** The seam lines of a patch, one seam inside its cut edges where they are not given. */
function seamLines({ cut, finished }: ShapePatch, seam: number): Polygon {
  return finished ?? growPolygon(cut, -seam);
}

/** A closed line; these tones are not filled. */
function lines(points: Polygon, tone: 'cut' | 'seam'): DiagramPart {
  return { part: 'polygon', points, tone };
}

function moved(points: Polygon, x: number, y: number): Polygon {
  return points.map((point) => pointMove(point, { x, y }));
}

function label(text: string, x: number, y: number): DiagramPart {
  return { part: 'label', at: { x, y }, text, anchor: 'middle' };
}

/** A dimension line above the edge that starts at (x, y) and runs to the right. */
function dimension(x: number, y: number, length: number, offset: number): DiagramPart {
  const to = { x: x + length, y };
  return { part: 'dimension', from: { x, y }, to, offset, length: lengthFromExact(length, 'nearest') };
}
