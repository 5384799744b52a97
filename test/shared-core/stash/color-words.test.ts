import { describe, expect, it } from 'vitest';
import { colorWordsOf } from '#core/stash/color-words';
import type { ScreenColor } from '#core/units/screen-color';

const of = (color: ScreenColor, count: number): readonly ScreenColor[] =>
  Array.from({ length: count }, () => color);

describe('the words for the colors of a photo', () => {
  it('name the largest share first, at most three, and no flecks', () => {
    const navy: ScreenColor = [30, 42, 78];
    const cream: ScreenColor = [240, 230, 210];
    const red: ScreenColor = [196, 36, 40];
    expect(colorWordsOf([...of(cream, 30), ...of(navy, 60), ...of(red, 3)])).toEqual(['navy', 'cream']);
    const green: ScreenColor = [80, 140, 70];
    const gold: ScreenColor = [206, 158, 60];
    expect(colorWordsOf([navy, cream, green, gold].flatMap((color) => of(color, 25)))).toHaveLength(3);
  });

  it('are empty for a picture without points', () => {
    expect(colorWordsOf([])).toEqual([]);
  });

  it('tell black, white and neutral gray apart', () => {
    expect([0, 130, 255].flatMap((light) => colorWordsOf([[light, light, light]]))).toEqual([
      'black',
      'gray',
      'white',
    ]);
  });
});
