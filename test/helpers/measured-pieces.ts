import type { Measured } from '#core/calculators/center/center-find/input';
import { type Point, pointDistance } from '#core/geometry/point';
import { type Length, lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';

/** Finished pieces given by points in inches, y down, as a tape would measure them exactly to 1/320 mm. */

function between(from: Point | undefined, to: Point | undefined): Length {
  if (from === undefined || to === undefined) throw new Error('no such point');
  return wholeUnits(pointDistance(from, to));
}

export function wholeUnits(inches: number): Length {
  return lengthFromUnits(Math.round(inches * UNITS_PER_INCH));
}

/** Corners clockwise from the top left. */
export function fourSidesOf([a, b, c, d]: readonly Point[]): Extract<Measured, { way: 'four-sides' }> {
  return {
    way: 'four-sides',
    top: between(a, b),
    right: between(b, c),
    bottom: between(c, d),
    left: between(d, a),
    downToRight: between(a, c),
    upToRight: between(b, d),
    hasMotif: false,
    motifFromLeft: wholeUnits(12),
    motifFromTop: wholeUnits(12),
  };
}

/** Ends of the creases clockwise from the top. */
export function foldingOf([top, right, bottom, left]: readonly Point[]): Measured {
  return {
    way: 'folding',
    lengthwise: between(top, bottom),
    crosswise: between(left, right),
    topToRight: between(top, right),
    rightToBottom: between(right, bottom),
    bottomToLeft: between(bottom, left),
    leftToTop: between(left, top),
  };
}

/** Corners A, B, C and so on, clockwise. */
export function hexagonOf([a, b, c, d, e, f]: readonly Point[]): Measured {
  return {
    way: 'hexagon',
    ...{ hexAB: between(a, b), hexBC: between(b, c), hexCD: between(c, d) },
    ...{ hexDE: between(d, e), hexEF: between(e, f), hexFA: between(f, a) },
    ...{ hexAD: between(a, d), hexBE: between(b, e), hexCF: between(c, f) },
    ...{ hexAC: between(a, c), hexCE: between(c, e), hexEA: between(e, a) },
  };
}

export function octagonOf([a, b, c, d, e, f, g, h]: readonly Point[]): Measured {
  return {
    way: 'octagon',
    ...{ octAB: between(a, b), octBC: between(b, c), octCD: between(c, d), octDE: between(d, e) },
    ...{ octEF: between(e, f), octFG: between(f, g), octGH: between(g, h), octHA: between(h, a) },
    ...{ octAE: between(a, e), octBF: between(b, f), octCG: between(c, g), octDH: between(d, h) },
    ...{ octAC: between(a, c), octCE: between(c, e), octEG: between(e, g), octGA: between(g, a) },
  };
}

/** Pins A, B and C first, then the other points. */
export function edgePointsOf([a, b, c, ...others]: readonly Point[]): Measured {
  return {
    way: 'edge-points',
    ...pinsOf(a, b, c),
    others: others.map((one) => fromPinsOf(one, [a, b, c])),
  };
}

/** Corners in order around the edge; the pins are the first and those at these places. */
export function cornersOf(
  around: readonly Point[],
  [second, third] = [Math.floor(around.length / 3), Math.floor((2 * around.length) / 3)] as const,
): Measured {
  const pins = [around[0], around[second], around[third]] as const;
  const rows = (from: number, to: number) => around.slice(from + 1, to).map((one) => fromPinsOf(one, pins));
  return {
    way: 'corners',
    ...pinsOf(...pins),
    afterA: rows(0, second),
    afterB: rows(second, third),
    afterC: rows(third, around.length),
  };
}

function pinsOf(a: Point | undefined, b: Point | undefined, c: Point | undefined) {
  return { pinsAB: between(a, b), pinsBC: between(b, c), pinsCA: between(c, a) };
}

function fromPinsOf(one: Point, [a, b, c]: readonly (Point | undefined)[]) {
  return { toA: between(one, a), toB: between(one, b), toC: between(one, c) };
}

/** Chords of these lengths on a round piece of this radius. */
export function chordsOf(radius: number, lengths: readonly number[]): Measured {
  return {
    way: 'chords',
    chords: lengths.map((length) => ({
      chord: wholeUnits(length),
      height: wholeUnits(radius - Math.sqrt(radius ** 2 - length ** 2 / 4)),
    })),
  };
}

export function diametersOf(across: readonly number[]): Measured {
  const [fromA = 0, fromB = 0, fromC = 0, fromD = 0] = across.map(wholeUnits);
  return { way: 'diameters', fromA, fromB, fromC, fromD } as Measured;
}

/** A regular shape around (0, 0), clockwise. */
export function regularCorners(count: number, radius: number): readonly Point[] {
  return Array.from({ length: count }, (_, index) => {
    const angle = (2 * Math.PI * index) / count;
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
}

type Path = readonly (string | number)[];

/** The place of a motif is no length that is checked. */
function isOfMotif(path: Path): boolean {
  return String(path.at(-1)).startsWith('motif');
}

/** Where the measured lengths of an input stand; the place of a motif is none of them. */
export function lengthPaths(measured: unknown, path: Path = []): readonly Path[] {
  if (typeof measured === 'number') return isOfMotif(path) ? [] : [path];
  if (typeof measured !== 'object' || measured === null) return [];
  const isList = Array.isArray(measured);
  return Object.entries(measured).flatMap(([key, value]: [string, unknown]) =>
    lengthPaths(value, [...path, isList ? Number(key) : key]),
  );
}

/** The same input with something added to the measured lengths, in inches. */
export function misread(measured: Measured, off: (path: Path) => number): Measured {
  const change = (value: unknown, path: Path): unknown => {
    if (typeof value === 'number')
      return isOfMotif(path) ? value : value + Math.round(off(path) * UNITS_PER_INCH);
    if (Array.isArray(value)) return value.map((one, index) => change(one, [...path, index]));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, one]: [string, unknown]) => [key, change(one, [...path, key])]),
    );
  };
  return change(measured, []) as Measured;
}

/** Repeatable numbers from 0 to 1. */
export function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
