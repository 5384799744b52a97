import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { radiusOfChord } from '#core/calculators/center/center-find/ways/chords';
import type { Measured } from '#core/calculators/center/center-find/input';
import { pointDistance } from '#core/geometry/point';
import { lengthFromInches as inches, UNITS_PER_INCH } from '#core/units/length';
import {
  expectArcs,
  foundCenter as found,
  notesOfCenter as notesOf,
  refusalOfCenter as refusalOf,
} from '#test/helpers/found-center';
import { chordsOf, diametersOf, edgePointsOf, regularCorners } from '#test/helpers/measured-pieces';
import { rotatePoint } from '#test/helpers/rotate-point';

const turn = fc.double({ min: 0, max: 6, noNaN: true });
const O = { x: 0, y: 0 };

describe('a round piece', () => {
  it('has its center half of each diameter from its pin (derived)', () => {
    const { arcs, closure } = found(diametersOf([48, 48.125, 47.875, 48]));
    expect(arcs.map(({ distance }) => distance / UNITS_PER_INCH)).toEqual([24, 24.0625, 23.9375, 24]);
    expect(closure.error! <= closure.limit).toBe(true);
  });

  it('has a suspect if one diameter is wrong, and is refused if it is no round at all', () => {
    const { closure, lengths } = found(diametersOf([48, 48, 49, 48]));
    expect(closure.suspects.map(({ index }) => lengths[index]!.words)).toEqual(['across from pin C']);
    expect(closure.suspects[0]!.fits).toBeCloseTo(inches(48), 3);
    expect(refusalOf(diametersOf([48, 60, 48, 60]))).toMatchObject({
      code: 'lengths-do-not-meet',
      field: ['measured', 'fromA'],
    });
  });

  it('through points at (1, 1), (2, 4) and (5, 3) has its center at (3, 2), with (1, 3) and (4, 4) on the same edge', () => {
    // Published: MSE, three points and their circle of radius √5. Sizes in tens of inches.
    const points = [
      { x: 1, y: 1 },
      { x: 5, y: 3 },
      { x: 2, y: 4 },
      { x: 1, y: 3 },
      { x: 4, y: 4 },
    ].map(({ x, y }) => ({ x: 10 * x, y: 10 * y }));
    const answered = found(edgePointsOf(points));
    expectArcs(answered, { x: 30, y: 20 }, points);
    const radius = answered.figures.find(({ label }) => label === 'Radius')!.quantity;
    expect(radius.kind === 'length' && radius.exact / UNITS_PER_INCH).toBeCloseTo(10 * Math.sqrt(5), 3);
  });

  it('with a square drawn round it has its center where the diagonals of the square cross', () => {
    // Published: NEX, the center of a circle by a square and its diagonals.
    const touching = [0, 90, 180, 270].map((degrees) =>
      rotatePoint({ x: 24, y: 0 }, (degrees * Math.PI) / 180),
    );
    const answered = found(edgePointsOf(touching));
    const [right, below, left, above] = answered.picture.named.map(({ point }) => point);
    // Corners of the square: each two neighboring points and the center make three corners of a smaller one.
    const [one, other] = [
      { x: right!.x + below!.x, y: right!.y + below!.y },
      { x: left!.x + above!.x, y: left!.y + above!.y },
    ];
    const crossing = { x: (one.x + other.x) / 4, y: (one.y + other.y) / 4 };
    expect(pointDistance(answered.centers[0]!.point, crossing)).toBeLessThan(1);
  });

  it('is found from any points around its edge, wherever they lie', () => {
    const gaps = fc.array(fc.double({ min: 0.5, max: 1.5, noNaN: true }), { minLength: 4, maxLength: 10 });
    fc.assert(
      fc.property(gaps, turn, (shares, angle) => {
        const all = shares.reduce((sum, one) => sum + one, 0);
        let sum = 0;
        const around = shares.map((share) => {
          sum += share;
          return rotatePoint({ x: 24, y: 0 }, angle + (2 * Math.PI * sum) / all);
        });
        const third = Math.floor(around.length / 3);
        const pins = [0, third, 2 * third];
        const points = [...pins.map((pin) => around[pin]!), ...around.filter((_, at) => !pins.includes(at))];
        expectArcs(found(edgePointsOf(points)), O, points);
      }),
    );
  });

  it('is said to be out of round, or measured on one half only', () => {
    const oval = regularCorners(6, 24).map(({ x, y }) => ({ x, y: 1.03 * y }));
    const pins = [0, 2, 4, 1, 3, 5].map((at) => oval[at]!);
    expect(
      notesOf(edgePointsOf(pins))
        .map(({ says }) => says)
        .join(),
    ).toMatch(/out of round by/);
    const half = [0, 80, 160, 40, 120].map((degrees) =>
      rotatePoint({ x: 24, y: 0 }, (degrees * Math.PI) / 180),
    );
    expect(notesOf(edgePointsOf(half))[0]).toMatchObject({ kind: 'warning' });
    expect(notesOf(edgePointsOf(half))[0]!.says).toMatch(/on one half of the edge/);
    const around = [0, 2, 4, 1, 3, 5].map((at) => regularCorners(6, 24)[at]!);
    expect(notesOf(edgePointsOf(around))[0]!.kind).toBe('tip');
  });

  it.each([
    [20, 2, 26],
    [36, 3, 55.5],
  ])('with a chord of %d and a height of %d has a radius of %d', (chord, height, radius) => {
    // Published: CHD, (4h² + c²) ÷ 8h.
    expect(radiusOfChord(chord, height)).toBe(radius);
    const one = { chord: inches(chord), height: inches(height) };
    const answered = found({ way: 'chords', chords: [one, one] });
    expect(answered.arcs[0]!.distance / UNITS_PER_INCH).toBeCloseTo(radius, 3);
    const step = answered.working[0]!.result;
    expect(step.kind === 'length' && step.exact).toBeCloseTo(inches(radius), 3);
  });

  it('is found from any chords, and the suspect is the chord that gives another radius', () => {
    const lengths = fc.array(fc.double({ min: 20, max: 47, noNaN: true }), { minLength: 3, maxLength: 6 });
    fc.assert(
      fc.property(lengths, (chords) => {
        const answered = found(chordsOf(24, chords));
        expect(Math.abs(answered.arcs[0]!.distance - inches(24))).toBeLessThan(20);
      }),
    );
    const measured = chordsOf(24, [40, 36, 38]) as Extract<Measured, { way: 'chords' }>;
    const [first, ...rest] = measured.chords;
    const wrong = { ...measured, chords: [{ ...first!, height: inches(15) }, ...rest] };
    const { closure, lengths: named } = found(wrong);
    expect(closure.suspects.every(({ index }) => named[index]!.words.endsWith('chord 1'))).toBe(true);
  });

  it('is not known well from short chords: the warning says by how much, as tapes off by 1/8 in show', () => {
    const short = chordsOf(24, [18, 18]) as Extract<Measured, { way: 'chords' }>;
    const [warning] = notesOf(short);
    expect(warning?.says).toMatch(/chords are short/);
    const sure = warning?.values['sure'];
    const said = sure?.kind === 'length' ? sure.exact / UNITS_PER_INCH : NaN;
    // By hand: dr = (1/2 − c²/8h²) dh and (c/4h) dc, each 1/8, two chords.
    const height = 24 - Math.sqrt(576 - 81);
    const [byHeight, byChord] = [1 / 2 - 18 ** 2 / (8 * height ** 2), 18 / (4 * height)];
    expect(said).toBeCloseTo(Math.hypot(byHeight, byChord) / 8 / Math.SQRT2, 2);
    expect(notesOf(chordsOf(24, [40, 40]))[0]?.kind).toBe('tip');
  });

  it('has no such chords where heights are past the center or far too low', () => {
    const past = { chord: inches(20), height: inches(40) };
    expect(refusalOf({ way: 'chords', chords: [past, past] })).toMatchObject({ code: 'lengths-do-not-meet' });
    const straight = { chord: inches(500), height: inches(1) };
    expect(refusalOf({ way: 'chords', chords: [past, straight] })).toMatchObject({
      code: 'edge-nearly-straight',
      field: ['measured', 'chords', 1, 'height'],
      values: { number: { exact: 2 } },
    });
    const [flat, deep] = [
      { chord: inches(40), height: inches(2) },
      { chord: inches(40), height: inches(18) },
    ];
    expect(refusalOf({ way: 'chords', chords: [flat, deep] })).toMatchObject({
      field: ['measured', 'chords', 0, 'height'],
    });
  });
});
