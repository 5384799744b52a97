import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatMinutes, MAX_MINUTES, minutesFromWhole } from '#core/units/minutes';
import { type MinutesProblem, parseMinutes } from '#core/units/parse-minutes';
import { anyMinutes } from '#test/helpers/arbitraries';

describe('a duration', () => {
  it.each<[number, string]>([
    [0, '0 min'],
    [45, '45 min'],
    [60, '1 h'],
    [140, '2 h 20 min'],
    [6005, '100 h 5 min'],
  ])('of %d minutes is written %s', (minutes, text) => {
    expect(formatMinutes(minutes)).toBe(text);
  });

  it('reads back as the same', () => {
    fc.assert(
      fc.property(anyMinutes, (minutes) => {
        expect(parseMinutes(formatMinutes(minutes))).toEqual({ ok: true, value: minutes });
        expect(parseMinutes(String(minutes))).toEqual({ ok: true, value: minutes });
        const clock = `${String((minutes - (minutes % 60)) / 60)}:${String(minutes % 60).padStart(2, '0')}`;
        expect(parseMinutes(clock)).toEqual({ ok: true, value: minutes });
      }),
    );
  });

  it.each([-1, 0.5, NaN, MAX_MINUTES + 1])('of %d minutes is refused', (minutes) => {
    expect(() => minutesFromWhole(minutes)).toThrow(RangeError);
    expect(() => formatMinutes(minutes)).toThrow(RangeError);
  });

  it('has one zero only', () => {
    expect(minutesFromWhole(-0)).toBe(0);
  });

  it.each<[string, number]>([
    ['90', 90],
    ['90 min', 90],
    ['90m', 90],
    ['1:30', 90],
    ['1:30 h', 90],
    ['0:05', 5],
    ['1 h 30', 90],
    ['1 h 30 min', 90],
    ['1h30', 90],
    ['1h 5m', 65],
    ['1.5 h', 90],
    ['1,5 h', 90],
    ['.5 h', 30],
    ['1½ h', 90],
    ['1 1/2 hours', 90],
    ['½ hr', 30],
    ['1.33 h', 80],
    ['2 Hours', 120],
    ['1 hr. 10 mins.', 70],
    ['7.5 min', 8],
    ['3.0', 3],
  ])('typed as %s is %d minutes', (text, minutes) => {
    expect(parseMinutes(text)).toEqual({ ok: true, value: minutes });
  });

  it('with a fraction but no unit is asked back in both units', () => {
    expect(parseMinutes(' 1.5 ')).toMatchObject({ ok: false, error: { expected: ['1.5 h', '1.5 min'] } });
    expect(parseMinutes('5 days')).not.toMatchObject({ error: { expected: ['5 days h', '5 days min'] } });
    expect(parseMinutes(String(MAX_MINUTES))).toEqual({ ok: true, value: MAX_MINUTES });
  });

  const refused: readonly [string, MinutesProblem['code']][] = [
    ['', 'empty'],
    ['  ', 'empty'],
    ['soon', 'not-a-duration'],
    ['-5', 'not-a-duration'],
    ['1:60', 'not-a-duration'],
    ['1:5', 'not-a-duration'],
    ['1:30:00', 'not-a-duration'],
    [':30', 'not-a-duration'],
    ['1 h 60', 'not-a-duration'],
    ['1 h 30 s', 'not-a-duration'],
    ['1.5 h 10', 'not-a-duration'],
    ['30 min 1 h', 'not-a-duration'],
    ['5 days', 'not-a-duration'],
    ['1/0 h', 'not-a-duration'],
    ['1,250', 'not-a-duration'],
    ['1e3', 'not-a-duration'],
    ['NaN', 'not-a-duration'],
    ['1.5', 'ambiguous'],
    ['1,5', 'ambiguous'],
    ['1 1/2', 'ambiguous'],
    ['2000001', 'out-of-range'],
    ['99999999999999999999 h', 'out-of-range'],
    ['9'.repeat(80), 'out-of-range'],
    ['9'.repeat(10_000_000), 'not-a-duration'],
  ];
  // A name of a test holds the first letters only.
  it.each(refused.map(([text, code]) => [text.slice(0, 20), code, text] as const))(
    'typed as %j is answered with %s',
    (_start, code, text) => {
      const minutes = parseMinutes(text);
      expect(minutes.ok ? minutes.value : minutes.error.code).toBe(code);
      if (minutes.ok) return;
      expect(minutes.error.read.length).toBeLessThanOrEqual(40);
      for (const example of minutes.error.expected) expect(parseMinutes(example)).toMatchObject({ ok: true });
    },
  );
});
