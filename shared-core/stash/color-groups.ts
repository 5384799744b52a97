/**
 * The color words a fabric is grouped by: the last word of each color, so that `moss green, off white` stands with the green and
 * with the white. Each once, in small letters; none where nothing is written.
 */
export function colorGroups(colorWords: string): readonly string[] {
  const words = colorWords
    .toLocaleLowerCase('en')
    .split(/[,;/&+]|\band\b/u)
    .map((color) => color.match(/[\p{L}\p{N}\p{M}]+/gu)?.at(-1) ?? '');
  return [...new Set(words.filter((word) => word !== ''))];
}
