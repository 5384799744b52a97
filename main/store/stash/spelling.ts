import { isWithinOneLetter } from '#core/stash/one-letter';
import { allRows, oneNumber, type ReadableStore } from '../base/handles';
import { textOf } from '../base/rows';

/** The words of the search's index with the letters each has. Read again when `search_state` has changed. */
interface Vocabulary {
  readonly state: number;
  readonly words: readonly string[];
  readonly letters: Int32Array;
}

const vocabularies = new WeakMap<object, Vocabulary>();

/** Shorter words have too many others one letter away. */
const SHORTEST = 4;
const NEIGHBORS_AT_MOST = 12;

/**
 * Returns `typed` if a word begins with it; otherwise up to twelve words that begin with it but for one slip: a wrong, missing or extra
 * letter, or two letters swapped.
 */
export function likelyWords(store: ReadableStore, typed: string): readonly string[] {
  if (typed.length < SHORTEST || beginsAWord(store, typed)) return [typed];
  const { words, letters } = vocabularyOf(store);
  const folded = fold(typed);
  const wanted = letterBits(folded);
  const near: string[] = [];
  for (let index = 0; index < words.length && near.length < NEIGHBORS_AT_MOST; index += 1) {
    // A wrong or extra letter is one that the word does not have, so two of them rule it out.
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
  const before = vocabularies.get(store.database);
  if (before?.state === state) return before;
  const words = allRows(store, 'SELECT term FROM fabric_vocabulary').map((row) => textOf(row, 'term'));
  const read = { state, words, letters: Int32Array.from(words, letterBits) };
  vocabularies.set(store.database, read);
  return read;
}

/** Lower case without accents, as in the search's index. */
function fold(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
}

/** One bit for each letter from a to z; other characters share the six bits that remain. */
function letterBits(word: string): number {
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
