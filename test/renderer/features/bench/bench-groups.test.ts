import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StageState } from '#core/domain/stage';
import { calendarDate } from '#core/units/calendar-date';
import { benchOf, benchSummary } from '#renderer/features/bench/bench-groups';
import { glance, trip } from '#test/helpers/glances';

const on = calendarDate('2027-09-12');

const late = glance({
  name: 'Late at the longarm',
  stages: ['out'],
  trip: trip({ promisedOn: '2027-09-01' }),
});
const inHand = glance({ name: 'In progress, due soon', stages: ['in-hand'], dueOn: '2027-09-20' });
const inHandLater = glance({ name: 'In progress, no due date', stages: ['in-hand'] });
const next = glance({ name: 'Not started', stages: ['planned'], dueOn: '2027-09-14' });
const held = glance({ name: 'Waits', stages: ['planned'], heldUpBy: 'Thread' });
const away = glance({ name: 'Away', stages: ['out'], trip: trip({ promisedOn: '2027-10-01' }) });
const done = glance({ name: 'Finished', stages: ['done'] });

const names = (bench: ReturnType<typeof benchOf>) => [
  bench.first?.glance.project.name,
  ...bench.groups.flatMap((group) => group.projects.map((one) => one.glance.project.name)),
];

describe('the bench', () => {
  it('puts what is late first, then what is in progress by its day, then what can be started, and what waits last', () => {
    const bench = benchOf([done, away, held, next, inHandLater, inHand, late], on);
    expect(names(bench)).toEqual([
      'Late at the longarm',
      'In progress, due soon',
      'In progress, no due date',
      'Not started',
      'Waits',
      'Away',
      'Finished',
    ]);
  });

  it('counts each group in one line and leaves out empty groups', () => {
    expect(benchSummary(benchOf([late, inHand, inHandLater, away], on).counts)).toBe(
      '1 late, 2 in progress, 1 at the quilter',
    );
  });

  it('is empty without open projects', () => {
    expect(benchOf([], on)).toMatchObject({ first: null, groups: [] });
  });

  it('shows every project exactly once, for any states and days', () => {
    const states = fc.constantFrom<StageState>('planned', 'in-hand', 'out', 'done', 'skipped');
    const projects = fc.array(
      fc.record({
        stages: fc.array(states, { minLength: 1, maxLength: 6 }),
        dueOn: fc.constantFrom('2027-09-01', '2027-09-12', '2028-01-01'),
      }),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(projects, (sketches) => {
        const glances = sketches.map((sketch, index) =>
          glance({ ...sketch, name: `Project ${String(index)}` }),
        );
        const shown = names(benchOf(glances, on)).filter((name) => name !== undefined);
        expect(shown.toSorted()).toEqual(glances.map(({ project }) => project.name).toSorted());
      }),
    );
  });
});
