// Paints the program's icon, a ring with a running stitch on paper: `npx tsx main/icon/paint-icon.ts`.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { type Color, colorFromHex, mix, paintPng } from '../png/png';

const SIZE = 512;
const PAPER = colorFromHex('#f6f0e4');
const INK = colorFromHex('#2a251f');
const THREAD = colorFromHex('#2a4a80');
/** Rounds of fabric from the hole outward, by the share of the icon's half width at which each ends. */
const ROUNDS: readonly (readonly [ends: number, color: Color])[] = [
  [0.2, PAPER],
  [0.36, colorFromHex('#8f3f31')],
  [0.52, colorFromHex('#e6c87c')],
  [0.7, colorFromHex('#33524a')],
];
const STITCHES = 20;
const SAMPLES = 4;

/** The color at a place of the icon, from -1 to 1 across and down. */
function colorAt(x: number, y: number): Color {
  const fromCenter = Math.hypot(x, y);
  const round = ROUNDS.find(([ends]) => fromCenter < ends);
  if (round !== undefined) {
    const isEdge = ROUNDS.some(([ends]) => Math.abs(fromCenter - ends) < 0.008);
    return isEdge ? INK : round[1];
  }
  const turn = (Math.atan2(y, x) / (2 * Math.PI) + 1) * STITCHES;
  const isStitch = Math.abs(fromCenter - 0.83) < 0.035 && turn - Math.floor(turn) < 0.66;
  return isStitch ? THREAD : PAPER;
}

/** The mean of several places within a pixel, so that edges are smooth. */
function smooth(px: number, py: number): Color {
  let sum: Color = [0, 0, 0];
  for (let sample = 0; sample < SAMPLES * SAMPLES; sample += 1) {
    const x = ((px + ((sample % SAMPLES) + 0.5) / SAMPLES) / SIZE) * 2 - 1;
    const y = ((py + (Math.floor(sample / SAMPLES) + 0.5) / SAMPLES) / SIZE) * 2 - 1;
    sum = mix(sum, colorAt(x, y), 1 / (sample + 1));
  }
  return sum;
}

writeFileSync(path.join(import.meta.dirname, 'icon.png'), paintPng(SIZE, SIZE, smooth));
