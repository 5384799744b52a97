import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StageState } from '#core/domain/stage';
import { calendarDate } from '#core/units/calendar-date';
import { benchOf, benchSummary } from '#renderer/features/bench/view-model';
import { glance, trip } from '#test/helpers/glances';

const on = calendarDate('2027-09-12');

const late = glance({
  name: 'Late at the longarm',
  stages: ['out'],
  trip: trip({ promisedOn: '2027-09-01' }),
});
const inHand = glance({ name: 'In hand, due soon', stages: ['in-hand'], dueOn: '2027-09-20' });
const inHandLater = glance({ name: 'In hand, no day', stages: ['in-hand'] });
const next = glance({ name: 'Not begun', stages: ['planned'], dueOn: '2027-09-14' });
const held = glance({ name: 'Waits', stages: ['planned'], heldUpBy: 'Thread' });
const away = glance({ name: 'Away', stages: ['out'], trip: trip({ promisedOn: '2027-10-01' }) });
const done = glance({ name: 'Finished', stages: ['done'] });

const names = (bench: ReturnType<typeof benchOf>) => [
  bench.first?.glance.project.name,
  ...bench.groups.flatMap((group) => group.pieces.map((piece) => piece.glance.project.name)),
];

describe('the bench', () => {
  it('puts what is late first, then what is in hand by its day, then what can be begun, and what waits last', () => {
    const bench = benchOf([done, away, held, next, inHandLater, inHand, late], on);
    expect(names(bench)).toEqual([
      'Late at the longarm',
      'In hand, due soon',
      'In hand, no day',
      'Not begun',
      'Waits',
      'Away',
      'Finished',
    ]);
  });

  it('says in one line how many stand where, and nothing of what there is none of', () => {
    expect(benchSummary(benchOf([late, inHand, inHandLater, away], on).counts)).toBe(
      '1 late, 2 in hand, 1 away',
    );
  });

  it('is clear without open pieces', () => {
    expect(benchOf([], on)).toMatchObject({ first: null, groups: [] });
  });

  it('shows every piece exactly once, whatever their states and days', () => {
    const states = fc.constantFrom<StageState>('planned', 'in-hand', 'out', 'done', 'skipped');
    const pieces = fc.array(
      fc.record({
        stages: fc.array(states, { minLength: 1, maxLength: 6 }),
        dueOn: fc.constantFrom('2027-09-01', '2027-09-12', '2028-01-01'),
      }),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(pieces, (sketches) => {
        const glances = sketches.map((sketch, index) =>
          glance({ ...sketch, name: `Piece ${String(index)}` }),
        );
        const shown = names(benchOf(glances, on)).filter((name) => name !== undefined);
        expect(shown.toSorted()).toEqual(glances.map(({ project }) => project.name).toSorted());
      }),
    );
  });
});
