import { describe, expect, it } from 'vitest';
import { calendarDate } from '#core/units/calendar-date';
import type { Effect } from '#renderer/features/days/calendar-rows';
import { effectWords, moveWords } from '#renderer/features/days/moved-days-words';

const when = { locale: 'en-US', on: calendarDate('2027-11-20') };
const day = calendarDate;
const first = day('2027-12-01');
const fifth = day('2027-12-05');

function words(effect: Partial<Effect>): string {
  const full = {
    id: 'x',
    finishedBefore: first,
    finishedAfter: first,
    lateBefore: 0,
    lateAfter: 0,
    ...effect,
  };
  return effectWords(full, 'Harvest round', when);
}

describe('what a moved day changes', () => {
  it('names both finish dates, and how late the new one is', () => {
    expect(words({ finishedAfter: fifth, lateAfter: 4 })).toBe(
      'Harvest round: done Sun Dec 5 instead of Wed Dec 1, 4 days late',
    );
  });

  it('says when a project gets on time without another finish date', () => {
    expect(words({ lateBefore: 2 })).toBe('Harvest round: still done Wed Dec 1, now on time');
  });

  it('says plainly that there is no sewing time for a project', () => {
    expect(words({ finishedAfter: null })).toBe('Harvest round: won’t get done (no sewing time)');
    expect(words({ finishedBefore: null, finishedAfter: null })).toBe(
      'Harvest round: won’t get done (no sewing time)',
    );
    expect(words({ finishedBefore: null, finishedAfter: fifth })).toBe('Harvest round: done Sun Dec 5');
  });
});

it('every moved day of a project is named with the saved one', () => {
  const back = { on: first, savedOn: first, tripId: 'x' as never, withWhom: 'Tansy Quill' };
  expect(moveWords({ name: 'Harvest round', due: { on: fifth, savedOn: first }, back }, when)).toEqual([
    'Harvest round: due Sun Dec 5 instead of Wed Dec 1',
  ]);
});
