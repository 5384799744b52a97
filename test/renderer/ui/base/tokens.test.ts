import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync('renderer/ui/base/tokens.css', 'utf8');
const themes = ['light', 'dark'] as const;
type Theme = (typeof themes)[number];

/** `--name: light-dark(#rrggbb, #rrggbb)` of tokens.css. */
function color(name: string, theme: Theme): string {
  const found = new RegExp(`--${name}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)`).exec(css);
  const value = theme === 'light' ? found?.[1] : found?.[2];
  if (value === undefined) throw new Error(`No token ${name}`);
  return value;
}

/** Relative luminance and contrast ratio as WCAG 2.2 defines them (published). */
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const channel = parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

function contrast(first: string, second: string): number {
  const [light, dark] = [luminance(first), luminance(second)].toSorted((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

const TEXT = 4.5;
const SHAPE = 3;

const pairs: readonly (readonly [string, string, number])[] = [
  ['ink', 'paper', TEXT],
  ['ink', 'sheet', TEXT],
  ['ink', 'fold', TEXT],
  ['ink', 'thread-soft', TEXT],
  ['ink', 'alert-soft', TEXT],
  ['ink-quiet', 'paper', TEXT],
  ['ink-quiet', 'sheet', TEXT],
  ['ink-quiet', 'fold', TEXT],
  ['ink-quiet', 'thread-soft', TEXT],
  ['thread', 'paper', TEXT],
  ['thread', 'sheet', TEXT],
  ['thread', 'fold', TEXT],
  ['thread', 'thread-soft', TEXT],
  ['thread-deep', 'paper', TEXT],
  ['thread-deep', 'fold', TEXT],
  ['thread-ink', 'thread', TEXT],
  ['thread-ink', 'thread-deep', TEXT],
  ['alert', 'paper', TEXT],
  ['alert', 'sheet', TEXT],
  ['alert', 'alert-soft', TEXT],
  ['ink', 'fabric', TEXT],
  ['ink', 'fabric-alternate', TEXT],
  ['chalk', 'paper', SHAPE],
  ['field-edge', 'paper', SHAPE],
  ['field-edge', 'sheet', SHAPE],
  ['thread', 'fabric', SHAPE],
];

describe.each(themes)('the %s theme', (theme) => {
  it.each(pairs)('shows %s on %s with enough contrast', (front, ground, least) => {
    expect(contrast(color(front, theme), color(ground, theme))).toBeGreaterThanOrEqual(least);
  });
});

it('measures black on white as 21 to 1 and a gray of known ratio', () => {
  // WCAG 2.2, definition of contrast ratio: it runs from 1 to 21. #767676 on white is the well-known gray that just passes AA.
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

it('moves for 200 ms at most, and not at all when the system asks for no motion', () => {
  const durations = [...css.matchAll(/--(?:quick|calm): (\d+)ms/g)].map((match) => Number(match[1]));
  expect(durations).toHaveLength(4);
  expect(Math.max(...durations)).toBeLessThanOrEqual(200);
  expect(durations.slice(2)).toEqual([0, 0]);
});
