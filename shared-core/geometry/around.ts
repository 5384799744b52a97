/** Each item paired with the next, and the last with the first: turns corners into sides and sides into corners. */
export function pairsAround<Item extends object>(items: readonly Item[]): readonly (readonly [Item, Item])[] {
  const [first] = items;
  if (first === undefined) return [];
  return items.map((item, index) => [item, items[index + 1] ?? first]);
}
