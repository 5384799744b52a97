import { describe, expect, it } from 'vitest';
import { planningLoop } from '#renderer/features/cutting/planning/planning-loop';
import type { PlanningNews } from '#renderer/features/cutting/planning/planning-protocol';
import { fabric, job, patch, piece } from '#test/helpers/cutting-jobs';

/** A thread whose clock advances by a millisecond each time it is read, and whose waiting work runs on request. */
function thread() {
  const sent: PlanningNews[] = [];
  const waiting: (() => void)[] = [];
  let ticks = 0;
  const order = planningLoop({
    now: () => (ticks += 1),
    later: (next) => waiting.push(next),
    send: (news) => sent.push(news),
  });
  const slice = () => waiting.shift()?.();
  const untilRest = () => {
    while (waiting.length > 0) slice();
  };
  return { order, sent, slice, untilRest, isWaiting: () => waiting.length > 0 };
}

const hard = job(
  [fabric([piece('p', 42, 200)])],
  Array.from({ length: 9 }, (_, at) => patch(`p${String(at)}`, [3 + at / 2, 7 - at / 2], 5 + at)),
);
const easy = job([fabric([piece('p', 20, 30)])], [patch('a', [4, 5], 8)]);

describe('the planning thread', () => {
  it('reports every plan that gets better, and that it stops when the time is up', () => {
    const { order, sent, untilRest } = thread();
    order({ order: 'plan', search: 1, job: hard, milliseconds: 2_000 });
    untilRest();
    const areas = sent.flatMap(({ answer }) => answer?.leastFabric.totals.usedArea ?? []);
    expect(areas.length).toBeGreaterThan(1);
    expect(areas).toEqual(areas.toSorted((a, b) => b - a));
    expect(sent.at(-1)?.state).not.toBe('searching');
  });

  it('searches for one slice at most before the next order, which replaces the last', () => {
    const { order, sent, slice, untilRest } = thread();
    order({ order: 'plan', search: 1, job: hard, milliseconds: 60_000 });
    slice();
    order({ order: 'plan', search: 2, job: easy, milliseconds: 2_000 });
    sent.length = 0;
    untilRest();
    expect(new Set(sent.map(({ search }) => search))).toEqual(new Set([2]));
    expect(sent.at(-1)?.answer?.leastFabric.unplaced).toEqual([]);
  });

  it('stops at once and keeps its plan, and goes on searching when asked', () => {
    const { order, sent, slice, untilRest, isWaiting } = thread();
    order({ order: 'plan', search: 1, job: hard, milliseconds: 60_000 });
    while (sent.every(({ answer }) => answer === null)) slice();
    order({ order: 'stop' });
    expect(sent.at(-1)).toMatchObject({ state: 'rested' });
    untilRest();
    const before = sent.at(-1)?.milliseconds ?? 0;
    order({ order: 'search-on', milliseconds: 200 });
    expect(isWaiting()).toBe(true);
    expect(sent.at(-1)).toMatchObject({ state: 'searching' });
    untilRest();
    expect(sent.at(-1)?.milliseconds).toBeGreaterThan(before);
  });

  it('finishes a first plan, however little time it has', () => {
    const { order, sent, untilRest } = thread();
    order({ order: 'plan', search: 1, job: hard, milliseconds: 0 });
    untilRest();
    expect(sent.at(-1)?.state).toBe('rested');
    const { pieces, unplaced } = sent.at(-1)!.answer!.leastFabric;
    const asked = hard.patches.reduce((sum, { copies }) => sum + copies, 0);
    const placed = pieces.reduce((sum, one) => sum + one.placed.length, 0);
    expect(placed + unplaced.reduce((sum, { copies }) => sum + copies, 0)).toBe(asked);
  });
});
