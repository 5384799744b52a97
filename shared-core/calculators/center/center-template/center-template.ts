import { PAPERS, type SheetPaper } from '#core/domain/paper';
import { failure, type Result, success } from '#core/result';
import { roundUpTo } from '#core/units/rounding';
import type { Point } from '#core/geometry/point';
import { type Length, lengthFromInches } from '#core/units/length';
import type { DiagramPart } from '#core/calculators/diagram';
import { overlapMarks, testSquares } from './template-marks';

export interface CenterTemplateInput {
  readonly holeDiameter: Length;
  readonly seamAllowance: Length;
  /** A quarter is for a project folded twice; its corner goes on the folded corner. */
  readonly part: 'whole' | 'quarter';
  readonly paper: SheetPaper;
}

interface TemplateWindow {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** One sheet. Add `shift` to the coordinates of the template, clip to `window`, then draw `marks` in coordinates of the sheet. */
export interface TemplatePage {
  readonly name: string;
  readonly width: Length;
  readonly height: Length;
  readonly window: TemplateWindow;
  readonly shift: Point;
  readonly marks: readonly DiagramPart[];
}

/** In true size: one unit is 1/320 mm on paper. */
export interface CenterTemplate {
  readonly width: number;
  readonly height: number;
  readonly center: Point;
  readonly parts: readonly DiagramPart[];
  readonly columns: number;
  readonly rows: number;
  readonly overlap: Length;
  readonly pages: readonly TemplatePage[];
}

export interface TemplateProblem {
  readonly code: 'too-many-sheets';
  readonly sheets: number;
}

const MARGIN = lengthFromInches(1 / 2);
const OVERLAP = lengthFromInches(1 / 2);
const PAD = lengthFromInches(1 / 8);
/** Room at the bottom of every sheet for the two test squares. */
const FOOT = lengthFromInches(1.25);
const MOST_SHEETS = 40;

/** The circle to cut and its seam line, on as few sheets as possible. Every sheet has test squares to check that it is in true size. */
export function planCenterTemplate(input: CenterTemplateInput): Result<CenterTemplate, TemplateProblem> {
  const seamRadius = input.holeDiameter / 2 + input.seamAllowance;
  const size = input.part === 'whole' ? 2 * (seamRadius + PAD) : seamRadius + 2 * PAD;
  const center = input.part === 'whole' ? { x: size / 2, y: size / 2 } : { x: PAD, y: PAD };
  const paper = PAPERS[input.paper];
  const window: TemplateWindow = {
    x: MARGIN,
    y: MARGIN,
    width: paper.width - 2 * MARGIN,
    height: paper.height - 2 * MARGIN - FOOT,
  };
  const [columns, rows] = [tilesFor(size, window.width), tilesFor(size, window.height)];
  if (columns * rows > MOST_SHEETS) return failure({ code: 'too-many-sheets', sheets: columns * rows });

  const grid = { columns, rows, overlap: OVERLAP, window };
  const before = {
    x: (gridSize(columns, window.width) - size) / 2,
    y: (gridSize(rows, window.height) - size) / 2,
  };
  const pages = Array.from({ length: columns * rows }, (_, index): TemplatePage => {
    const tile = { column: index % columns, row: (index - (index % columns)) / columns };
    const name = `${String.fromCharCode(65 + tile.row)}${tile.column + 1}`;
    return {
      name,
      ...paper,
      window,
      shift: {
        x: window.x + before.x - tile.column * (window.width - OVERLAP),
        y: window.y + before.y - tile.row * (window.height - OVERLAP),
      },
      marks: [...overlapMarks(grid, tile), ...testSquares(paper, MARGIN, name)],
    };
  });
  const parts = input.part === 'whole' ? wholeParts(input, center, size) : quarterParts(input, center);
  return success({ width: size, height: size, center, parts, columns, rows, overlap: OVERLAP, pages });
}

/** The fewest sheets whose windows cover `size` with an overlap of half an inch. */
function tilesFor(size: number, window: number): number {
  return Math.max(1, roundUpTo((size - OVERLAP) / (window - OVERLAP), 1));
}

function gridSize(tiles: number, window: number): number {
  return tiles * window - (tiles - 1) * OVERLAP;
}

/** Both circles, a cross through the center, and ticks on the cut line every 15° to match a project that is folded and marked. */
function wholeParts(input: CenterTemplateInput, center: Point, size: number): readonly DiagramPart[] {
  const cut = input.holeDiameter / 2;
  const ticks = Array.from({ length: 24 }, (_, index) => tick(center, cut, index * 15));
  return [
    { part: 'circle', center, radius: cut + input.seamAllowance, tone: 'seam' },
    { part: 'circle', center, radius: cut, tone: 'cut' },
    { part: 'line', from: { x: 0, y: center.y }, to: { x: size, y: center.y }, tone: 'mark' },
    { part: 'line', from: { x: center.x, y: 0 }, to: { x: center.x, y: size }, tone: 'mark' },
    ...ticks,
  ];
}

function quarterParts(input: CenterTemplateInput, center: Point): readonly DiagramPart[] {
  const cut = input.holeDiameter / 2;
  const stitched = cut + input.seamAllowance;
  const ticks = Array.from({ length: 7 }, (_, index) => tick(center, cut, index * 15));
  return [
    { part: 'line', from: center, to: { x: center.x + stitched, y: center.y }, tone: 'fold' },
    { part: 'line', from: center, to: { x: center.x, y: center.y + stitched }, tone: 'fold' },
    { part: 'arc', center, radius: stitched, fromDegrees: 0, toDegrees: 90, tone: 'seam' },
    { part: 'arc', center, radius: cut, fromDegrees: 0, toDegrees: 90, tone: 'cut' },
    ...ticks,
  ];
}

function tick(center: Point, radius: number, degrees: number): DiagramPart {
  const angle = (degrees * Math.PI) / 180;
  const at = (distance: number): Point => ({
    x: center.x + distance * Math.cos(angle),
    y: center.y + distance * Math.sin(angle),
  });
  return { part: 'line', from: at(radius - PAD), to: at(radius), tone: 'mark' };
}
