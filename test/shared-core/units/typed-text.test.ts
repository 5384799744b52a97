import { describe, expect, it } from 'vitest';
import { clipRead } from '#core/units/typed-text';

describe('what was typed, for a message', () => {
  it.each<[string, string]>([
    ['  12   1/2\n\tyards ', '12 1/2 yards'],
    ['x'.repeat(40), 'x'.repeat(40)],
    ['x'.repeat(41), `${'x'.repeat(39)}…`],
    ['🧵'.repeat(41), `${'🧵'.repeat(39)}…`],
    [` ${'y'.repeat(10)}${' '.repeat(149)}`, 'y'.repeat(10)],
    [` ${'y'.repeat(10)}${' '.repeat(150)}z`, `${'y'.repeat(10)}…`],
  ])('%j is %j', (typed, said) => {
    expect(clipRead(typed)).toBe(said);
  });
});
