/** A screen color as red, green and blue, 0 to 255 (sRGB, IEC 61966-2-1). */
export type ScreenColor = readonly [red: number, green: number, blue: number];

/** Lightness, then green to red, then blue to yellow. Colors at a small distance look alike. */
export type PerceivedColor = readonly [lightness: number, greenToRed: number, blueToYellow: number];

/** Reads six hex digits behind a hash, as a fabric keeps its color. Throws RangeError for any other text. */
export function screenColorFromHex(hex: string): ScreenColor {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new RangeError(`Not a color: ${hex}`);
  const part = (at: number) => Number.parseInt(hex.slice(at, at + 2), 16);
  return [part(1), part(3), part(5)];
}

/** Converts to OKLab (Björn Ottosson, 2020, public domain). Lightness 0 to 1. */
export function perceivedColor(color: ScreenColor): PerceivedColor {
  const [r, g, b] = lightOf(color);
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

/** L* of CIE 1976 (ISO/CIE 11664-4) under daylight D65: 0 for black, 100 for white. This is the value that quilters call light, medium and dark. */
export function lightnessOf(color: ScreenColor): number {
  const [r, g, b] = lightOf(color);
  const luminance = 0.2126 * r + 0.7152 * g + 0.0722 * b;
  const isDark = luminance <= (6 / 29) ** 3;
  return 116 * (isDark ? luminance / 3 / (6 / 29) ** 2 + 4 / 29 : Math.cbrt(luminance)) - 16;
}

/** Undoes the sRGB curve, giving amounts of light from 0 to 1. */
function lightOf(color: ScreenColor): readonly [number, number, number] {
  const [r, g, b] = color;
  return [linear(r), linear(g), linear(b)];
}

function linear(value: number): number {
  const share = value / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}
