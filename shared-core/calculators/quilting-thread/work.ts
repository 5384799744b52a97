import { UNITS_PER_YARD } from '#core/units/length';
import { type ThreadByMethod, threadUse } from '../machine-thread/work';
import { outlineArea } from '../outline/outline-inset';
import type { QuiltingThreadInput } from './input';

export type PrintedDensity = 'light' | 'medium' | 'heavy';
export const PRINTED_DENSITIES: readonly PrintedDensity[] = ['light', 'medium', 'heavy'];

/** Thread for a quilt, in 1/320 mm. */
export interface ThreadAmount {
  readonly needle: number;
  readonly bobbin: number;
  readonly total: number;
}

export interface QuiltingThreadWork {
  /** (1/320 mm)². */
  readonly area: number;
  readonly printed: Readonly<Record<PrintedDensity, ThreadAmount>>;
  readonly lines: ThreadByMethod;
  /** Length of all lines, before take-up and waste. */
  readonly lineLength: number;
  /** By the density that the input names. */
  readonly chosen: ThreadAmount;
}

type PrintedSize = { readonly squareYards: number } & Readonly<Record<PrintedDensity, number>>;

const NO_QUILT: PrintedSize = { squareYards: 0, light: 0, medium: 0, heavy: 0 };

/**
 * Yards of needle thread that a thread maker prints for four sizes of packaged batting (45 by 60, 72 by 90, 90 by 108 and 120 by 120 in),
 * with as much again for the bobbin. The print grows more slowly than the area.
 */
const PRINT: readonly PrintedSize[] = [
  { squareYards: (45 * 60) / 1_296, light: 200, medium: 400, heavy: 600 },
  { squareYards: (72 * 90) / 1_296, light: 400, medium: 800, heavy: 1_200 },
  { squareYards: (90 * 108) / 1_296, light: 600, medium: 1_100, heavy: 1_600 },
  { squareYards: (120 * 120) / 1_296, light: 700, medium: 1_300, heavy: 2_000 },
];

export function workOutQuiltingThread(input: QuiltingThreadInput): QuiltingThreadWork {
  const area = outlineArea(input.outline);
  const lineLength = area / input.spacing;
  const lines = threadUse({ ...input, seamLength: lineLength });
  const printed = {
    light: printedThread(area, 'light'),
    medium: printedThread(area, 'medium'),
    heavy: printedThread(area, 'heavy'),
  };
  const chosen = input.density === 'by-spacing' ? lines.enough : printed[input.density];
  return { area, printed, lines, lineLength, chosen };
}

/** The print read in proportion between its sizes; beyond the largest, in proportion to the area. */
function printedThread(area: number, density: PrintedDensity): ThreadAmount {
  const needle = printedYards(area / UNITS_PER_YARD ** 2, density) * UNITS_PER_YARD;
  return { needle, bobbin: needle, total: 2 * needle };
}

function printedYards(squareYards: number, density: PrintedDensity): number {
  let below = NO_QUILT;
  for (const above of PRINT) {
    if (squareYards <= above.squareYards) {
      const part = (squareYards - below.squareYards) / (above.squareYards - below.squareYards);
      return below[density] + part * (above[density] - below[density]);
    }
    below = above;
  }
  return (squareYards / below.squareYards) * below[density];
}
