import type { Calculation } from '#core/calculators/calculator';
import type { Quantity, Table } from '#core/calculators/explanation';
import { isMetByItem, type Need, type NeedAmount, type NeededPatch } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import { lengthFor } from '#core/stash/shopping/fill-rows';
import { lengthFromExact } from '#core/units/length';

type Numbered = Exclude<Quantity, { kind: 'words' | 'size' }>;

/** A quantity and what the answer calls it. */
interface Named {
  readonly name: string;
  readonly quantity: Numbered;
}

/** Everything that an answer says and hands on. */
export interface WholeAnswer {
  readonly calculation: Calculation;
  readonly needs: readonly Need[];
  readonly cuts: PatchList;
}

/** Quantities with one name in figures, working and tables that are not one value. */
export function contradictions({ calculation }: WholeAnswer): readonly string[] {
  const { figures, explanation, tables } = calculation;
  const results = explanation.flatMap(({ label, result }) => named(label, result));
  const printed = [
    ...figures.flatMap(({ label, quantity }) => named(label, quantity)),
    ...explanation.flatMap(({ terms }) => terms.flatMap(({ means, quantity }) => named(means, quantity))),
    ...tables.flatMap(({ columns, rows }) => rows.flatMap((row) => cellsByName(columns, row))),
  ];
  return printed.flatMap((one) => {
    const same = results.filter(
      ({ name, quantity }) => name === one.name && quantity.kind === one.quantity.kind,
    );
    return same.length === 0 || same.some(({ quantity }) => isOneValue(quantity, one.quantity))
      ? []
      : [`${one.name}: ${JSON.stringify([one.quantity, ...same.map(({ quantity }) => quantity)])}`];
  });
}

/** Figures, by label, whose value stands nowhere in the working or the tables. */
export function figuresWithoutWorking({ calculation }: WholeAnswer): readonly string[] {
  const said = saidBelow(calculation);
  const sums = new Set(calculation.tables.flatMap(sumsOf));
  const isSaidBelow = (one: Numbered) =>
    said.some((other) => isOneValue(one, other)) || (one.kind === 'count' && sums.has(one.exact));
  return calculation.figures
    .filter(({ quantity }) => !numbered(quantity).every(isSaidBelow))
    .map(({ label }) => label);
}

/** What the shopping list asks for and no figure says: the fabric with its extra, the square, the package, the thread. */
export function needsWithoutFigure({ calculation, needs }: WholeAnswer): readonly string[] {
  return needs.filter((need) => !isSaid(calculation, need)).map((need) => JSON.stringify(need));
}

/** What the cutting list has and the answer or its shopping list does not. */
export function cutsWithoutAnswer({ calculation, needs, cuts }: WholeAnswer): readonly string[] {
  const counts = countsOf(calculation);
  return [...new Set(cuts.map(({ fabric }) => fabric))].flatMap((fabric) => {
    const patches = cuts.filter((patch) => patch.fabric === fabric);
    const all = patches.reduce((sum, { count }) => sum + count, 0);
    const isCounted =
      counts.has(all) || patches.every(({ count }) => counts.has(count)) || areAllButOne(patches, counts);
    const need = needs.find(({ name }) => name === fabric);
    const problems = [
      ...(isCounted ? [] : ['counted otherwise']),
      ...(need === undefined ? ['not bought'] : isEnough(need, patches) ? [] : ['too little bought']),
    ];
    return problems.map((problem) => `${fabric} ${problem}: ${JSON.stringify({ patches, need })}`);
  });
}

/** Of all panels but the last, which is pieced from strips. */
function areAllButOne([whole, strips, ...more]: PatchList, counts: ReadonlySet<number>): boolean {
  if (whole === undefined || strips === undefined || more.length > 0) return false;
  return counts.has(whole.count + 1) && counts.has(strips.count);
}

function isSaid(calculation: Calculation, need: Need): boolean {
  const { amount, package: sold } = need;
  if (sold !== null)
    return calculation.figures.some(
      ({ quantity }) => quantity.kind === 'words' && quantity.text === sold.name,
    );
  const numbers = calculation.figures.flatMap(({ quantity }) => numbered(quantity));
  const lengths = numbers.filter((one) => one.kind === 'length');
  if (isMetByItem(amount)) {
    const counts = numbers.filter((one) => one.kind === 'count');
    return (
      lengths.some(({ exact }) => isClose(exact, amount.length)) ||
      counts.some(({ rounded }) => amount.length % rounded === 0)
    );
  }
  const byLength = lengths.filter(({ use }) => use === 'yardage');
  const fabric = lengthFor(amount, { width: need.fabricWidth, turning: 'any' }) ?? Number.NaN;
  if (byLength.length === 0)
    return lengths.some(({ rounded }) => rounded === fabric) || isSaidByThePiece(calculation, amount);
  return byLength.some(({ exact }) => isClose(exact, fabric * (1 + need.extraPercent / 100)));
}

