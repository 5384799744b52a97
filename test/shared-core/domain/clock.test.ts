import { describe, expect, it } from 'vitest';
import { clockMinutes, forgottenWhy, roundedMinutes } from '#core/domain/clock';
import { calendarDate } from '#core/units/calendar-date';

const START = Date.UTC(2027, 2, 1, 9);
const MINUTE = 60_000;
const DAY = calendarDate('2027-03-01');

describe('a clock', () => {
  it('shows whole minutes gone by, and none when the system clock was set back', () => {
    expect(clockMinutes(START, START + 59_999)).toBe(0);
    expect(clockMinutes(START, START + 90 * MINUTE)).toBe(90);
    expect(clockMinutes(START, START - 5 * MINUTE)).toBe(0);
  });

  it('is written down to the nearest step, and never as nothing', () => {
    expect([0, 2, 3, 7, 8, 62].map((minutes) => roundedMinutes(minutes, 5))).toEqual([5, 5, 5, 5, 10, 60]);
    expect(roundedMinutes(0, 1)).toBe(1);
    expect(roundedMinutes(37, 15)).toBe(30);
  });

  it('looks forgotten after more than eight hours, or when it ran overnight', () => {
    const clock = { startedAt: START, startedOn: DAY };
    expect(forgottenWhy(clock, START + 480 * MINUTE, DAY)).toBeNull();
    expect(forgottenWhy(clock, START + 481 * MINUTE, DAY)).toBe('long');
    expect(forgottenWhy(clock, START + 60 * MINUTE, calendarDate('2027-03-02'))).toBe('overnight');
  });
});
