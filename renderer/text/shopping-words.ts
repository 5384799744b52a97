import type { SavedShoppingLine } from '#core/domain/shopping';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import type { LineShare, ShoppingLine } from '#core/stash/shopping/shopping-list';
import { bySupplier, type ShopLines } from '#core/stash/shopping/shopping-lines';
import { formatLength, formatYardage } from '#core/units/format-length';
import type { LengthDisplay } from '#core/units/unit-system';

/** A line of the list as a page or a sheet shows it: worked out from the projects, or the maker's own. */
export type ShopEntry =
  | { readonly kind: 'needed'; readonly key: string; readonly line: ShoppingLine }
  | { readonly kind: 'own'; readonly key: string; readonly line: SavedShoppingLine };

/** The whole list shop by shop, those lines last of which no shop is known. */
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

/** The fabric by its name; fabric that is none yet by what it is for. */
export function nameToBuy({ fabric, shares }: ShoppingLine): string {
  const [first] = shares;
  return fabric?.name ?? first?.need.package?.name ?? first?.need.name ?? 'Fabric';
}

/** `42 in wide, 81½ in needed`: what the amount was rounded from, so that the shop's own steps can be weighed against it. */
export function sizeToBuy(line: ShoppingLine, display: LengthDisplay): string {
  const { kind, width, exact, count, isWider } = line;
  if (kind === 'thread') return `${formatYardage(exact, display)} of thread`;
  const wide = formatLength(width, display);
  if (count !== null) return `${wide} × ${formatLength(exact, display)}`;
  const atLeast = isWider ? `${wide} wide or more: the fabric chosen is too narrow` : `${wide} wide`;
  return `${atLeast}, ${formatLength(exact, display, 'up')} needed`;
}

/** `Orchard ring: Backing`, with its part where several share a line. */
export function shareWords(
  { need, length }: LineShare,
  isOneOfSeveral: boolean,
  display: LengthDisplay,
): string {
  const part = isOneOfSeveral && need.kind !== 'thread' ? `, ${formatLength(length, display, 'up')}` : '';
  const source = need.stageName ?? 'by the cutting plan';
  return `${need.name}, ${source}${part}`;
}

/** Asks for what of the stash is enough for a need. */
export function whichFits({ amount }: Pick<FabricNeed, 'amount'>): string {
  return amount.measure === 'thread' ? 'Which thread fits' : 'Which fabric fits';
}
