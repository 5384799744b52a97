// Paints the program's icon: `npx tsx main/icon/paint-icon.ts`.
// A ring of two fabric rounds, with its slit and its hole, and a needle at the end of a running stitch. One hue keeps it
// recognizable at 16 pixels, where only the ring, the slit and the needle can be seen.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { type Color, type ColorWithAlpha, colorFromHex, mix, paintPngWithAlpha } from '../png/png';

const SIZE = 512;
/** Places per pixel side that are averaged for smooth edges. */
const SAMPLES = 4;

const TABLE = colorFromHex('#43213a');
const OUTER_ROUND = colorFromHex('#b4648a');
const OUTER_ROUND_SHADE = colorFromHex('#a2537a');
const INNER_ROUND = colorFromHex('#edc9d8');
const INNER_ROUND_SHADE = colorFromHex('#e2b4c8');
const SEAM = colorFromHex('#7d3b5c');
const NEEDLE = colorFromHex('#fff8ef');

// Lengths are shares of half the icon's side, from its center.
const TILE = { half: 1, corner: 0.42 };
const HOLE = 0.27;
const ROUNDS_MEET = 0.55;
const EDGE = 0.87;
const SEAM_HALF = 0.008;
const WEDGES = 12;
/** The slit runs from the hole to the edge, and widens toward the edge. */
const SLIT = { angle: degrees(118), halfAtHole: 0.08, halfAtEdge: 0.15 };
const STITCH = { radius: 0.7, half: 0.028, angle: degrees(11), length: degrees(7) };
const NEEDLE_AT = { angle: degrees(-45), radius: 0.7, half: 0.56, thick: 0.085 };
const NEEDLE_EYE = { along: -0.41, half: 0.085, thick: 0.034 };

function degrees(value: number): number {
  return (value * Math.PI) / 180;
}

/** The color at a place, -1 to 1 across and down; null outside the tile. */
function colorAt(x: number, y: number): Color | null {
  if (!isOnTile(x, y)) return null;
  if (isNeedle(x, y)) return NEEDLE;
  const fromCenter = Math.hypot(x, y);
  if (fromCenter < HOLE || fromCenter > EDGE || isSlit(x, y, fromCenter)) return TABLE;
  const angle = turnFrom(SLIT.angle, Math.atan2(y, x));
  if (isStitch(fromCenter, angle)) return NEEDLE;
  if (isSeam(fromCenter, angle)) return SEAM;
  const isShaded = Math.floor((angle / (2 * Math.PI)) * WEDGES) % 2 === 1;
  if (fromCenter < ROUNDS_MEET) return isShaded ? INNER_ROUND_SHADE : INNER_ROUND;
  return isShaded ? OUTER_ROUND_SHADE : OUTER_ROUND;
}

/** The clockwise turn from one angle to another, 0 to a full turn. */
function turnFrom(from: number, to: number): number {
  const full = 2 * Math.PI;
  return (((to - from) % full) + full) % full;
}

function isOnTile(x: number, y: number): boolean {
  const inset = TILE.half - TILE.corner;
  const beyondX = Math.max(0, Math.abs(x) - inset);
  const beyondY = Math.max(0, Math.abs(y) - inset);
  return Math.hypot(beyondX, beyondY) <= TILE.corner;
}

function isSlit(x: number, y: number, fromCenter: number): boolean {
  const along = x * Math.cos(SLIT.angle) + y * Math.sin(SLIT.angle);
  const across = y * Math.cos(SLIT.angle) - x * Math.sin(SLIT.angle);
  const share = (fromCenter - HOLE) / (EDGE - HOLE);
  return along > 0 && Math.abs(across) < SLIT.halfAtHole + share * (SLIT.halfAtEdge - SLIT.halfAtHole);
}

/** The running stitch goes from the slit clockwise to the needle. */
function isStitch(fromCenter: number, angle: number): boolean {
  if (Math.abs(fromCenter - STITCH.radius) > STITCH.half) return false;
  if (angle < STITCH.angle || angle > turnFrom(SLIT.angle, NEEDLE_AT.angle)) return false;
  return angle % STITCH.angle < STITCH.length;
}

/** Where the rounds meet, and between the wedges each round is pieced from. */
function isSeam(fromCenter: number, angle: number): boolean {
  if (Math.abs(fromCenter - ROUNDS_MEET) < SEAM_HALF) return true;
  const wedge = (2 * Math.PI) / WEDGES;
  const toSeam = Math.abs(angle - Math.round(angle / wedge) * wedge) * fromCenter;
  return toSeam < SEAM_HALF / 2;
}

/** The needle follows the ring's edge, with its point ahead and its eye behind. */
function isNeedle(x: number, y: number): boolean {
  const fromX = x - NEEDLE_AT.radius * Math.cos(NEEDLE_AT.angle);
  const fromY = y - NEEDLE_AT.radius * Math.sin(NEEDLE_AT.angle);
  const across = fromX * Math.cos(NEEDLE_AT.angle) + fromY * Math.sin(NEEDLE_AT.angle);
  const along = fromY * Math.cos(NEEDLE_AT.angle) - fromX * Math.sin(NEEDLE_AT.angle);
  if (Math.hypot((along - NEEDLE_EYE.along) / NEEDLE_EYE.half, across / NEEDLE_EYE.thick) < 1) return false;
  const share = (along + NEEDLE_AT.half) / (2 * NEEDLE_AT.half);
  if (share < 0 || share > 1) return false;
  // Round at the eye, full for the first third, and tapering to the point.
  const taper = share < 0.08 ? Math.sqrt(share / 0.08) : share < 0.4 ? 1 : Math.sqrt((1 - share) / 0.6);
  return Math.abs(across) < NEEDLE_AT.thick * taper;
}

/** The mean of the places within a pixel. */
function smooth(pixelX: number, pixelY: number): ColorWithAlpha {
  let sum: Color = [0, 0, 0];
  let inside = 0;
  for (let sample = 0; sample < SAMPLES * SAMPLES; sample += 1) {
    const x = ((pixelX + ((sample % SAMPLES) + 0.5) / SAMPLES) / SIZE) * 2 - 1;
    const y = ((pixelY + (Math.floor(sample / SAMPLES) + 0.5) / SAMPLES) / SIZE) * 2 - 1;
    const color = colorAt(x, y);
    if (color === null) continue;
    inside += 1;
    sum = mix(sum, color, 1 / inside);
  }
  return [...sum, (255 * inside) / (SAMPLES * SAMPLES)];
}

writeFileSync(path.join(import.meta.dirname, 'icon.png'), paintPngWithAlpha(SIZE, SIZE, smooth));
