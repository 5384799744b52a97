import type { SavedShoppingLine } from '#core/domain/shopping';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import type { LineShare, ShoppingLine } from '#core/stash/shopping/shopping-list';
import { bySupplier, type ShopLines } from '#core/stash/shopping/shopping-lines';
import { formatLength, formatYardage } from '#core/units/format-length';
import type { LengthDisplay } from '#core/units/unit-system';

/** A line of the shopping list: a need of the projects, or a line the maker added. */
export type ShopEntry =
  | { readonly kind: 'needed'; readonly key: string; readonly line: ShoppingLine }
  | { readonly kind: 'own'; readonly key: string; readonly line: SavedShoppingLine };

/** The whole list shop by shop. Lines without a shop come last. */
export function entriesByShop(
  lines: readonly ShoppingLine[],
  own: readonly SavedShoppingLine[],
): readonly ShopLines<ShopEntry>[] {
  const entries: readonly ShopEntry[] = [
    ...lines.map((line) => ({ kind: 'needed', key: line.key, line }) as const),
    ...own.map((line) => ({ kind: 'own', key: line.id, line }) as const),
  ];
  return bySupplier(entries, (entry) =>
    entry.kind === 'own' ? entry.line.supplier : (entry.line.fabric?.supplier ?? ''),
  );
}

export function shopWords(supplier: string): string {
  return supplier === '' ? 'Any shop' : supplier;
}

/** `2⅜ yd`, `1 package`, `1 spool`. */
export function amountToBuy({ count, kind, length }: ShoppingLine, display: LengthDisplay): string {
  if (count === null) return formatYardage(length, display);
  const [one, several] = kind === 'thread' ? ['spool', 'spools'] : ['package', 'packages'];
  return `${String(count)} ${count === 1 ? one : several}`;
}

/** The name of the fabric or, if none is chosen yet, what it is for. */
export function nameToBuy({ fabric, shares }: ShoppingLine): string {
  const [first] = shares;
  return fabric?.name ?? first?.need.package?.name ?? first?.need.name ?? 'Fabric';
}

/** `42 in wide, 81½ in needed`: the exact need, to compare with what the shop can cut. */
export function sizeToBuy(line: ShoppingLine, display: LengthDisplay): string {
  const { kind, width, exact, count, isWider } = line;
  if (kind === 'thread') return `${formatYardage(exact, display)} of thread`;
  if (kind === 'notions') return `${formatLength(exact, display, 'up')} needed`;
  const wide = formatLength(width, display);
  if (count !== null) return `${wide} × ${formatLength(exact, display)}`;
  const atLeast = isWider ? `${wide} wide or more (your fabric is too narrow)` : `${wide} wide`;
  return `${atLeast}, ${formatLength(exact, display, 'up')} needed`;
}

/** `Orchard ring: Backing`, with its share if several needs are on one line. */
export function shareWords(
  { need, length }: LineShare,
  isOneOfSeveral: boolean,
  display: LengthDisplay,
): string {
  const part = isOneOfSeveral && need.kind !== 'thread' ? `, ${formatLength(length, display, 'up')}` : '';
  const source = need.stageName ?? 'cutting plan';
  return `${need.name}, ${source}${part}`;
}

/** The words on the button that looks in the stash for enough of it. */
export function whichFits({ amount }: Pick<FabricNeed, 'amount'>): string {
  if (amount.measure === 'notion') return 'Which notion fits';
  return amount.measure === 'thread' ? 'Which thread fits' : 'Which fabric fits';
}
