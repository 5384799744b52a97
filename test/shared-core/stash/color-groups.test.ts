import { describe, expect, it } from 'vitest';
import { colorGroups } from '#core/stash/color-groups';

describe('the color words a fabric is grouped by', () => {
  it('are the last word of each color, each once, in lower case', () => {
    expect(colorGroups('Moss green, off white; sand and dark Green')).toEqual(['green', 'white', 'sand']);
    expect(colorGroups('blue/cream')).toEqual(['blue', 'cream']);
  });

  it('are empty for an empty text', () => {
    expect(colorGroups('')).toEqual([]);
    expect(colorGroups(' , - ')).toEqual([]);
  });
});
