import { type FabricLook, fabricColor, type DyedFabric, dye } from './fabric';
import { type Color, lighten, paintPng } from '#main/png/png';

export interface ProjectLook {
  /** 0 is round; otherwise the number of equal sides. A rectangle is `sides: 4` with its proportion. */
  readonly sides: 0 | 4 | 6 | 8;
  /** Height over width. */
  readonly proportion: number;
  /** The hole's diameter as a share of the project's width; 0 for none. */
  readonly hole: number;
  readonly fabrics: readonly FabricLook[];
  readonly binding: FabricLook | null;
  readonly isQuilted: boolean;
}

interface DyedProject extends Omit<ProjectLook, 'fabrics' | 'binding'> {
  readonly fabrics: readonly DyedFabric[];
  readonly binding: DyedFabric | null;
}

const TABLE: Color = [118, 92, 70];

/** A photo of a project on a wooden table, seen from above: rings of its own fabrics, with quilting lines when it is quilted. */
export function paintProject(look: ProjectLook, width = 560, height = 420): Uint8Array<ArrayBuffer> {
  const dyed: DyedProject = {
    ...look,
    fabrics: look.fabrics.map(dye),
    binding: look.binding === null ? null : dye(look.binding),
  };
  const scale = 0.44 * Math.min(width, height / look.proportion);
  return paintPng(width, height, (px, py) => {
    const x = (px - width / 2) / scale;
    const y = (py - height / 2) / scale / look.proportion;
    const fromCenter = reach(look.sides, x, y);
    if (fromCenter > 1) return tableColor(px, py, reach(look.sides, x - 0.02, y - 0.03) < 1);
    if (fromCenter < look.hole) return tableColor(px, py, fromCenter > look.hole * 0.86);
    const light = 1.05 - 0.14 * ((px + py) / (width + height));
    return lighten(projectColor(dyed, x, y, fromCenter), light);
  });
}

function projectColor(look: DyedProject, x: number, y: number, fromCenter: number): Color {
  const isEdge = fromCenter > 0.97 || (look.hole > 0 && fromCenter < look.hole + 0.025);
  const binding = isEdge ? look.binding : null;
  const fabric = binding ?? fabricAt(look, x, y, fromCenter);
  const quilting = look.isQuilted && binding === null && isQuiltingLine(x, y) ? 0.86 : 1;
  return lighten(fabricColor(fabric, x * 16, y * 16 * look.proportion), quilting);
}

/** Rings from the center outward, each made of wedges of two alternating fabrics. */
function fabricAt(look: DyedProject, x: number, y: number, fromCenter: number): DyedFabric {
  const ring = Math.min(4, Math.floor(fromCenter * 5));
  const wedge = Math.floor(((Math.atan2(y, x) / Math.PI + 1) / 2) * 16);
  const fabric = look.fabrics[(ring + (wedge % 2)) % look.fabrics.length];
  if (fabric === undefined) throw new Error('A project is drawn in at least one fabric');
  return fabric;
}

function isQuiltingLine(x: number, y: number): boolean {
  const rings = Math.hypot(x, y) * 14;
  return Math.abs(rings - Math.round(rings)) < 0.05;
}

/** How far out a point is; the edge is 1. */
function reach(sides: ProjectLook['sides'], x: number, y: number): number {
  if (sides === 0) return Math.hypot(x, y);
  const turn = (2 * Math.PI) / sides;
  const start = sides === 6 ? turn / 2 : 0;
  let farthest = 0;
  for (let side = 0; side < sides; side += 1) {
    const angle = start + side * turn;
    farthest = Math.max(farthest, x * Math.cos(angle) + y * Math.sin(angle));
  }
  return farthest;
}

function tableColor(px: number, py: number, isShadow: boolean): Color {
  const grain = 1 + 0.05 * Math.sin(py * 0.35 + 3 * Math.sin(px * 0.004)) + 0.03 * Math.sin(py * 1.7);
  return lighten(TABLE, grain * (isShadow ? 0.72 : 1));
}
