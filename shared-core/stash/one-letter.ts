/**
 * Whether `typed` is the beginning of `word` (or all of it) but for one letter: one too many, one missing, one that is wrong, or
 * two neighbors turned round (Damerau and Levenshtein, at a distance of one). Both are compared as they are.
 */
export function isWithinOneLetter(typed: string, word: string): boolean {
  let at = 0;
  while (at < typed.length && typed[at] === word[at]) at += 1;
  if (at === typed.length) return true;
  const rest = (from: number, wordFrom: number): boolean => word.startsWith(typed.slice(from), wordFrom);
  const isWrong = word.length > at && rest(at + 1, at + 1);
  const isTooMany = rest(at + 1, at);
  const isMissing = word.length > at && rest(at, at + 1);
  const isTurned = typed[at] === word[at + 1] && typed[at + 1] === word[at] && rest(at + 2, at + 2);
  return isWrong || isTooMany || isMissing || isTurned;
}
