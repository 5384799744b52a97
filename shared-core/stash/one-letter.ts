/**
 * Whether `typed` is at most one slip away from `word` or its beginning. A slip is one extra letter, one missing letter, one
 * wrong letter, or two neighbors swapped (a Damerau-Levenshtein distance of one). Case counts.
 */
export function isWithinOneLetter(typed: string, word: string): boolean {
  let at = 0;
  while (at < typed.length && typed[at] === word[at]) at += 1;
  if (at === typed.length) return true;
  const rest = (from: number, wordFrom: number): boolean => word.startsWith(typed.slice(from), wordFrom);
  const isWrong = word.length > at && rest(at + 1, at + 1);
  const isExtra = rest(at + 1, at);
  const isMissing = word.length > at && rest(at, at + 1);
  const isSwapped = typed[at] === word[at + 1] && typed[at + 1] === word[at] && rest(at + 2, at + 2);
  return isWrong || isExtra || isMissing || isSwapped;
}
