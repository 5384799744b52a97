import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backing } from '#core/calculators/backing/backing';
import { outerBinding } from '#core/calculators/binding/outer-binding/outer-binding';
import { answerCalculator, bareUnitOf, completeInput, isOutOfDate } from '#core/calculators/complete-input';
import { calculators } from '#core/calculators/registry';
import type { Measurements } from '#core/domain/measurements';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { anyMeasurements, METRIC_SETTINGS } from '#test/helpers/measurements';

const inches = lengthFromInches;
const throwQuilt: Measurements = {
  outline: { shape: 'rectangle', width: inches(50), length: inches(65) },
  hole: null,
  hasSlit: false,
  settings: STARTING_SETTINGS,
};

function keep(measurements: Measurements, own: object) {
  const completed = completeInput(backing, measurements, own);
  if (!completed.ok) throw new Error(JSON.stringify(completed.error));
  return { version: backing.version, ...completed.value };
}

describe('completing an input', () => {
  it('lays the maker’s own fields over the project’s, and keeps them in whole units', () => {
    const { input, ownInput } = keep(throwQuilt, { fabricWidth: '40 1/2', seam: '1 cm' });
    expect(input).toEqual({
      ...backing.fromProject(throwQuilt),
      fabricWidth: inches(40.5),
      seam: lengthFromMillimeters(10),
    });
    expect(ownInput).toEqual({ fabricWidth: inches(40.5), seam: lengthFromMillimeters(10) });
  });

  it('reads bare numbers in the units of the project', () => {
    expect([bareUnitOf('inch'), bareUnitOf('metric')]).toEqual(['in', 'cm']);
    expect(keep(throwQuilt, { fabricWidth: '42' }).ownInput).toEqual({ fabricWidth: inches(42) });
    const metric = { ...throwQuilt, settings: METRIC_SETTINGS };
    expect(keep(metric, { fabricWidth: '110' }).ownInput).toEqual({
      fabricWidth: lengthFromMillimeters(1_100),
    });
  });

  it.each([null, undefined, 'x', 3, []])('takes no %j for the maker’s own part', (own) => {
    expect(completeInput(backing, throwQuilt, own)).toMatchObject({
      ok: false,
      error: [{ path: [], expected: 'a group of fields' }],
    });
  });

  it('gives the answer, the faults of the input, or the refusal', () => {
    const answer = answerCalculator(backing, throwQuilt, { seam: '1/4' });
    expect(answer).toMatchObject({ ok: true, value: { ownInput: { seam: inches(1 / 4) } } });
    expect(answer.ok && answer.value.calculation).toEqual(
      backing.calculate({ ...backing.fromProject(throwQuilt), seam: inches(1 / 4) }).ok
        ? (
            backing.calculate({ ...backing.fromProject(throwQuilt), seam: inches(1 / 4) }) as {
              value: unknown;
            }
          ).value
        : null,
    );
    expect(answerCalculator(backing, throwQuilt, { seam: '-1' })).toMatchObject({
      ok: false,
      error: { code: 'invalid-input', fields: [{ path: ['seam'] }] },
    });
    const eaten = { fabricWidth: '4', wideWidth: '4', seam: '2' };
    expect(answerCalculator(backing, throwQuilt, eaten)).toMatchObject({
      ok: false,
      error: { code: 'refused', refusal: { code: 'too-many-panels' } },
    });
  });
});

describe('a kept answer', () => {
  const kept = keep(throwQuilt, { seam: '5/8 in' });
  const changed = (settings: Partial<typeof STARTING_SETTINGS>): Measurements => {
    return { ...throwQuilt, settings: { ...STARTING_SETTINGS, ...settings } };
  };

  it('holds while the project and the calculator are as they were, in whatever order its fields were stored', () => {
    expect(isOutOfDate(kept, backing, throwQuilt)).toBe(false);
    expect(isOutOfDate(structuredClone(kept), backing, throwQuilt)).toBe(false);
    const backwards = Object.fromEntries(Object.entries(kept.input).reverse());
    expect(isOutOfDate({ ...kept, input: backwards }, backing, throwQuilt)).toBe(false);
  });

  it('is out of date when what it took from the project changes, and again up to date when that is taken back', () => {
    const larger = {
      ...throwQuilt,
      outline: { shape: 'rectangle', width: inches(51), length: inches(65) },
    } as const;
    expect(isOutOfDate(kept, backing, larger)).toBe(true);
    expect(isOutOfDate(kept, backing, changed({ fabricWidth: inches(40) }))).toBe(true);
    expect(isOutOfDate(kept, backing, changed({ fabricWidth: STARTING_SETTINGS.fabricWidth }))).toBe(false);
  });

  it('does not mind changes of what the maker set herself, or of what it never took', () => {
    expect(isOutOfDate(kept, backing, changed({ backingSeam: inches(1 / 4) }))).toBe(false);
    expect(isOutOfDate(kept, backing, changed({ hourRateMinor: 1 }))).toBe(false);
  });

  it('of the outer binding minds the hole only where a slit to it is bound with the outside', () => {
    const skirt = (across: number): Measurements => ({
      outline: { shape: 'circle', diameter: inches(50) },
      hole: { diameter: inches(across) },
      hasSlit: true,
      settings: STARTING_SETTINGS,
    });
    const keptOf = (own: object) => {
      const completed = completeInput(outerBinding, skirt(5), own);
      return {
        version: outerBinding.version,
        ...(completed.ok ? completed.value : { input: {}, ownInput: {} }),
      };
    };
    const isOldWith = (across: number, own: object) => isOutOfDate(keptOf(own), outerBinding, skirt(across));
    expect(isOldWith(8, {})).toBe(false);
    expect(isOldWith(8, { slitBoundWith: 'hole' })).toBe(false);
    expect(isOldWith(8, { slitBoundWith: 'outside' })).toBe(true);
    expect(isOldWith(5, { slitBoundWith: 'outside' })).toBe(false);
    expect(isOldWith(60, {})).toBe(true);
  });

  it('is out of date when its calculator has risen or its own part no longer reads', () => {
    expect(isOutOfDate({ ...kept, version: kept.version + 1 }, backing, throwQuilt)).toBe(true);
    expect(isOutOfDate({ ...kept, ownInput: { gone: 1 } }, backing, throwQuilt)).toBe(true);
    expect(isOutOfDate({ ...kept, ownInput: null }, backing, throwQuilt)).toBe(true);
  });

  it('is out of date when what was stored is not the input, however it differs', () => {
    const { outline: _outline, ...without } = kept.input as Record<string, unknown>;
    const others = [
      null,
      'x',
      [],
      {},
      without,
      { ...kept.input, more: 1 },
      { ...kept.input, outline: [] },
      { ...kept.input, seam: null },
    ];
    const lists = { ...kept, input: { ...kept.input, outline: ['x'] } };
    expect(isOutOfDate(lists, backing, throwQuilt)).toBe(true);
    for (const input of others) expect(isOutOfDate({ ...kept, input }, backing, throwQuilt)).toBe(true);
  });

  it('of any calculator holds for its own project and comes back unchanged from JSON', () => {
    fc.assert(
      fc.property(fc.constantFrom(...calculators), anyMeasurements, (calculator, measurements) => {
        const completed = completeInput(calculator, measurements, {});
        const stored: unknown = completed.ok ? JSON.parse(JSON.stringify(completed.value)) : null;
        const { input, ownInput } = stored as { input: unknown; ownInput: unknown };
        expect(isOutOfDate({ version: calculator.version, input, ownInput }, calculator, measurements)).toBe(
          false,
        );
      }),
    );
  });
});
