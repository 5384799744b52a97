import { lab } from 'd3-color';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lightnessOf, perceivedColor, screenColorFromHex } from '#core/units/screen-color';

describe('a screen color', () => {
  it('is read from six hex digits, and other text is refused', () => {
    expect(screenColorFromHex('#D8c9a8')).toEqual([216, 201, 168]);
    for (const text of ['', '#fff', 'd8c9a8', '#d8c9a8ff', '#d8c9ag'])
      expect(() => screenColorFromHex(text)).toThrow(RangeError);
  });

  // L* of the three primaries from their share of the light (IEC 61966-2-1): 116 · ∛Y − 16.
  it.each([
    [[255, 0, 0], 0.2126],
    [[0, 255, 0], 0.7152],
    [[0, 0, 255], 0.0722],
  ] as const)('%j has the lightness of its share of the light', (color, share) => {
    expect(lightnessOf(color)).toBeCloseTo(116 * Math.cbrt(share) - 16, 9);
  });

  it('is as light as d3-color says for any gray', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 255 }), (light) => {
        expect(lightnessOf([light, light, light])).toBeCloseTo(
          lab(`rgb(${[light, light, light].join()})`).l,
          3,
        );
      }),
    );
  });

  it('gets lighter with more of any of its lights', () => {
    const channel = fc.integer({ min: 0, max: 254 });
    fc.assert(
      fc.property(channel, channel, channel, fc.nat(2), (r, g, b, which) => {
        const [more, less] = [[r, g, b].map((value, at) => (at === which ? value + 1 : value)), [r, g, b]];
        expect(lightnessOf(more as never)).toBeGreaterThan(lightnessOf(less as never));
      }),
    );
  });

  it('has no hue when it is gray', () => {
    for (const light of [0, 90, 180, 255]) {
      const [, greenToRed, blueToYellow] = perceivedColor([light, light, light]);
      expect(Math.hypot(greenToRed, blueToYellow)).toBeLessThan(1e-4);
    }
  });
});
