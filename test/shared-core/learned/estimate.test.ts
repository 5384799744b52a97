import '#test/helpers/fixed-seed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WorkDone, WorkMeasure } from '#core/domain/clock';
import type { Measurements } from '#core/domain/measurements';
import { stageKindSchema } from '#core/domain/stage';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { type EstimatedStage, stageEstimate } from '#core/learned/estimate';
import { type CountedWork, settingsWithOwnRates, ownRates } from '#core/learned/rates';
import { lengthFromInches } from '#core/units/length';

const times = (count: number, what: WorkMeasure, minutes: number, amount: number): readonly CountedWork[] =>
  Array.from({ length: count }, () => ({
    minutes,
    done: { what, amount: what === 'hand' ? lengthFromInches(amount) : amount },
  }));
const BLOCKS = times(3, 'blocks', 60, 5);
const CUTS = times(3, 'cuts', 30, 60);
const HAND = times(3, 'hand', 60, 40);

const plain: Measurements = {
  outline: { shape: 'square', side: lengthFromInches(40) },
  hole: null,
  hasSlit: false,
  settings: STARTING_SETTINGS,
};

const stage = (kind: EstimatedStage['kind'], isOwnEstimate = false): EstimatedStage => ({
  kind,
  estimateMinutes: 600,
  isOwnEstimate,
});

function grounds(counted: readonly CountedWork[], work: readonly WorkDone[] = []) {
  const rates = ownRates(counted);
  return {
    rates,
    work,
    measurements: { ...plain, settings: settingsWithOwnRates(plain.settings, rates) },
  };
}

const TOP: readonly WorkDone[] = [
  { what: 'blocks', amount: 24 },
  { what: 'cuts', amount: 101 },
];

describe('the estimate of a stage', () => {
  it('comes from the stage plan until the maker’s rate has three cases', () => {
    const estimate = stageEstimate(stage('piecing'), grounds(BLOCKS.slice(1), TOP));
    expect(estimate).toMatchObject({ minutes: 600, from: 'plan', storedMinutes: 600, ratesMinutes: null });
    expect(estimate.parts).toMatchObject([
      { what: 'blocks', amount: 24, minutes: null, learned: { count: 2 } },
      { what: 'cuts', amount: 101, minutes: null, learned: null },
    ]);
  });

  it('counts blocks and cuts at the maker’s own rates after that, and still gives the hours of the plan', () => {
    // 24 blocks of 12 minutes each. Once the cutting rate is learned, 101 cuts of half a minute add 51 whole minutes.
    const blocks = stageEstimate(stage('piecing'), grounds(BLOCKS, TOP));
    expect(blocks).toMatchObject({ minutes: 290, from: 'rates', storedMinutes: 600 });
    const both = stageEstimate(stage('piecing'), grounds([...BLOCKS, ...CUTS], TOP));
    expect(both).toMatchObject({ minutes: 340, from: 'rates', storedMinutes: 600 });
    expect(both.parts.map(({ minutes, learned }) => [minutes, learned?.count])).toEqual([
      [288, 3],
      [51, 3],
    ]);
  });

  it('stays with the plan when only the cutting rate is learned, which is the smaller part of a top', () => {
    expect(stageEstimate(stage('piecing'), grounds(CUTS, TOP)).from).toBe('plan');
    const cutting = [{ what: 'cuts', amount: 100 }] as const;
    expect(stageEstimate(stage('piecing'), grounds([...BLOCKS, ...CUTS], cutting)).from).toBe('plan');
    expect(stageEstimate(stage('other'), grounds(CUTS, cutting))).toMatchObject({
      minutes: 50,
      from: 'rates',
    });
  });

  it('counts the same work once when two answers give it', () => {
    const twice = [...TOP, { what: 'cuts', amount: 61 }] as const;
    expect(stageEstimate(stage('piecing'), grounds([...BLOCKS, ...CUTS], twice)).minutes).toBe(340);
  });

  it('measures hand finishing on the project, or takes it from the saved answer', () => {
    // Four sides of 40 in, each less twice the 3/8 in between the edge and the seam, at 40 in per hour: 235.5 minutes (worked out).
    expect(stageEstimate(stage('hand-finish'), grounds(HAND))).toMatchObject({ minutes: 240, from: 'rates' });
    const saved = [{ what: 'hand', amount: lengthFromInches(100) }] as const;
    expect(stageEstimate(stage('hand-finish'), grounds(HAND, saved)).minutes).toBe(150);
    expect(stageEstimate(stage('hand-finish'), grounds([])).from).toBe('plan');
  });

  it('uses the project’s own rate when it has one', () => {
    const { rates, work } = grounds(HAND);
    const settings = { ...STARTING_SETTINGS, handStitchPerHour: lengthFromInches(80) };
    const own = { rates, work, measurements: { ...plain, settings } };
    expect(stageEstimate(stage('hand-finish'), own).minutes).toBe(120);
  });

  it('is the maker’s own number when they set one, and still gives the hours by their rates', () => {
    expect(stageEstimate(stage('piecing', true), grounds(BLOCKS, TOP))).toMatchObject({
      minutes: 600,
      from: 'own',
      ratesMinutes: 290,
    });
  });

  it('never falls when there is more work, and comes in steps of five minutes by the rates', () => {
    const amount = fc.integer({ min: 1, max: 50_000 });
    const kind = fc.constantFrom(...stageKindSchema.options);
    fc.assert(
      fc.property(kind, amount, amount, amount, (of, blocks, cuts, more) => {
        const counted = [...BLOCKS, ...CUTS, ...HAND];
        const work = (extra: number): readonly WorkDone[] => [
          { what: 'blocks', amount: blocks + extra },
          { what: 'hand', amount: 1_000 * (blocks + extra) },
          { what: 'cuts', amount: cuts },
        ];
        const [less, larger] = [0, more].map((extra) =>
          stageEstimate(stage(of), grounds(counted, work(extra))),
        );
        expect(larger!.minutes).toBeGreaterThanOrEqual(less!.minutes);
        expect(less!.from).toBe(larger!.from);
        if (less!.from === 'rates') expect(less!.minutes % 5).toBe(0);
        else expect(less!.minutes).toBe(600);
      }),
    );
  });
});
