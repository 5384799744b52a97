import { ARTICLES, COLORS, FABRIC_WORDS, PLAIN_HEADING_WORDS, SECTION_WORDS } from '../words/trade-words';

/** The fabrics that a list has named so far. Grows while the list is read. */
export interface FabricNames {
  readonly names: Set<string>;
  /** By key: every way in which a fabric has been named. */
  readonly byKey: Map<string, string>;
  /** By word: the fabrics with that word in one of their names. */
  readonly byWord: Map<string, Set<string>>;
}

export function noNames(): FabricNames {
  return { names: new Set(), byKey: new Map(), byWord: new Map() };
}

function keyOf(name: string): string {
  return name
    .toLowerCase()
    .replace(/[’]/gu, "'")
    .replace(/[^\p{L}\p{M}\p{N}']+/gu, ' ')
    .replace(/^(?:the|your) /u, '')
    .replace(/ fabrics?$/u, '')
    .trim();
}

/** Adds a name and another name for the same fabric. The spelling that the list uses first is kept. */
export function addName({ names, byKey, byWord }: FabricNames, name: string, alias: string | null): void {
  const key = keyOf(name);
  const kept = byKey.get(key) ?? name;
  names.add(kept);
  for (const other of [key, alias === null ? '' : keyOf(alias), letterOf(key) ?? '']) {
    if (other === '' || byKey.has(other)) continue;
    byKey.set(other, kept);
    for (const word of other.split(' ')) byWord.set(word, (byWord.get(word) ?? new Set()).add(kept));
  }
}

/** `A` is enough for `Fabric A`. */
function letterOf(key: string): string | null {
  return /^fabric (\p{L}{1,2}|\d{1,2})$/u.exec(key)?.[1] ?? null;
}

/** The fabrics that these words may name. A part of a known name is enough: `red` for `Red dot`, and for `Red check` as well. */
export function fabricsNamed({ byKey, byWord }: FabricNames, name: string): readonly string[] {
  const key = keyOf(name);
  const exact = byKey.get(key);
  if (exact !== undefined) return [exact];
  const withWord = key.split(' ').map((word) => byWord.get(word) ?? new Set<string>());
  const [fewest, ...others] = withWord.toSorted((one, other) => one.size - other.size);
  return [...(fewest ?? [])].filter((kept) => others.every((set) => set.has(kept)));
}

/** A color, a word for fabric, or a word that only a fabric of this list has. */
export function isFabricWordOf({ byWord }: FabricNames, word: string): boolean {
  if (COLORS.has(word) || FABRIC_WORDS.has(word)) return true;
  const isTelling =
    word.length > 2 && !ARTICLES.has(word) && !PLAIN_HEADING_WORDS.has(word) && !SECTION_WORDS.has(word);
  return isTelling && byWord.has(word);
}