/** Each patch with its two sides and its number. */
function isSaidByThePiece(calculation: Calculation, amount: NeedAmount): boolean {
  if (amount.measure !== 'patches') return false;
  const said = [
    ...calculation.figures.flatMap(({ quantity }) => numbered(quantity)),
    ...saidBelow(calculation),
  ];
  const lengths = new Set(said.flatMap((one) => (one.kind === 'length' ? [one.rounded] : [])));
  const counts = countsOf(calculation);
  return amount.patches.every(
    ({ width, length, count }) =>
      lengths.has(lengthFromExact(width, 'up')) &&
      lengths.has(lengthFromExact(length, 'up')) &&
      counts.has(count),
  );
}

/** Laid in rows across the fabric, or end to end along it, the patches come out of what is bought. */
function isEnough({ amount, fabricWidth }: Need, patches: PatchList): boolean {
  const cut = (list: readonly NeededPatch[], width: number) =>
    lengthFor({ measure: 'patches', patches: list }, { width, turning: 'any' }) ?? Infinity;
  const bought = lengthFor(amount, { width: fabricWidth, turning: 'any' }) ?? 0;
  if (cut(patches, fabricWidth) <= bought + 1) return true;
  if (amount.measure !== 'patches') return false;
  const along = patches.map((patch) => ({ ...patch, width: patch.length, length: patch.width }));
  const across = amount.patches.reduce((sum, { width, count }) => sum + width * count, 0);
  return cut(along, Math.max(...amount.patches.map(({ length }) => length))) <= across;
}

/** Every number of things that the answer says: one by one, in words, and added up by column, over all rows or those with one word. */
function countsOf({ figures, explanation, tables }: Calculation): ReadonlySet<number> {
  const quantities = [
    ...figures.map(({ quantity }) => quantity),
    ...explanation.flatMap(({ result, terms }) => [result, ...terms.map(({ quantity }) => quantity)]),
    ...tables.flatMap(({ rows }) => rows.flat()),
  ];
  return new Set([1, ...quantities.flatMap(countsIn), ...tables.flatMap(sumsOf)]);
}

function countsIn(quantity: Quantity): readonly number[] {
  if (quantity.kind === 'words') return [...quantity.text.matchAll(/\d+/g)].map(([digits]) => Number(digits));
  return quantity.kind === 'count' ? [quantity.rounded] : [];
}

function sumsOf({ columns, rows }: Table): readonly number[] {
  const words = rows.flat().flatMap((cell) => (cell.kind === 'words' ? [cell.text] : []));
  return [null, ...new Set(words)].flatMap((word) =>
    columns.map((_, at) =>
      rows
        .filter((row) => word === null || row.some((cell) => cell.kind === 'words' && cell.text === word))
        .reduce((sum, row) => sum + (row[at]?.kind === 'count' ? row[at].rounded : 0), 0),
    ),
  );
}

function saidBelow({ explanation, tables }: Calculation): readonly Numbered[] {
  return [
    ...explanation.flatMap(({ result, terms }) => [result, ...terms.map(({ quantity }) => quantity)]),
    ...tables.flatMap(({ rows }) => rows.flat()),
  ].flatMap(numbered);
}

/** One exact value, or one value in use where one of the two is written as it is used. */
function isOneValue(one: Numbered, other: Numbered): boolean {
  if (one.kind !== other.kind) return false;
  if (isClose(one.exact, other.exact)) return true;
  if (!('rounded' in one && 'rounded' in other)) return false;
  return one.rounded === other.rounded && (one.exact === one.rounded || other.exact === other.rounded);
}

function isClose(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one));
}

function named(name: string, quantity: Quantity): readonly Named[] {
  return numbered(quantity).map((one) => ({ name: name.toLowerCase(), quantity: one }));
}

function numbered(quantity: Quantity): readonly Numbered[] {
  if (quantity.kind === 'words') return [];
  return quantity.kind === 'size' ? [quantity.width, quantity.length] : [quantity];
}

/** A row that starts with words names its cells, as in `Long side, cut`. */
function cellsByName(columns: readonly string[], [first, ...rest]: readonly Quantity[]): readonly Named[] {
  if (first?.kind !== 'words') return [];
  return rest.flatMap((cell, at) => named(`${first.text}, ${columns[at + 1] ?? ''}`, cell));
}
