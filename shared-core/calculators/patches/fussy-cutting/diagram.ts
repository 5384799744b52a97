import type { Diagram, DiagramPart, DiagramPoint, Tone } from '#core/calculators/diagram';
import { roundDownTo } from '#core/units/rounding';
import type { FussyCuttingInput } from './input';
import type { FussyCuttingDetails } from './work';

/** So many rows are drawn at most; the rest of the fabric looks the same. */
const MOST_ROWS = 6;

/** More figures than this would hide the patches. Then only the figures that are cut are drawn. */
const MOST_FIGURES = 240;

/**
 * The fabric with the figures of its print, and the patches around those that are cut. The print is drawn where it
 * fits worst: its first whole figure begins a whole repeat in.
 */
export function fussyCuttingDiagram(input: FussyCuttingInput, details: FussyCuttingDetails): Diagram {
  const { repeatAcross, repeatAlong, fabricWidth: width } = input;
  const rows = Math.min(details.rows, MOST_ROWS);
  const height = repeatAlong + (rows - 1) * details.stepAlong + details.cutLength;
  const corners = gridPoints(
    placesAt(repeatAcross, details.stepAcross, details.across),
    placesAt(repeatAlong, details.stepAlong, rows),
  );
  return {
    title:
      rows === details.rows
        ? 'The patches on the print'
        : `The first ${String(rows)} rows of patches on the print`,
    width,
    height,
    parts: [
      rectangle({ x: 0, y: 0 }, { width, height }, 'leftover'),
      ...corners.flatMap((corner) => patchParts(corner, input, details)),
      ...figureParts(corners, height, { input, details }),
      ...dimensions(input, height),
    ],
  };
}

function patchParts(
  corner: DiagramPoint,
  { seam, windowWidth, windowLength }: FussyCuttingInput,
  { cutWidth, cutLength }: FussyCuttingDetails,
): readonly DiagramPart[] {
  const inside = { x: corner.x + seam, y: corner.y + seam };
  return [
    rectangle(corner, { width: cutWidth, height: cutLength }, 'fabric'),
    rectangle(inside, { width: windowWidth, height: windowLength }, 'seam'),
  ];
}

/** A small circle stands for the figure. It is in the middle of every patch, and where the repeats between patches are passed over. */
function figureParts(
  corners: readonly DiagramPoint[],
  height: number,
  { input, details }: { readonly input: FussyCuttingInput; readonly details: FussyCuttingDetails },
): readonly DiagramPart[] {
  const { repeatAcross, repeatAlong, fabricWidth } = input;
  const { cutWidth, cutLength } = details;
  const radius = Math.min(repeatAcross, repeatAlong, cutWidth, cutLength) / 6;
  const fitting = (room: number, repeat: number, cut: number) =>
    placesAt(repeat, repeat, roundDownTo((room - repeat - cut) / repeat, 1) + 1);
  const all = gridPoints(
    fitting(fabricWidth, repeatAcross, cutWidth),
    fitting(height, repeatAlong, cutLength),
  );
  return (all.length > MOST_FIGURES ? corners : all).map(({ x, y }) => ({
    part: 'circle',
    center: { x: x + cutWidth / 2, y: y + cutLength / 2 },
    radius,
    tone: 'mark',
  }));
}

/** The repeats along the upper and left edge, and the width and length of the fabric outside of it. */
function dimensions(
  { fabricWidth, repeatAcross, repeatAlong }: FussyCuttingInput,
  height: number,
): readonly DiagramPart[] {
  const offset = (0 - fabricWidth) / 14;
  const line = (from: DiagramPoint, to: DiagramPoint, length: number): DiagramPart => ({
    part: 'dimension',
    from,
    to,
    offset,
    length,
  });
  const [right, bottom] = [fabricWidth, height];
  return [
    line({ x: repeatAcross, y: 0 }, { x: 0, y: 0 }, repeatAcross),
    line({ x: 0, y: 0 }, { x: 0, y: repeatAlong }, repeatAlong),
    line({ x: 0, y: bottom }, { x: right, y: bottom }, fabricWidth),
    line({ x: right, y: bottom }, { x: right, y: 0 }, height),
  ];
}

function placesAt(first: number, step: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => first + index * step);
}

function gridPoints(across: readonly number[], along: readonly number[]): readonly DiagramPoint[] {
  return along.flatMap((y) => across.map((x) => ({ x, y })));
}

function rectangle(
  { x, y }: DiagramPoint,
  { width, height }: { readonly width: number; readonly height: number },
  tone: Tone,
): DiagramPart {
  return {
    part: 'polygon',
    points: [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ],
    tone,
  };
}
