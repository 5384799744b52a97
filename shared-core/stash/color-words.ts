import { perceivedColor, type PerceivedColor, type ScreenColor } from '#core/units/screen-color';

/** Color words with a typical screen color for each: common words, our own values. */
const WORDS: readonly (readonly [string, ScreenColor])[] = [
  ['white', [250, 249, 246]],
  ['cream', [242, 232, 207]],
  ['natural', [222, 207, 176]],
  ['tan', [190, 158, 116]],
  ['brown', [118, 81, 53]],
  ['dark brown', [70, 47, 33]],
  ['black', [30, 29, 31]],
  ['dark gray', [84, 87, 92]],
  ['gray', [138, 140, 144]],
  ['light gray', [199, 201, 203]],
  ['red', [190, 40, 45]],
  ['dark red', [122, 30, 36]],
  ['rust', [160, 80, 45]],
  ['orange', [222, 130, 52]],
  ['gold', [204, 156, 56]],
  ['yellow', [238, 208, 92]],
  ['light yellow', [245, 230, 165]],
  ['lime', [160, 190, 80]],
  ['green', [82, 138, 74]],
  ['dark green', [45, 80, 62]],
  ['moss', [104, 114, 74]],
  ['mint', [178, 215, 190]],
  ['teal', [58, 124, 126]],
  ['turquoise', [82, 182, 186]],
  ['light blue', [170, 200, 222]],
  ['blue', [66, 106, 162]],
  ['navy', [38, 50, 82]],
  ['lavender', [182, 168, 210]],
  ['purple', [118, 76, 140]],
  ['plum', [92, 52, 80]],
  ['pink', [226, 160, 178]],
  ['rose', [172, 92, 122]],
  ['peach', [238, 190, 158]],
];

const BY_WORD: ReadonlyMap<string, ScreenColor> = new Map(WORDS);

/**
 * The screen color, as six hex digits behind a hash, of the first color in the maker's own words that we know: `moss green, off white` is
 * moss. Null when none is known.
 */
export function hexOfColorWords(colorWords: string): string | null {
  const phrases = colorWords
    .toLowerCase()
    .replaceAll('grey', 'gray')
    .split(/[,;/&+]|\band\b/);
  for (const phrase of phrases) {
    const words = phrase.match(/[a-z]+/g) ?? [];
    const known = [words.join(' '), ...words].map((word) => BY_WORD.get(word));
    const color = known.find((one) => one !== undefined);
    if (color !== undefined) return `#${color.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
  }
  return null;
}

/** A color that covers less of the picture than this is a fleck, not a color of the fabric. */
const MINIMUM_SHARE = 1 / 12;
const MAXIMUM_WORDS = 3;

/**
 * At most three words for the colors of a picture, the largest share first. Each point counts for the word nearest to it.
 * Empty for a picture without points.
 */
export function colorWordsOf(points: readonly ScreenColor[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const point of points) {
    const word = nearestWord(point);
    counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return [...counts]
    .filter(([, count]) => count >= points.length * MINIMUM_SHARE)
    .toSorted(([, first], [, second]) => second - first)
    .slice(0, MAXIMUM_WORDS)
    .map(([word]) => word);
}

function nearestWord(point: ScreenColor): string {
  const wanted = perceivedColor(point);
  let [best, least] = ['', Infinity];
  for (const [word, lab] of PERCEIVED) {
    const distance = lab.reduce((sum, value, index) => sum + (value - (wanted[index] ?? 0)) ** 2, 0);
    if (distance < least) [best, least] = [word, distance];
  }
  return best;
}

const PERCEIVED: readonly (readonly [string, PerceivedColor])[] = WORDS.map(([word, color]) => [
  word,
  perceivedColor(color),
]);
