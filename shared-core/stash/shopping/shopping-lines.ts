import type { FabricId, ProjectId } from '#core/domain/ids';
import { isMetByItem, type NeedAmount } from '#core/domain/need';
import {
  LENGTH_ZERO,
  type Length,
  lengthAdd,
  lengthFromExact,
  lengthMinimum,
  lengthSubtract,
} from '#core/units/length';
import { type FabricNeed, needKey } from './fabric-need';
import type { CoveredNeed } from './cover-needs';
import { isNothing, lengthFor, patchTurning } from './fill-rows';
import type { FabricToBuy, LineShare, ShoppingLine } from './shopping-list';

/** Lines of one shop. `supplier` is empty when the shop is unknown. */
export interface ShopLines<Line> {
  readonly supplier: string;
  readonly lines: readonly Line[];
}

/**
 * What has to be bought. Needs of one fabric share a line, rounded up once to `step`, what shops cut (an eighth of a yard or 5 cm,
 * common practice). A need that is met has no line.
 */
export function shoppingLines(
  covered: readonly CoveredNeed[],
  fabrics: ReadonlyMap<FabricId, FabricToBuy>,
  step: Length,
): readonly ShoppingLine[] {
  const groups = new Map<string, { readonly part: Part; readonly shares: LineShare[] }>();
  for (const { need, short } of covered) {
    if (isNothing(short)) continue;
    const part = partOf({ need, short }, fabrics);
    const key =
      part.fabric === null ? needKey(need) : JSON.stringify([part.fabric.id, need.kind, part.width]);
    const group = groups.get(key) ?? { part, shares: [] };
    group.shares.push({ need, length: part.length });
    groups.set(key, group);
  }
  return [...groups].map(([key, { part, shares }]) => lineOf(key, part, shares, step));
}

type Part = Pick<ShoppingLine, 'fabric' | 'kind' | 'width' | 'length' | 'isWider'>;

function partOf({ need, short }: CoveredNeed, fabrics: ReadonlyMap<FabricId, FabricToBuy>): Part {
  const fabric = need.fabricId === null ? null : (fabrics.get(need.fabricId) ?? null);
  const { kind } = need;
  if (need.package !== null) return { fabric, kind, ...need.package, isWider: false };
  if (isMetByItem(short)) {
    return {
      fabric,
      kind,
      width: need.fabricWidth,
      length: lengthFromExact(short.length, 'up'),
      isWider: false,
    };
  }
  const own = fabric === null ? null : lengthToCut(need, short, fabric);
  const width = fabric === null || own === null ? need.fabricWidth : fabric.width;
  const exact = own ?? lengthToCut(need, short, { width, direction: fabric?.direction ?? 'any' }) ?? 0;
  const length = lengthFromExact(exact * (1 + need.extraPercent / 100), 'up');
  return { fabric, kind, width, length, isWider: fabric !== null && own === null };
}

/** Length for what is short, or for the whole need when that takes less; null when the fabric is too narrow. */
function lengthToCut(
  { amount }: FabricNeed,
  short: NeedAmount,
  { width, direction }: Pick<FabricToBuy, 'width' | 'direction'>,
): number | null {
  const yardage = { width, turning: patchTurning(direction, 'along') };
  const rest = lengthFor(short, yardage);
  return rest === null ? null : Math.min(rest, lengthFor(amount, yardage) ?? rest);
}

function lineOf(key: string, part: Part, shares: readonly LineShare[], step: Length): ShoppingLine {
  const { fabric, kind, width, isWider } = part;
  const sum = lengthAdd(LENGTH_ZERO, ...shares.map(({ length }) => length));
  const line = { key, fabric, kind, width, isWider, shares };
  if (kind === 'thread') return { ...line, exact: sum, length: sum, count: 1 };
  if (shares[0]?.need.package !== null) {
    return { ...line, exact: part.length, length: part.length, count: shares.length };
  }
  return { ...line, exact: sum, length: lengthFromExact(sum, 'up', step), count: null };
}

/** The lines by shop: shops by name, lines without a shop last, and the lines of a shop in their own order. */
export function bySupplier<Line>(
  lines: readonly Line[],
  supplierOf: (line: Line) => string,
): readonly ShopLines<Line>[] {
  const shops = new Map<string, { supplier: string; lines: Line[] }>();
  for (const line of lines) {
    const supplier = supplierOf(line).trim();
    const shop = shops.get(supplier.toLowerCase()) ?? { supplier, lines: [] };
    shop.lines.push(line);
    shops.set(supplier.toLowerCase(), shop);
  }
  return [...shops.values()].toSorted(
    (one, other) =>
      Number(one.supplier === '') - Number(other.supplier === '') ||
      one.supplier.localeCompare(other.supplier, 'en'),
  );
}

/** How much of `bought` to set aside for each project of a line: its share, until nothing is left. */
export function holdsOfLine(
  shares: readonly LineShare[],
  bought: Length,
): readonly { readonly projectId: ProjectId; readonly length: Length }[] {
  let left = bought;
  const holds = new Map<ProjectId, Length>();
  for (const { need, length } of shares) {
    const held = lengthMinimum(left, length);
    left = lengthSubtract(left, held);
    if (held > 0) holds.set(need.projectId, lengthAdd(holds.get(need.projectId) ?? LENGTH_ZERO, held));
  }
  return [...holds].map(([projectId, length]) => ({ projectId, length }));
}
