/** Each item with the one after it, the last with the first: corners to sides, sides to corners. Empty for none. */
export function pairsAround<Item extends object>(items: readonly Item[]): readonly (readonly [Item, Item])[] {
  const [first] = items;
  if (first === undefined) return [];
  return items.map((item, index) => [item, items[index + 1] ?? first]);
}
