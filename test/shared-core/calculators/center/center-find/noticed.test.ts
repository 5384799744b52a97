import { describe, expect, it } from 'vitest';
import { findCenter } from '#core/calculators/center/center-find/find';
import type { Measured } from '#core/calculators/center/center-find/input';
import type { Point } from '#core/geometry/point';
import { lengthFromInches as inches } from '#core/units/length';
import {
  chordsOf,
  cornersOf,
  diametersOf,
  edgePointsOf,
  foldingOf,
  fourSidesOf,
  hexagonOf,
  lengthPaths,
  misread,
  numbersFrom,
  octagonOf,
  regularCorners,
} from '#test/helpers/measured-pieces';

/**
 * Simulated readings on a piece 48 in across: every length right to 1/16 in, and one of them wrong by 1/2 to 1 in besides. The
 * shapes are random within what makers sew. The shares are those of the notes of each way.
 */
const RUNS = 400;
const random = numbersFrom(48);
const within = (low: number, high: number) => low + (high - low) * random();
const moved = (points: readonly Point[], by: number): readonly Point[] =>
  points.map(({ x, y }) => ({ x: x + within(-by, by), y: y + within(-by, by) }));

const rectangle = (height: number): readonly Point[] => [
  { x: 0, y: 0 },
  { x: 48, y: 0 },
  { x: 48, y: height },
  { x: 0, y: height },
];
const creaseEnds = (height: number): readonly Point[] => [
  { x: 24, y: 0 },
  { x: 48, y: height / 2 },
  { x: 24, y: height },
  { x: 0, y: height / 2 },
];
const onCircle = (degrees: number): Point => ({
  x: 24 * Math.cos((degrees * Math.PI) / 180),
  y: 24 * Math.sin((degrees * Math.PI) / 180),
});
/** Pins about a third of the way round apart, and the other points between them. */
const aroundCircle = (others: number) => [
  ...[0, 120, 240].map((degrees) => onCircle(degrees + within(-20, 20))),
  ...Array.from({ length: others }, (_, index) => onCircle(60 + 120 * index + within(-20, 20))),
];
const anyCorners = (count: number) =>
  Array.from({ length: count }, (_, index) => {
    const angle = (2 * Math.PI * (index + within(-0.3, 0.3))) / count;
    const reach = 24 * within(0.75, 1);
    return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
  });
/** A strip 48 by 8 with a corner in the middle of its lower side. */
const STRIP: readonly Point[] = [...rectangle(8).slice(0, 3), { x: 24, y: 8 }, ...rectangle(8).slice(3)];
const chords = (count: number, low: number, high: number) =>
  chordsOf(
    24,
    Array.from({ length: count }, () => within(low, high)),
  );

function shares(piece: () => Measured) {
  let [noticed, named, alarmed] = [0, 0, 0];
  for (let run = 0; run < RUNS; run += 1) {
    const right = piece();
    const paths = lengthPaths(right);
    const wrong = paths[Math.floor(random() * paths.length)]!.join();
    const error = (random() < 0.5 ? -1 : 1) * within(0.5, 1);
    const read = misread(right, () => within(-1 / 16, 1 / 16));
    const found = findCenter({
      measured: misread(read, (path) => (path.join() === wrong ? error : 0)),
      accuracy: inches(1 / 8),
    });
    const closure = found.ok ? found.value.closure : null;
    const isNoticed = (closure?.error ?? Infinity) > (closure?.limit ?? 0);
    noticed += isNoticed ? 1 : 0;
    const suspects = closure?.suspects ?? [];
    const isNamed =
      found.ok &&
      suspects.length <= 3 &&
      suspects.some(({ index }) => found.value.lengths[index]!.path.join() === wrong);
    named += isNamed ? 1 : 0;
    const clean = findCenter({ measured: read, accuracy: inches(1 / 8) });
    if (!clean.ok || clean.value.closure.error! > clean.value.closure.limit) alarmed += 1;
  }
  return { noticed: noticed / RUNS, named: named / RUNS, alarmed: alarmed / RUNS };
}

describe('one length wrong by 1/2 to 1 in on a piece 48 in across', () => {
  it.each<[string, () => Measured, number, number]>([
    ['four sides, 24 to 72 in high', () => fourSidesOf(moved(rectangle(within(24, 72)), 0.5)), 0.99, 0.5],
    ['four sides, 12 to 24 in high', () => fourSidesOf(moved(rectangle(within(12, 24)), 0.5)), 0.95, 0.5],
    ['a true rectangle', () => fourSidesOf(rectangle(within(24, 72))), 0.99, 0.9],
    ['two creases, 12 to 72 in long', () => foldingOf(moved(creaseEnds(within(12, 72)), 0.25)), 0.99, 0.85],
    ['four diameters', () => diametersOf([48, 48, 48, 48]), 1, 1],
    ['a hexagon', () => hexagonOf(moved(regularCorners(6, 24), 0.25)), 0.99, 0.95],
    ['an octagon', () => octagonOf(moved(regularCorners(8, 24), 0.25)), 0.99, 0.92],
    ['four points on a round edge', () => edgePointsOf(aroundCircle(1)), 0.98, 0.7],
    ['six points on a round edge', () => edgePointsOf(aroundCircle(3)), 0.99, 0.97],
    // With six lengths between four corners, each explains an error as well as any other: none is named.
    ['four corners of any shape', () => cornersOf(anyCorners(4)), 0.98, 0],
    ['six corners of any shape', () => cornersOf(anyCorners(6)), 0.98, 0.95],
    ['eight corners of any shape', () => cornersOf(anyCorners(8)), 0.97, 0.95],
    ['two long chords', () => chords(2, 36, 44), 0.99, 0],
    ['three long chords', () => chords(3, 36, 44), 0.99, 0.97],
  ])(
    'is noticed in at least 95 of 100 cases, and among one to three lengths to measure again: %s',
    (_what, piece, least, leastNamed) => {
      const { noticed, named, alarmed } = shares(piece);
      expect(noticed).toBeGreaterThanOrEqual(least);
      expect(named).toBeGreaterThanOrEqual(leastNamed);
      expect(alarmed).toBeLessThan(0.12);
    },
  );

  // On these the other lengths hardly depend on the wrong one; the notes of each way say so.
  it.each<[string, () => Measured, number, number]>([
    ['four sides, 6 to 12 in high: about 15 missed', () => fourSidesOf(rectangle(within(6, 12))), 0.82, 0.9],
    ['two creases, 6 to 12 in long: about 7', () => foldingOf(creaseEnds(within(6, 12))), 0.9, 0.96],
    ['five corners of a shape 48 by 8: about 15', () => cornersOf(STRIP, [1, 3]), 0.8, 0.9],
    ['chords of a quarter to half the way across: about 33', () => chords(3, 12, 24), 0.6, 0.74],
  ])('is missed in as many cases as the note says: %s', (_what, piece, least, most) => {
    const { noticed } = shares(piece);
    expect(noticed).toBeGreaterThan(least);
    expect(noticed).toBeLessThan(most);
  });
});
