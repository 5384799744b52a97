import { describe, expect, it } from 'vitest';
import { planningLoop } from '#renderer/features/cutting/planning/planning-loop';
import type { PlanningNews } from '#renderer/features/cutting/planning/planning-protocol';
import { fabric, job, patch, piece } from '#test/helpers/cutting-jobs';

/** A thread whose clock goes on by a millisecond whenever it is asked, and that does what waits when told to. */
function thread() {
  const heard: PlanningNews[] = [];
  const waiting: (() => void)[] = [];
  let ticks = 0;
  const order = planningLoop({
    now: () => (ticks += 1),
    later: (next) => waiting.push(next),
    tell: (news) => heard.push(news),
  });
  const slice = () => waiting.shift()?.();
  const untilRest = () => {
    while (waiting.length > 0) slice();
  };
  return { order, heard, slice, untilRest, isWaiting: () => waiting.length > 0 };
}

const hard = job(
  [fabric([piece('p', 42, 200)])],
  Array.from({ length: 9 }, (_, at) => patch(`p${String(at)}`, 3 + at / 2, 7 - at / 2, 5 + at)),
);
const easy = job([fabric([piece('p', 20, 30)])], [patch('a', 4, 5, 8)]);

describe('the planning thread', () => {
  it('tells of every plan that got better, and of its rest when the time allowed is over', () => {
    const { order, heard, untilRest } = thread();
    order({ order: 'plan', search: 1, job: hard, milliseconds: 2_000 });
    untilRest();
    const areas = heard.flatMap(({ answer }) => answer?.leastFabric.totals.usedArea ?? []);
    expect(areas.length).toBeGreaterThan(1);
    expect(areas).toEqual(areas.toSorted((a, b) => b - a));
    expect(heard.at(-1)?.state).not.toBe('searching');
  });

  it('searches no longer than a slice before it hears the next order, which takes the place of the last', () => {
    const { order, heard, slice, untilRest } = thread();
    order({ order: 'plan', search: 1, job: hard, milliseconds: 60_000 });
    slice();
    order({ order: 'plan', search: 2, job: easy, milliseconds: 2_000 });
    heard.length = 0;
    untilRest();
    expect(new Set(heard.map(({ search }) => search))).toEqual(new Set([2]));
    expect(heard.at(-1)?.answer?.leastFabric.unplaced).toEqual([]);
  });

  it('stops at once when told to, keeping the plan it has, and goes on when asked', () => {
    const { order, heard, slice, untilRest, isWaiting } = thread();
    order({ order: 'plan', search: 1, job: hard, milliseconds: 60_000 });
    while (heard.every(({ answer }) => answer === null)) slice();
    order({ order: 'stop' });
    expect(heard.at(-1)).toMatchObject({ state: 'rested' });
    untilRest();
    const before = heard.at(-1)?.milliseconds ?? 0;
    order({ order: 'search-on', milliseconds: 200 });
    expect(isWaiting()).toBe(true);
    expect(heard.at(-1)).toMatchObject({ state: 'searching' });
    untilRest();
    expect(heard.at(-1)?.milliseconds).toBeGreaterThan(before);
  });

  it('owes a first plan however little time it is given', () => {
    const { order, heard, untilRest } = thread();
    order({ order: 'plan', search: 1, job: hard, milliseconds: 0 });
    untilRest();
    expect(heard.at(-1)?.answer).not.toBeNull();
  });
});
