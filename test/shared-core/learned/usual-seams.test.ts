import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { settingsWithUsualSeams, usualSeams } from '#core/learned/usual-seams';
import { lengthFromInches } from '#core/units/length';
import { seamCheckOf } from '#test/helpers/seam-checks';

const inches = lengthFromInches;

/** A project whose seams take `off` inches too much on each side, as six blocks say that scatter by a little. */
function project(projectId: string, off: number) {
  const scatter = [-1, 1, -1, 1, -1, 1].map((sign) => (sign * 1) / 64);
  return { projectId, input: seamCheckOf(scatter.map((one) => one - 4 * off)) };
}

describe('usual seams', () => {
  it('are not known without a project, and not used with fewer than three', () => {
    expect(usualSeams([])).toEqual({ projects: 0, mean: null, spread: null, inUse: null });
    const one = usualSeams([project('a', 1 / 32)]);
    expect(one).toMatchObject({ projects: 1, spread: null, inUse: null });
    expect(one.mean).toBeCloseTo(inches(1 / 32), 6);
    const two = usualSeams([project('a', 1 / 32), project('b', 1 / 64)]);
    expect(two).toMatchObject({ projects: 2, inUse: null });
    expect(settingsWithUsualSeams(STARTING_SETTINGS, two)).toBe(STARTING_SETTINGS);
  });

  it('are the mean and the spread of three projects, with Student’s factor for the next (derived)', () => {
    const usual = usualSeams([project('a', 1 / 64), project('b', 2 / 64), project('c', 3 / 64)]);
    expect(usual.projects).toBe(3);
    expect(usual.mean).toBeCloseTo(inches(2 / 64), 5);
    expect(usual.spread).toBeCloseTo(inches(1 / 64), 5);
    // Published: NIST-E, t = 4.303 for two degrees of freedom: 2/64 + 4.303 · 1/64 · √(4/3).
    const off = inches((2 + 4.3027 * Math.sqrt(4 / 3)) / 64);
    expect(Math.abs(usual.inUse!.seamOff - off)).toBeLessThanOrEqual(1);
    // The scatter of one patch: six blocks off by 1/64 each way, of weight 1/3, with five degrees of freedom; t = 2.131 for 15.
    const cut = 2.1314 * inches(1 / 64) * Math.sqrt(6 / 3 / 5);
    expect(usual.inUse!.cutOff - cut).toBeGreaterThanOrEqual(-0.1);
    expect(usual.inUse!.cutOff - cut).toBeLessThanOrEqual(1);
  });

  it('count a project once, with its last check that says something', () => {
    const checks = [project('a', 5 / 64), project('a', 1 / 64), { projectId: 'a', input: seamCheckOf([]) }];
    expect(usualSeams(checks)).toMatchObject({ projects: 1 });
    expect(usualSeams(checks).mean).toBeCloseTo(inches(1 / 64), 6);
  });

  it('leave out what no longer reads, what was refused, and what is not known well enough', () => {
    const others = [null, {}, 'words', seamCheckOf([-9, -9]), seamCheckOf([-0.4, 0.4, 0.3])].map(
      (input, at) => {
        return { projectId: String(at), input };
      },
    );
    expect(usualSeams(others)).toEqual({ projects: 0, mean: null, spread: null, inUse: null });
  });

  it('are never more than the settings let through, and go into them', () => {
    const wide = [project('a', 1 / 16), project('b', -1 / 16), project('c', 1 / 16)];
    const { seamOff, cutOff, ...others } = settingsWithUsualSeams(STARTING_SETTINGS, usualSeams(wide));
    expect(seamOff).toBe(inches(1 / 4));
    expect(cutOff).toBeLessThan(inches(1 / 4));
    expect({ ...others, seamOff: STARTING_SETTINGS.seamOff, cutOff: STARTING_SETTINGS.cutOff }).toEqual(
      STARTING_SETTINGS,
    );
  });

  it('do not depend on the order of the projects, and allow for more where these differ more', () => {
    const anyOff = fc.integer({ min: -60, max: 60 }).map((units) => units / 2_000);
    fc.assert(
      fc.property(fc.array(anyOff, { minLength: 3, maxLength: 8 }), (offs) => {
        const projects = offs.map((off, at) => project(String(at), off));
        const usual = usualSeams(projects);
        const turned = usualSeams(projects.toReversed());
        expect(turned.mean).toBeCloseTo(usual.mean!, 6);
        expect(turned.inUse!.cutOff).toBe(usual.inUse!.cutOff);
        const apart = usualSeams(
          offs.map((off, at) => project(String(at), off + (at % 2 === 0 ? 1 / 16 : -1 / 16))),
        );
        expect(apart.projects).toBe(offs.length);
        expect(usual.inUse!.seamOff).toBeGreaterThanOrEqual(Math.abs(usual.mean!) - 1e-6);
      }),
    );
  });
});
