import { isWithinOneLetter } from '#core/stash/one-letter';
import { allRows, oneNumber, type ReadableStore } from '../base/handles';
import { textOf } from '../base/rows';

/** The words of the stash as the search has them, with the letters each holds; read anew when the words have changed. */
interface Vocabulary {
  readonly state: number;
  readonly words: readonly string[];
  readonly letters: Int32Array;
}

const known = new WeakMap<object, Vocabulary>();

/** Shorter words are written right, and have too many neighbors. */
const SHORTEST = 4;
const NEIGHBORS_AT_MOST = 12;

/**
 * The words that `typed` may have been meant for: it, where some word begins with it, else the words that begin with it but for
 * one letter (wrong, missing, too many, or two turned round), at most twelve.
 */
export function wordsMeant(store: ReadableStore, typed: string): readonly string[] {
  if (typed.length < SHORTEST || beginsAWord(store, typed)) return [typed];
  const { words, letters } = vocabularyOf(store);
  const folded = fold(typed);
  const wanted = lettersOf(folded);
  const near: string[] = [];
  for (let index = 0; index < words.length && near.length < NEIGHBORS_AT_MOST; index += 1) {
    // A letter that is wrong or too many is one the word does not have.
    if (bitCount(wanted & ~(letters[index] ?? 0)) > 1) continue;
    const word = words[index] ?? '';
    if (isWithinOneLetter(folded, word)) near.push(word);
  }
  return near.length === 0 ? [typed] : near;
}

function beginsAWord(store: ReadableStore, typed: string): boolean {
  const sql = 'SELECT EXISTS (SELECT 1 FROM fabric_words WHERE fabric_words MATCH ?) AS begins';
  return oneNumber(store, sql, `"${typed}"*`) === 1;
}

function vocabularyOf(store: ReadableStore): Vocabulary {
  const state = oneNumber(store, 'SELECT changes FROM search_state');
  const before = known.get(store.database);
  if (before?.state === state) return before;
  const words = allRows(store, 'SELECT term FROM fabric_vocabulary').map((row) => textOf(row, 'term'));
  const read = { state, words, letters: Int32Array.from(words, lettersOf) };
  known.set(store.database, read);
  return read;
}

/** As the search's own tokens are: small letters without accents. */
function fold(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
}

/** One bit a letter from a to z; all else shares the bits that are left. */
function lettersOf(word: string): number {
  let bits = 0;
  for (let index = 0; index < word.length; index += 1) {
    const code = word.charCodeAt(index) - 97;
    bits |= 1 << (code >= 0 && code < 26 ? code : 26 + (word.charCodeAt(index) % 6));
  }
  return bits;
}

function bitCount(bits: number): number {
  let [left, count] = [bits, 0];
  while (left !== 0 && count < 3) {
    left &= left - 1;
    count += 1;
  }
  return count;
}
