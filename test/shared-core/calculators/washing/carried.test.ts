import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backing } from '#core/calculators/backing/backing';
import { outerBinding } from '#core/calculators/binding/outer-binding/outer-binding';
import { holeSize } from '#core/calculators/center/hole-size/hole-size';
import { factFields, trialsIn } from '#core/calculators/fact-fields';
import { outlineBounds } from '#core/calculators/outline/outline-measures';
import { openDecisions } from '#core/calculators/unsettled';
import type { WashingInput } from '#core/calculators/washing/input';
import { washing } from '#core/calculators/washing/washing';
import { type Measurements, measurementsOfProject } from '#core/domain/measurements';
import { type DecidedFacts, decideFacts } from '#core/domain/project-facts';

import { STARTING_SETTINGS } from '#core/domain/workshop';
import { type Length, lengthFromInches as inches, lengthFromUnits } from '#core/units/length';
import { answerOf, refusalOf } from '#test/helpers/answer-of';
import { glance } from '#test/helpers/glances';

const bed: Measurements = {
  outline: { shape: 'rectangle', width: inches(60), length: inches(80) },
  hole: null,
  hasSlit: false,
  settings: { ...STARTING_SETTINGS, washAcrossPercent: 5, washAlongPercent: 5 },
};
/** The measurements of a project that had these and for which some facts are decided. */
function having(measurements: Measurements, decided: DecidedFacts): Measurements {
  const { settings } = measurements;
  const { project } = glance({ stages: ['planned'] });
  const before = { ...project, ...measurements, settingChanges: {} };
  return measurementsOfProject(decideFacts(before, decided), settings);
}
const wishFor = (width: number, length: number, shape: 'rectangle' | 'round' = 'rectangle') => ({
  wish: { shape, width: inches(width), length: inches(length) },
});
const decidedBy = (own: object, measurements = bed) =>
  Object.assign({}, ...openDecisions(washing, measurements, own).map(({ answer }) => answer)) as DecidedFacts;

describe('the shrinkage of a project', () => {
  const uneven = { ...bed, settings: { ...bed.settings, washAcrossPercent: 6, washAlongPercent: 2.5 } };

  it('is what washing starts with, and one changed there can be made the project’s', () => {
    expect(washing.fromProject(uneven)).toMatchObject({ acrossPercent: 6, alongPercent: 2.5 });
    const fields = factFields(washing, uneven);
    expect([fields.get('acrossPercent'), fields.get('alongPercent')]).toEqual([
      'washAcrossPercent',
      'washAlongPercent',
    ]);
    expect(trialsIn(washing, uneven, { alongPercent: 4 })).toEqual([
      { field: 'alongPercent', fact: 'washAlongPercent', tried: { washAlongPercent: 4 } },
    ]);
  });

  it('reaches the hole with its larger percentage, where another is no trial', () => {
    expect(holeSize.fromProject(uneven).washPercent).toBe(6);
    expect(trialsIn(holeSize, uneven, { washPercent: 1 })).toEqual([]);
    // A 12 in post with 1/2 in of ease needs a larger hole where more is lost in the wash.
    const cut = (measurements: Measurements) =>
      answerOf(holeSize, { ...holeSize.fromProject(measurements), from: 'across', measure: inches(12) })
        .details.exactDiameter;
    expect(cut(uneven)).toBeGreaterThan(cut(bed));
  });

  // Common practice: 70 in washed to 68 are 2.86%; along, 70 to 67 are 4.29%.
  it('can be taken from a washed sample, to a hundredth of a percent, and is settled then', () => {
    const own = { sample: { marked: inches(70), across: inches(68), along: inches(67) } };
    const decided = decidedBy(own);
    expect(decided).toEqual({ washAcrossPercent: 2.86, washAlongPercent: 4.29 });
    expect(openDecisions(washing, having(bed, decided), own)).toEqual([]);
    const grew = { sample: { marked: inches(20), across: inches(20.5), along: inches(20) } };
    expect(decidedBy(grew)).toEqual({ washAcrossPercent: 0, washAlongPercent: 0 });
  });
});

