/**
 * The color words a fabric is grouped by: the last word of each color, so `moss green, off white` is in the groups green and
 * white. Each word once, in lower case; empty for an empty text.
 */
export function colorGroups(colorWords: string): readonly string[] {
  const words = colorWords
    .toLocaleLowerCase('en')
    .split(/[,;/&+]|\band\b/u)
    .map((color) => color.match(/[\p{L}\p{N}\p{M}]+/gu)?.at(-1) ?? '');
  return [...new Set(words.filter((word) => word !== ''))];
}
