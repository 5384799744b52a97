import { describe, expect, it } from 'vitest';
import type { DateFixes } from '#core/contract/dates';
import { stageIdSchema } from '#core/domain/ids';
import type { StageState } from '#core/domain/stage';
import { planDates } from '#core/planner/plan-dates';
import { weekLoads } from '#core/planner/week-loads';
import type { LoadStep, ProjectLoad } from '#core/planner/workshop-load';
import { calendarDate } from '#core/units/calendar-date';
import { dateFixWords, scheduleLines, scheduleWords } from '#renderer/text/schedule-words';

// 2027-09-13 is a Monday; an hour a day.
const on = calendarDate('2027-09-13');
const saying = { locale: 'en-GB', on };
const work = (minutes: number): LoadStep => ({ kind: 'work', id: 'work', minutes });
const wait = (days: number): LoadStep => ({ kind: 'wait', id: 'trip', days });
const piece = (id: string, dueOn: string | null, ...steps: readonly LoadStep[]): ProjectLoad => ({
  id,
  dueOn: dueOn === null ? null : calendarDate(dueOn),
  readyOn: null,
  steps,
});

function planned(...projects: readonly ProjectLoad[]) {
  const load = {
    today: on,
    hands: { weekMinutes: [60, 60, 60, 60, 60, 60, 60], daysOff: [] },
    projects,
  } as const;
  const plan = planDates(load);
  return { plan, weeks: weekLoads(load, plan) };
}

function linesOf(project: ProjectLoad, state: StageState = 'planned'): readonly string[] {
  const id = stageIdSchema.parse('00000000-0000-4000-8000-000000000001');
  const { projects } = planned(project).plan;
  return scheduleLines(projects[0]!, [{ id, state }], saying).map(
    ({ text, isAlert }) => `${isAlert ? '! ' : ''}${text}`,
  );
}

describe('the days of one piece in words', () => {
  it('say by when to start, when it will be done and what slack there is', () => {
    expect(linesOf(piece('round', '2027-09-26', work(120)))).toEqual([
      'Start by Sat 25 Sept (12 days of slack)',
      'Will be done Tue 14 Sept',
    ]);
  });

  it('say by when to send it out once it is in hand', () => {
    const sent = piece('round', '2027-10-31', work(120), wait(10), work(60));
    expect(linesOf(sent, 'in-hand')[0]).toBe('Send out by Thu 21 Oct (38 days of slack)');
    expect(linesOf(sent)[0]).toBe('Start by Wed 20 Oct (37 days of slack)');
  });

  it('say by when to go on with what is in hand and stays at home', () => {
    expect(linesOf(piece('round', '2027-09-26', work(120)), 'in-hand')[0]).toBe(
      'Go on by Sat 25 Sept (12 days of slack)',
    );
  });

  it('say by when it is needed back while it is away', () => {
    expect(linesOf(piece('away', '2027-10-31', wait(10), work(120)), 'out')).toEqual([
      'Needed back by Sat 30 Oct (47 days of slack)',
      'Will be done Fri 24 Sept',
    ]);
  });

  it('say that it must be started today, and that there is no slack', () => {
    expect(linesOf(piece('now', '2027-09-14', work(120)))).toEqual([
      '! Start today (no slack)',
      'Will be done Tue 14 Sept',
    ]);
  });

  it('say how late it will be', () => {
    expect(linesOf(piece('late', '2027-09-14', work(300)))).toEqual([
      '! Will be done Fri 17 Sept, 3 days late',
    ]);
    expect(linesOf(piece('late', '2027-09-14', work(180)))).toEqual([
      '! Will be done Wed 15 Sept, 1 day late',
    ]);
  });

  it('say only when it will be done where it has no day', () => {
    expect(linesOf(piece('some time', null, work(60)))).toEqual(['Will be done Mon 13 Sept']);
  });
});

const nameOf = (id: string) => id.toUpperCase();

describe('the whole workshop in one line', () => {
  it('is not there where no piece has a day', () => {
    expect(scheduleWords(planned(piece('one', null, work(60))), nameOf)).toBe('');
    expect(scheduleWords(planned(), nameOf)).toBe('');
  });

  it('says that everything will be done in time', () => {
    expect(scheduleWords(planned(piece('one', '2027-09-20', work(60))), nameOf)).toBe(
      'Everything will be done in time.',
    );
  });

  it('names the one that will not, or counts them', () => {
    const [one, two] = [piece('one', '2027-09-14', work(180)), piece('two', '2027-09-15', work(180))];
    expect(scheduleWords(planned(one), nameOf)).toBe(
      'Not everything will be done in time: “ONE” will be 1 day late.',
    );
    expect(scheduleWords(planned(one, two), nameOf)).toBe(
      'Not everything will be done in time: 2 pieces will be late, the latest by 3 days.',
    );
  });
});

describe('what would mend it', () => {
  const words = (part: Partial<DateFixes>) =>
    dateFixWords({ extraWeekMinutes: null, beyondHours: [], moved: [], ...part }, nameOf, saying);
  const moved = (id: string) => ({ id, dueOn: calendarDate('2027-09-21') });

  it('is more hours, or another day for one', () => {
    expect(words({ extraWeekMinutes: 90, moved: [moved('one')] })).toEqual([
      '1 h 30 min more a week at the bench would do.',
      'Or move “ONE” to Tue 21 Sept, and everything is in time.',
    ]);
  });

  it('is other days alone where no hours help', () => {
    expect(words({ beyondHours: ['one'], extraWeekMinutes: 0, moved: [moved('one')] })).toEqual([
      'No hours help “ONE”: what is waited for takes longer than is left.',
      'Move “ONE” to Tue 21 Sept, and everything is in time.',
    ]);
    expect(words({ moved: [moved('one')] })).toEqual([
      'Move “ONE” to Tue 21 Sept, and everything is in time.',
    ]);
  });

  it('names a few pieces that no hours help, and counts more of them', () => {
    expect(words({ beyondHours: ['one', 'two', 'three'] })[0]).toContain('“ONE”, “TWO” and “THREE”');
    expect(words({ beyondHours: ['one', 'two', 'three', 'four'] })[0]).toContain('“ONE”, “TWO” and 2 others');
  });

  it('names a few days, and counts more of them', () => {
    const names = ['one', 'two', 'three', 'four'].map(moved);
    expect(words({ moved: names.slice(0, 2) })).toEqual([
      'Move “ONE” to Tue 21 Sept and “TWO” to Tue 21 Sept, and everything is in time.',
    ]);
    expect(words({ moved: names })).toEqual([
      'Move the due days of 4 pieces to the days on which they will be done.',
    ]);
  });
});
