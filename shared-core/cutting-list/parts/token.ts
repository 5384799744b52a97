/** A part of a line, at its characters `from` to `to`. Words are lower case; dashes, quotes and times signs have one spelling. */
export type Token = {
  readonly from: number;
  readonly to: number;
} & (
  | {
      readonly kind: 'number';
      readonly text: string;
      /** If it is a plain whole number. */ readonly whole: number | null;
    }
  | { readonly kind: 'unit'; readonly text: string; readonly unit: 'in' | 'ft' | 'yd' | 'mm' | 'cm' | 'm' }
  | { readonly kind: 'word'; readonly text: string }
  | { readonly kind: 'mark'; readonly text: string }
);

export type Tokens = readonly Token[];

/** What a part of the grammar read, and the place of the next token. Null if nothing of the kind is there. */
export type Match<Value> = { readonly value: Value; readonly next: number } | null;

export function wordAt(tokens: Tokens, at: number): string | null {
  const token = tokens[at];
  return token?.kind === 'word' ? token.text : null;
}

export function isWordOf(tokens: Tokens, at: number, words: ReadonlySet<string>): boolean {
  const word = wordAt(tokens, at);
  return word !== null && words.has(word);
}

export function isMark(tokens: Tokens, at: number, ...marks: readonly string[]): boolean {
  const token = tokens[at];
  return token?.kind === 'mark' && marks.includes(token.text);
}

/** The place after the words of a phrase; null if they are not there. */
export function afterPhrase(tokens: Tokens, at: number, phrase: string): number | null {
  const words = phrase.split(' ');
  return words.every((word, index) => wordAt(tokens, at + index) === word) ? at + words.length : null;
}

/** No phrase is longer. Without an end, each of many words would be read again and again. */
const MOST_WORDS = 14;

/** The place after the tokens from here that are words of the set, a few at most. */
export function skipWords(tokens: Tokens, at: number, words: ReadonlySet<string>): number {
  let next = at;
  while (next - at < MOST_WORDS && isWordOf(tokens, next, words)) next += 1;
  return next;
}

/** A plain whole number, in parentheses or not. */
export function readWhole(tokens: Tokens, at: number): Match<number> {
  const isOpen = isMark(tokens, at, '(', '[');
  const token = tokens[isOpen ? at + 1 : at];
  if (token?.kind !== 'number' || token.whole === null) return null;
  if (!isOpen) return { value: token.whole, next: at + 1 };
  return isMark(tokens, at + 2, ')', ']') ? { value: token.whole, next: at + 3 } : null;
}
