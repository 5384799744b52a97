import { type Color, colorFromHex, lighten, mix, paintPng } from '#main/png/png';

/** What is printed on a demo fabric. */
type Print =
  'plain' | 'dots' | 'stripe' | 'check' | 'leaf' | 'cross' | 'wave' | 'speckle' | 'chevron' | 'ring';

export interface FabricLook {
  readonly print: Print;
  readonly ground: string;
  readonly figure: string;
}

/** A square photo of the fabric on a table: its print, its weave, and light from the upper left. */
export function paintFabric(look: FabricLook, pixels = 256): Uint8Array<ArrayBuffer> {
  const fabric = dye(look);
  return paintPng(pixels, pixels, (x, y) => {
    const color = fabricColor(fabric, (x / pixels) * 8, (y / pixels) * 8);
    return lighten(color, 1.06 - (0.12 * (x + y)) / (2 * pixels));
  });
}

/** A fabric look with its colors parsed, for use at many points. */
export interface DyedFabric {
  readonly print: Print;
  readonly ground: Color;
  readonly figure: Color;
}

export function dye({ print, ground, figure }: FabricLook): DyedFabric {
  return { print, ground: colorFromHex(ground), figure: colorFromHex(figure) };
}

/** The color of a fabric at a point given in inches. */
export function fabricColor({ print, ground, figure }: DyedFabric, x: number, y: number): Color {
  return lighten(mix(ground, figure, printShare(print, x, y)), weave(x, y));
}

/** How much of the figure's color shows at a point: 0 is ground, 1 is figure, soft at the edge. */
function printShare(print: Print, x: number, y: number): number {
  switch (print) {
    case 'plain':
      return 0;
    case 'dots': {
      const row = Math.floor(y);
      const inX = fraction(x + (row % 2) / 2) - 0.5;
      return soft(0.2 - Math.hypot(inX, fraction(y) - 0.5));
    }
    case 'stripe':
      return soft(0.18 - Math.abs(fraction(x) - 0.5)) + 0.6 * soft(0.04 - Math.abs(fraction(x + 0.5) - 0.5));
    case 'check':
      return 0.5 * Number(fraction(x / 2) < 0.5) + 0.5 * Number(fraction(y / 2) < 0.5);
    case 'leaf': {
      const row = Math.floor(y / 1.2);
      const inX = fraction(x / 1.6 + (row % 2) / 2) - 0.5;
      const inY = fraction(y / 1.2) - 0.5;
      const lens = Math.max(Math.hypot(inX * 1.6 - 0.2, inY * 1.2), Math.hypot(inX * 1.6 + 0.2, inY * 1.2));
      return soft(0.42 - lens) * (Math.abs(inX) < 0.018 ? 0.3 : 1);
    }
    case 'cross': {
      const inX = Math.abs(fraction(x * 0.9) - 0.5);
      const inY = Math.abs(fraction(y * 0.9) - 0.5);
      return Math.max(inX < 0.05 && inY < 0.2 ? 1 : 0, inY < 0.05 && inX < 0.2 ? 1 : 0);
    }
    case 'wave':
      return soft(0.16 - Math.abs(fraction(y * 0.9 + 0.18 * Math.sin(x * Math.PI)) - 0.5));
    case 'speckle':
      return scatter(Math.floor(x * 9), Math.floor(y * 9)) > 0.86 ? 0.9 : 0;
    case 'chevron':
      return fraction(y + Math.abs(fraction(x) - 0.5)) < 0.42 ? 1 : 0;
    case 'ring': {
      const fromCenter = Math.hypot(fraction(x / 1.3) - 0.5, fraction(y / 1.3) - 0.5);
      return soft(0.07 - Math.abs(fromCenter - 0.3));
    }
  }
}

/** The weave, about 40 threads to the inch, as a factor of lightness near 1. */
function weave(x: number, y: number): number {
  const over = (Math.floor(x * 40) + Math.floor(y * 40)) % 2 === 0 ? 0.02 : -0.02;
  return 1 + over + 0.03 * (scatter(Math.floor(x * 40), Math.floor(y * 7)) - 0.5);
}

function fraction(value: number): number {
  return value - Math.floor(value);
}

function soft(distance: number): number {
  return Math.max(0, Math.min(1, distance / 0.04 + 0.5));
}

/** A pseudo-random number from 0 to 1 that depends only on the point. */
function scatter(x: number, y: number): number {
  const mixed = Math.imul((x * 374_761_393 + y * 668_265_263) ^ 0x9e3779b9, 0x85ebca6b);
  return ((mixed ^ (mixed >>> 13)) >>> 0) / 4_294_967_295;
}
