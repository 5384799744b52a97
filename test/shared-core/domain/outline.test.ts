import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handFinish } from '#core/calculators/hand-finish/hand-finish';
import { calculators } from '#core/calculators/registry';
import { answerCalculator } from '#core/calculators/complete-input';
import { type Outline, outlineSchema, savedOutlineSchema, sidesFault } from '#core/domain/outline';
import { projectDetailsSchema, savedDetailsSchema } from '#core/domain/project';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches as inches } from '#core/units/length';
import { glance } from '#test/helpers/glances';
import { anyOutline } from '#test/helpers/measurements';

const sidesOf = (sides: readonly number[], width: number, length: number): Outline => ({
  shape: 'sides',
  sides: sides.map((side) => inches(side)),
  width: inches(width),
  length: inches(length),
});

/** The two cases that were accepted: a binding of 114 in was asked for the first, and 90 by 90 in for the second. */
const ONE_TOO_LONG = sidesOf([1, 1, 100], 3, 3);
const TOO_SHORT = sidesOf([10, 10, 10], 90, 90);
const TOO_LONG_FOR_ITS_SIZE = sidesOf([60, 40, 40, 40], 36, 40);

describe('sides as measured', () => {
  it.each([
    [ONE_TOO_LONG, 'side-too-long', ['sides'], 'the longest one shorter'],
    [TOO_LONG_FOR_ITS_SIZE, 'side-past-size', ['sides'], 'none longer than the diagonal'],
    [TOO_SHORT, 'too-short-around', ['width'], 'too short for them'],
  ] as const)('that cannot close are refused where they are entered', (outline, fault, path, says) => {
    expect(sidesFault(outline)).toBe(fault);
    const read = outlineSchema.safeParse(outline);
    expect(read.success).toBe(false);
    expect(read.error?.issues.map((issue) => issue.path)).toEqual([path]);
    expect(read.error?.issues[0]?.message).toContain(says);
  });

  it('are refused by every calculator that asks for an outline, with the same words', () => {
    const { project } = glance({ stages: ['planned'] });
    const measurements = { ...project, hole: null, hasSlit: false, settings: STARTING_SETTINGS };
    const asking = calculators.filter((one) => 'outline' in one.fromProject(measurements));
    expect(asking.length).toBeGreaterThanOrEqual(10);
    for (const calculator of asking) {
      const answer = answerCalculator(calculator, measurements, { outline: TOO_SHORT });
      expect(answer).toMatchObject({ ok: false, error: { code: 'invalid-input' } });
      if (!answer.ok && answer.error.code === 'invalid-input')
        expect(answer.error.fields[0]?.expected).toContain('too short for them');
    }
    expect(asking).toContain(handFinish);
  });

  it('that cannot close are still read from a notebook that has them, and not saved again', () => {
    const { project } = glance({ stages: ['planned'] });
    for (const outline of [ONE_TOO_LONG, TOO_SHORT, TOO_LONG_FOR_ITS_SIZE]) {
      expect(savedOutlineSchema.parse(outline)).toEqual(outline);
      expect(savedDetailsSchema.parse({ ...project, outline })).toMatchObject({ outline });
      expect(projectDetailsSchema.safeParse({ ...project, outline }).success).toBe(false);
    }
  });

  it('of a triangle of 3, 4 and 5 in close, and of 3, 4 and 7 in do not (derived)', () => {
    expect(sidesFault(sidesOf([3, 4, 5], 4, 3))).toBeNull();
    expect(sidesFault(sidesOf([3, 4, 7], 7, 3))).toBe('side-too-long');
  });

  it('of any true shape are accepted, as is every other shape', () => {
    fc.assert(
      fc.property(anyOutline(), (outline) => {
        expect(sidesFault(outline)).toBeNull();
        expect(outlineSchema.parse(outline)).toEqual(outline);
      }),
    );
  });

  it('of a true shape are refused if one of them is misread as longer than all the others together', () => {
    fc.assert(
      fc.property(anyOutline(), fc.nat(11), (outline, at) => {
        if (outline.shape !== 'sides') return;
        const others = outline.sides.filter((_, index) => index !== at % outline.sides.length);
        const around = others.reduce<number>((sum, side) => sum + side, 0);
        const sides = [...others, around];
        expect(outlineSchema.safeParse({ ...outline, sides }).success).toBe(false);
      }),
    );
  });
});
