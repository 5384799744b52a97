import '#test/helpers/fixed-seed';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WorkDone, WorkMeasure } from '#core/domain/clock';
import type { Measurements } from '#core/domain/measurements';
import { stageKind } from '#core/domain/stage';
import { STARTING_HABITS } from '#core/domain/workshop';
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
  settings: STARTING_HABITS,
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

describe('the hours of a stage', () => {
  it('are what the plan says until the maker’s rate was counted three times', () => {
    const estimate = stageEstimate(stage('piecing'), grounds(BLOCKS.slice(1), TOP));
    expect(estimate).toMatchObject({ minutes: 600, from: 'plan', saidMinutes: 600, ratesMinutes: null });
    expect(estimate.parts).toMatchObject([
      { what: 'blocks', amount: 24, minutes: null, learned: { count: 2 } },
      { what: 'cuts', amount: 101, minutes: null, learned: null },
    ]);
  });

  it('are blocks and cuts at her own rates after that, with the plan’s beside them', () => {
    // 24 blocks of 12 minutes; 101 cuts of half a minute, 51 whole minutes, are on top of that once they are known.
    const blocks = stageEstimate(stage('piecing'), grounds(BLOCKS, TOP));
    expect(blocks).toMatchObject({ minutes: 290, from: 'rates', saidMinutes: 600 });
    const both = stageEstimate(stage('piecing'), grounds([...BLOCKS, ...CUTS], TOP));
    expect(both).toMatchObject({ minutes: 340, from: 'rates', saidMinutes: 600 });
    expect(both.parts.map(({ minutes, learned }) => [minutes, learned?.count])).toEqual([
      [288, 3],
      [51, 3],
    ]);
  });

  it('stay those of the plan where only the cutting is known of a top: it is the smaller part', () => {
    expect(stageEstimate(stage('piecing'), grounds(CUTS, TOP)).from).toBe('plan');
    const cutting = [{ what: 'cuts', amount: 100 }] as const;
    expect(stageEstimate(stage('piecing'), grounds([...BLOCKS, ...CUTS], cutting)).from).toBe('plan');
    expect(stageEstimate(stage('other'), grounds(CUTS, cutting))).toMatchObject({
      minutes: 50,
      from: 'rates',
    });
  });

  it('count two answers that count the same once', () => {
    const twice = [...TOP, { what: 'cuts', amount: 61 }] as const;
    expect(stageEstimate(stage('piecing'), grounds([...BLOCKS, ...CUTS], twice)).minutes).toBe(340);
  });

  it('are measured on the piece itself for the hand finish, or taken from its kept answer', () => {
    // Four sides of 40 in less twice the 3/8 in from the edge to where it is sewn down, at 40 in an hour: 235.5 minutes.
    expect(stageEstimate(stage('hand-finish'), grounds(HAND))).toMatchObject({ minutes: 240, from: 'rates' });
    const kept = [{ what: 'hand', amount: lengthFromInches(100) }] as const;
    expect(stageEstimate(stage('hand-finish'), grounds(HAND, kept)).minutes).toBe(150);
    expect(stageEstimate(stage('hand-finish'), grounds([])).from).toBe('plan');
  });

  it('go by a rate that the piece has of its own', () => {
    const { rates, work } = grounds(HAND);
    const settings = { ...STARTING_HABITS, handStitchPerHour: lengthFromInches(80) };
    const own = { rates, work, measurements: { ...plain, settings } };
    expect(stageEstimate(stage('hand-finish'), own).minutes).toBe(120);
  });

  it('are the maker’s where she set them herself, and still say what her rates would', () => {
    expect(stageEstimate(stage('piecing', true), grounds(BLOCKS, TOP))).toMatchObject({
      minutes: 600,
      from: 'own',
      ratesMinutes: 290,
    });
  });

  it('never fall when there is more to do, and are whole steps of five minutes by the rates', () => {
    const amount = fc.integer({ min: 1, max: 50_000 });
    const kind = fc.constantFrom(...stageKind.options);
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