describe('a size wanted after washing', () => {
  // Common practice: to end at 90 at 5%, make 94 3/4; 108 then takes 113 3/4.
  it('decides the outline to make, once: it does not grow again when the project has it', () => {
    const own = wishFor(90, 108);
    const decided = decidedBy(own);
    expect(decided).toEqual({
      outline: { shape: 'rectangle', width: inches(94.75), length: inches(113.75) },
    });
    expect(openDecisions(washing, having(bed, decided), own)).toEqual([]);
  });

  it('decides nothing while there is no wish', () => {
    expect(decidedBy({})).toEqual({});
    expect(decidedBy({ width: inches(90), length: inches(90) })).toEqual({});
  });

  it('is a square or a circle where both sides are alike, and an oval where a circle shrinks unevenly', () => {
    expect(decidedBy(wishFor(90, 90)).outline).toEqual({ shape: 'square', side: inches(94.75) });
    expect(decidedBy(wishFor(90, 90, 'round')).outline).toEqual({ shape: 'circle', diameter: inches(94.75) });
    const uneven = { ...wishFor(90, 90, 'round'), acrossPercent: 5, alongPercent: 0 };
    expect(decidedBy(uneven).outline).toEqual({
      shape: 'ellipse',
      width: inches(94.75),
      length: inches(90),
    });
  });

  it('washes to no less than the wish, and to less than a step more', () => {
    const side = fc.integer({ min: inches(10), max: inches(120) }).map(lengthFromUnits);
    const percent = fc.integer({ min: 0, max: 150 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(side, side, percent, percent, (width, length, acrossPercent, alongPercent) => {
        const own = { wish: { shape: 'rectangle' as const, width, length }, acrossPercent, alongPercent };
        const { outline = bed.outline } = decidedBy(own);
        const made = outlineBounds(outline);
        const after = answerOf(washing, {
          ...washing.fromProject(bed),
          acrossPercent,
          alongPercent,
          width: made.width as Length,
          length: made.length as Length,
        }).details;
        const spare = [after.washedWidth - width, after.washedLength - length];
        for (const one of spare) {
          expect(one).toBeGreaterThanOrEqual(-1);
          expect(one).toBeLessThan(inches(1 / 8));
        }
      }),
    );
  });

  it('reaches backing and binding with the outline', () => {
    const wished = having(bed, { outline: { shape: 'rectangle', width: inches(90), length: inches(108) } });
    const made = having(bed, decidedBy(wishFor(90, 108)));
    const edge = (one: Measurements) => answerOf(outerBinding, outerBinding.fromProject(one)).details.edge;
    // Derived: 2 × (94 3/4 + 113 3/4) against 2 × (90 + 108).
    expect((edge(made) - edge(wished)) / inches(1)).toBeCloseTo(21, 6);
    const { width, length } = answerOf(backing, backing.fromProject(made)).details;
    // With the 4 in overhang on every side and the seam allowance that both tops have.
    const before = answerOf(backing, backing.fromProject(wished)).details;
    expect([width - before.width, length - before.length]).toEqual([inches(4.75), inches(5.75)]);
  });

  it('is refused where the project would be larger than 10 m, and shown in figures and table alike', () => {
    const input: WashingInput = { ...washing.fromProject(bed), ...wishFor(390, 100) };
    expect(refusalOf(washing, input)).toMatchObject({ code: 'too-large', field: ['wish', 'width'] });
    const { figures, tables } = answerOf(washing, { ...input, ...wishFor(90, 108) });
    expect(figures[0]?.quantity).toMatchObject({
      width: { rounded: inches(94.75) },
      length: { rounded: inches(113.75) },
    });
    expect(tables[0]?.rows[2]?.slice(1)).toMatchObject([{ rounded: inches(90) }, { rounded: inches(108) }]);
  });

  it('is missing from an answer saved before, which reads and comes out as it did', () => {
    const { wish: _, ...before } = washing.fromProject(bed);
    const read = washing.input.parse(before);
    expect(read).toEqual(washing.fromProject(bed));
  });
});
