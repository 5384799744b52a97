import { describe, expect, it } from 'vitest';
import type { Stage } from '#core/domain/stage';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';
import { dateWords, farWords, lateWords, today } from '#renderer/text/dates';
import { outlineWords } from '#renderer/text/project-words';
import { progressCount, progressWords, stageMove } from '#renderer/text/stage-words';

const inch = { system: 'inch', inchStep: 8 } as const;

describe('days in words', () => {
  const on = calendarDate('2027-09-12');
  it.each([
    ['2027-09-12', 'today'],
    ['2027-09-13', 'tomorrow'],
    ['2027-09-11', 'yesterday'],
    ['2027-09-24', 'in 12 days'],
    ['2027-11-07', 'in 8 weeks'],
    ['2027-08-12', '4 weeks ago'],
    ['2028-09-12', 'in 12 months'],
  ])('says of %s that it is %s', (day, words) => {
    expect(farWords(calendarDate(day), on)).toBe(words);
  });

  it('names the year only if it is another one', () => {
    expect(dateWords(calendarDate('2027-12-07'), 'en-US', on)).toBe('Dec 7');
    expect(dateWords(calendarDate('2028-01-04'), 'en-GB', on)).toBe('4 Jan 2028');
  });

  it('counts late days only once there are some', () => {
    expect(lateWords(on, on)).toBe('');
    expect(lateWords(calendarDate('2027-09-11'), on)).toBe('1 day');
  });

  it('takes the day from the local clock, not from UTC', () => {
    expect(today(new Date(2027, 0, 31, 23, 59))).toBe('2027-01-31');
    expect(today(new Date(2027, 1, 1, 0, 1))).toBe('2027-02-01');
  });
});

describe('a project in words', () => {
  it('names its shape, its size with the unit once, its hole and its slit', () => {
    const hole = { diameter: lengthFromInches(6.5) };
    expect(
      outlineWords(
        {
          outline: { shape: 'rectangle', width: lengthFromInches(14), length: lengthFromInches(42) },
          hole: null,
          hasSlit: false,
        },
        inch,
      ),
    ).toBe('Rectangle, 14 × 42 in');
    expect(
      outlineWords(
        { outline: { shape: 'circle', diameter: lengthFromInches(60) }, hole, hasSlit: true },
        inch,
      ),
    ).toBe('Round, 60 in across, 6½ in hole, slit');
    expect(
      outlineWords(
        { outline: { shape: 'square', side: lengthFromInches(40) }, hole: null, hasSlit: false },
        inch,
      ),
    ).toBe('40 in square');
  });
});

describe('progress in words', () => {
  const named = (...states: readonly Stage['state'][]) =>
    states.map((state, index) => ({ state, name: `Stage ${String(index + 1)}` }));
  it('leaves skipped stages out of the count', () => {
    expect(progressCount(named('done', 'skipped', 'planned'))).toBe('1 of 2 stages done');
    expect(progressCount(named('done', 'skipped'))).toBe('All stages done');
    expect(progressCount([])).toBe('No stages yet');
  });
  it('names the current stage and the ones after it', () => {
    expect(progressWords(named('done', 'out', 'planned', 'skipped', 'planned'))).toBe(
      '1 of 4 stages done. Now: Stage 2, at the quilter. Then: Stage 3, Stage 5.',
    );
  });
});

describe('the verb that moves a stage on', () => {
  const stage = (kind: Stage['kind'], state: Stage['state'], isGateShut = false) => ({
    kind,
    state,
    name: 'Tie',
    isGateShut,
  });

  it('starts and finishes a stage with one press', () => {
    expect(stageMove(stage('piecing', 'planned'))).toEqual({
      how: 'here',
      verb: 'Start piecing',
      to: 'in-hand',
    });
    expect(stageMove(stage('outer-binding', 'in-hand'))).toMatchObject({ how: 'here', to: 'done' });
    expect(stageMove(stage('other', 'in-hand'))).toMatchObject({ verb: 'Done: Tie' });
  });

  it('leads to the stage’s page if more has to be entered', () => {
    expect(stageMove(stage('longarm', 'in-hand'))).toEqual({ how: 'on-its-page', verb: 'Send it out' });
    expect(stageMove(stage('longarm', 'out'))).toEqual({ how: 'on-its-page', verb: 'It is back' });
  });

  it('cuts the center with one press only once its checklist is done', () => {
    expect(stageMove(stage('center-cut', 'planned', true))).toEqual({
      how: 'on-its-page',
      verb: 'Check before cutting',
    });
    expect(stageMove(stage('center-cut', 'planned'))).toMatchObject({ how: 'here', to: 'in-hand' });
  });

  it('is missing once a stage is over', () => {
    expect(stageMove(stage('piecing', 'done'))).toBeNull();
    expect(stageMove(stage('piecing', 'skipped'))).toBeNull();
  });
});
