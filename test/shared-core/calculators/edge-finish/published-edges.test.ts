import { describe, expect, it } from 'vitest';
import { prairiePoints } from '#core/calculators/edge-finish/prairie-points/prairie-points';
import { ruffle } from '#core/calculators/edge-finish/ruffle/ruffle';
import { ruffleInput } from '#core/calculators/edge-finish/ruffle/input';
import type { Outline } from '#core/domain/outline';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches, UNITS_PER_INCH, UNITS_PER_YARD } from '#core/units/length';
import { answerOf } from '#test/helpers/answer-of';

const project = (outline: Outline) => ({
  outline,
  hole: null,
  hasSlit: false,
  settings: STARTING_SETTINGS,
});
/** Gathers along one edge, in one layer with a hem at both ends. */
const gathered = (edge: number, fullness: number, ends: number, fabric: number) =>
  answerOf(ruffle, {
    ...ruffle.fromProject(project({ shape: 'square', side: inches(40) })),
    around: 'one-edge',
    oneEdge: inches(edge),
    ruffle: { style: 'gathers', fullness },
    layers: 'hemmed',
    hem: inches(ends / 2),
    fabricWidth: inches(fabric),
  }).details;

describe('prairie points around a quilt', () => {
  // Common practice: 80 squares of 4 in, 23 on each long side and 17 on each short one. Derived: with at least 1/2 in of overlap they are
  // as many around 68 by 50 in.
  it('are 23 and 17 to a side of 68 by 50 in, 80 in all', () => {
    const outline = { shape: 'rectangle', width: inches(50), length: inches(68) } as const;
    const { sides, points } = answerOf(prairiePoints, {
      ...prairiePoints.fromProject(project(outline)),
      height: inches(1.75),
      overlap: inches(1 / 2),
    }).details;
    expect(new Set(sides.map((side) => side.points))).toEqual(new Set([17, 23]));
    expect(points).toBe(80);
  });
});

describe('fullness in print', () => {
  // Common practice: a curtain of 84 in at 2.5 is 210 in; 15 more for the ends are 225, 4.17 widths of 54 in, so five, and five of 88 in are
  // 12.22 yd. Published: HOM, a track of 65 in at 2.25 is 146.25 in, 2.71 widths, so three, and three of 96 in are 8 yd.
  it.each([
    [84, 2.5, 15, 210, 4.17, 5, 88, 12.22],
    [65, 2.25, 0, 146.25, 2.71, 3, 96, 8],
  ])('%d in at %f and %d in for the ends', (edge, fullness, ends, flat, share, widths, drop, yards) => {
    const gathers = gathered(edge, fullness, ends, 54);
    expect(gathers.flat / UNITS_PER_INCH).toBeCloseTo(flat, 2);
    expect(gathers.needed / inches(54)).toBeCloseTo(share, 2);
    expect(gathers.strips).toBe(widths);
    expect((widths * inches(drop)) / UNITS_PER_YARD).toBeCloseTo(yards, 2);
  });

  // Common practice: 1.5 is light, 2 standard, 2.25 for pinch pleats, 2.5 full.
  it.each([1.5, 2, 2.25, 2.5])('of %f can be asked for', (fullness) => {
    expect(gathered(24, fullness, 0, 42).fullness).toBe(fullness);
  });

  it('of a usual ruffle is in the words of its field', () => {
    expect(JSON.stringify(ruffleInput.toJSONSchema({ unrepresentable: 'any' }))).toContain('1.5 to 3');
  });

  // Known slip: HSB84 takes the diameter times 3 1/2, times 2, for twice the way around; that is 11.4% more than 2π · D.
  it('around a circle is twice its edge, which the rule of 3 1/2 exceeds by 11.4%', () => {
    const circle = project({ shape: 'circle', diameter: inches(30) });
    const { flat } = answerOf(ruffle, {
      ...ruffle.fromProject(circle),
      ruffle: { style: 'gathers', fullness: 2 },
    }).details;
    expect(flat / UNITS_PER_INCH).toBeCloseTo(6.283 * 30, 1);
    expect((30 * 3.5 * 2 * UNITS_PER_INCH) / flat).toBeCloseTo(1.114, 3);
  });
});
