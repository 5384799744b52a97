import { describe, expect, it } from 'vitest';
import type { DateFixes } from '#core/contract/dates';
import { stageIdSchema } from '#core/domain/ids';
import type { StageState } from '#core/domain/stage';
import { planDates } from '#core/planner/plan-dates';
import { weekLoads } from '#core/planner/week-loads';
import type { LoadStep, ProjectLoad } from '#core/planner/workshop-load';
import { calendarDate } from '#core/units/calendar-date';
import {
  dateFixWords,
  inTimeWords,
  chanceWords,
  madeLaterWords,
  scheduleLines,
  scheduleWords,
  triedFixWords,
} from '#renderer/text/schedule-words';

// 2027-09-13 is a Monday; an hour a day.
const on = calendarDate('2027-09-13');
const when = { locale: 'en-GB', on };
const work = (minutes: number): LoadStep => ({ kind: 'work', id: 'work', minutes });
const wait = (days: number): LoadStep => ({ kind: 'wait', id: 'trip', days });
const project = (id: string, dueOn: string | null, ...steps: readonly LoadStep[]): ProjectLoad => ({
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

function linesOf(load: ProjectLoad, state: StageState = 'planned'): readonly string[] {
  const id = stageIdSchema.parse('00000000-0000-4000-8000-000000000001');
  const { projects } = planned(load).plan;
  return scheduleLines(projects[0]!, [{ id, state }], when).map(
    ({ text, isAlert }) => `${isAlert ? '! ' : ''}${text}`,
  );
}

describe('the days of one project in words', () => {
  it('say by when to start, when it will be done and how many days are to spare', () => {
    expect(linesOf(project('round', '2027-09-26', work(120)))).toEqual([
      'Start by Sat 25 Sept (12 days to spare)',
      'Will be done Tue 14 Sept',
    ]);
  });

  it('say by when to send it out once it is in progress', () => {
    const sent = project('round', '2027-10-31', work(120), wait(10), work(60));
    expect(linesOf(sent, 'in-hand')[0]).toBe('Send out by Thu 21 Oct (38 days to spare)');
    expect(linesOf(sent)[0]).toBe('Start by Wed 20 Oct (37 days to spare)');
  });

  it('say by when to keep going with a stage at home', () => {
    expect(linesOf(project('round', '2027-09-26', work(120)), 'in-hand')[0]).toBe(
      'Keep going by Sat 25 Sept (12 days to spare)',
    );
  });

  it('say by when it is needed back while it is away', () => {
    expect(linesOf(project('away', '2027-10-31', wait(10), work(120)), 'out')).toEqual([
      'Needed back by Sat 30 Oct (47 days to spare)',
      'Will be done Fri 24 Sept',
    ]);
  });

  it('say that it must be started today, and that there is no time to spare', () => {
    expect(linesOf(project('now', '2027-09-14', work(120)))).toEqual([
      '! Start today (no time to spare)',
      'Will be done Tue 14 Sept',
    ]);
  });

  it('say how late it will be', () => {
    expect(linesOf(project('late', '2027-09-14', work(300)))).toEqual([
      '! Will be done Fri 17 Sept, 3 days late',
    ]);
    expect(linesOf(project('late', '2027-09-14', work(180)))).toEqual([
      '! Will be done Wed 15 Sept, 1 day late',
    ]);
  });

  it('say only when it will be done if it has no due date', () => {
    expect(linesOf(project('some time', null, work(60)))).toEqual(['Will be done Mon 13 Sept']);
  });
});

const nameOf = (id: string) => id.toUpperCase();

describe('one project in a sentence', () => {
  const sentence = (due: string | null) => {
    const [dates] = planned(project('one', due, work(180))).plan.projects;
    return inTimeWords(dates!, when);
  };

  it('says by which day it is done, and how long before or after it is due', () => {
    expect(sentence('2027-09-20')).toMatch(/^In time: done by .+, \d days? before it is due\.$/);
    expect(sentence('2027-09-13')).toMatch(/^Late: done by .+, \d days? after it is due\.$/);
    expect(sentence(null)).toMatch(/^It will be done by .+\.$/);
  });

  it('says when it is just in time', () => {
    const [dates] = planned(project('one', null, work(180))).plan.projects;
    expect(sentence(dates!.finishOn)).toMatch(/^Just in time: done by .+, the day it is due\.$/);
  });
});

describe('a project that is not started yet', () => {
  const [dates] = planned(project('one', '2027-09-13', work(180))).plan.projects;
  const fixes = { extraWeekMinutes: 90, beyondHours: [], moved: [] };

  it('hears what would help: more sewing time, or a later promise', () => {
    const words = triedFixWords({ dates: dates!, fixes }, when);
    expect(words[0]).toBe('1 h 30 min more sewing time a week would be enough.');
    expect(words[1]).toMatch(/^It can be promised for .+ or later\.$/);
    const beyond = { ...fixes, beyondHours: ['one'] };
    expect(triedFixWords({ dates: dates!, fixes: beyond }, when)[0]).toBe(
      'More sewing time won’t help: the quilter needs longer than the time that is left.',
    );
    expect(triedFixWords({ dates: dates!, fixes: null }, when)).toEqual([]);
  });

  it('names the project that it would make latest, and counts the others', () => {
    const late = (name: string, lateDays: number) => ({ name, lateDays });
    expect(madeLaterWords([])).toBe('');
    expect(madeLaterWords([late('Ring', 3)])).toBe('“Ring” would be 3 days late with it.');
    expect(madeLaterWords([late('Ring', 3), late('Throw', 9)])).toBe(
      '“Throw” would be 9 days late with it, and another project too.',
    );
    expect(madeLaterWords([late('Ring', 3), late('Throw', 9), late('Mat', 1)])).toBe(
      '“Throw” would be 9 days late with it, and 2 other projects too.',
    );
  });
});

describe('how sure a date is', () => {
  const chance = {
    id: 'one',
    inTime: 0.78,
    nearlySureBy: calendarDate('2027-09-20'),
    doubtfulStage: 'trip',
    sendBy: calendarDate('2027-09-15'),
    isLearned: true,
  };

  it('is said in cases of ten, with the day that is nearly sure, where the doubt is, and when to send it', () => {
    expect(chanceWords(chance, 'Quilting', when)).toEqual([
      'How sure? In time in about 8 of 10 cases.',
      expect.stringMatching(/^By .*20.* it is done in 9 of 10 cases\.$/),
      'Most of the doubt is in “Quilting”.',
      expect.stringMatching(/^Sent out by .*15.*, it is in time in 9 of 10 cases\.$/),
    ]);
  });

  it('is one sentence where it is nearly sure, and never a number where it is nearly out of reach', () => {
    expect(chanceWords({ ...chance, inTime: 0.97 }, 'Quilting', when)).toEqual([
      'How sure? In time in nearly every case.',
    ]);
    expect(chanceWords({ ...chance, inTime: 0.01 }, undefined, when)[0]).toBe(
      'How sure? In time in hardly any case.',
    );
  });

  it('says that it goes by what is usual as long as the maker’s own cases are too few', () => {
    const words = chanceWords({ ...chance, inTime: null, sendBy: null, isLearned: false }, undefined, when);
    expect(words).toHaveLength(2);
    expect(words.at(-1)).toBe('This goes by usual delays until three of your own are known.');
  });

  it('names no day to send it out that is over', () => {
    const over = { ...chance, sendBy: calendarDate('2027-09-12') };
    expect(chanceWords(over, undefined, when).join(' ')).not.toContain('Sent out');
  });
});

describe('the whole workshop in one line', () => {
  it('is empty if no project has a due date', () => {
    expect(scheduleWords(planned(project('one', null, work(60))), nameOf)).toBe('');
    expect(scheduleWords(planned(), nameOf)).toBe('');
  });

  it('says that everything gets done on time', () => {
    expect(scheduleWords(planned(project('one', '2027-09-20', work(60))), nameOf)).toBe(
      'By this schedule, everything gets done on time.',
    );
  });

  it('names the one that is late, or counts them', () => {
    const [one, two] = [project('one', '2027-09-14', work(180)), project('two', '2027-09-15', work(180))];
    expect(scheduleWords(planned(one), nameOf)).toBe(
      'Not everything gets done on time: “ONE” will be 1 day late.',
    );
    expect(scheduleWords(planned(one, two), nameOf)).toBe(
      'Not everything gets done on time: 2 projects will be late, one by 3 days.',
    );
  });
});

describe('what would help', () => {
  const words = (part: Partial<DateFixes>) =>
    dateFixWords({ extraWeekMinutes: null, beyondHours: [], moved: [], ...part }, nameOf, when);
  const moved = (id: string) => ({ id, dueOn: calendarDate('2027-09-21') });

  it('is more sewing time, or another due date', () => {
    expect(words({ extraWeekMinutes: 90, moved: [moved('one')] })).toEqual([
      '1 h 30 min more sewing time a week would be enough.',
      'Or move “ONE” to Tue 21 Sept, and everything is on time.',
    ]);
  });

  it('is only another due date if no sewing time helps', () => {
    expect(words({ beyondHours: ['one'], extraWeekMinutes: 0, moved: [moved('one')] })).toEqual([
      'More sewing time won’t help “ONE”: the quilter needs longer than the time that is left.',
      'Move “ONE” to Tue 21 Sept, and everything is on time.',
    ]);
    expect(words({ moved: [moved('one')] })).toEqual([
      'Move “ONE” to Tue 21 Sept, and everything is on time.',
    ]);
  });

  it('names a few projects that no sewing time helps, and counts the others', () => {
    expect(words({ beyondHours: ['one', 'two', 'three'] })[0]).toContain('“ONE”, “TWO” and “THREE”');
    expect(words({ beyondHours: ['one', 'two', 'three', 'four'] })[0]).toContain('“ONE”, “TWO” and 2 others');
  });

  it('names a few dates, and counts more of them', () => {
    const names = ['one', 'two', 'three', 'four'].map(moved);
    expect(words({ moved: names.slice(0, 2) })).toEqual([
      'Move “ONE” to Tue 21 Sept and “TWO” to Tue 21 Sept, and everything is on time.',
    ]);
    expect(words({ moved: names })).toEqual([
      'Move the due dates of 4 projects to the days they will be done.',
    ]);
  });
});
