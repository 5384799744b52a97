/** Longer than anything a person types into a length field; longer text is refused before any work is done on it. */
export const MAX_TYPED_CHARACTERS = 80;

const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
  '↉': '0/3',
};
const JOINT_BEFORE_FRACTION = new RegExp(`(\\d)-(?=[${Object.keys(VULGAR_FRACTIONS).join('')}])`, 'gu');
const RAISED_OVER_LOWERED = /([⁰¹²³⁴-⁹]+)[/⁄∕]([₀-₉]+)/gu;

/**
 * One plain spelling of what was typed: lower case, single spaces, ASCII digits, slash, minus, quotes and times sign, and
 * every one-character fraction spelled out after a space (so that 9½ never becomes 91/2).
 */
export function normaliseTyped(text: string): string {
  const spelledOut = Object.entries(VULGAR_FRACTIONS).reduce(
    (sofar, [character, plain]) => sofar.replaceAll(character, ` ${plain}`),
    text.replace(JOINT_BEFORE_FRACTION, '$1'),
  );
  return spelledOut
    .replace(
      RAISED_OVER_LOWERED,
      (_match, over: string, under: string) => ` ${over.normalize('NFKC')}/${under.normalize('NFKC')}`,
    )
    .normalize('NFKC')
    .replace(/[⁄∕]/gu, '/')
    .replace(/[‐‑‒–—−]/gu, '-')
    .replace(/[“”„‟]/gu, '"')
    .replace(/[‘’‚‛´′]/gu, "'")
    .replace(/[×✕✖]/gu, 'x')
    .replace(/\s+/gu, ' ')
    .trim()
    .toLowerCase();
}

const READ_LIMIT = 40;

/** What was typed, for a message: on one line and cut to 40 characters, the last then an ellipsis. */
export function clipRead(text: string): string {
  const start = text
    .slice(0, 4 * READ_LIMIT)
    .replace(/\s+/g, ' ')
    .trim();
  const characters = Array.from(start);
  const isWhole = characters.length <= READ_LIMIT && text.length <= 4 * READ_LIMIT;
  return isWhole ? start : `${characters.slice(0, READ_LIMIT - 1).join('')}…`;
}
