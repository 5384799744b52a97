import { fabricToBuy } from '#core/calculators/fabric-to-buy';
import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromExact, lengthFromMeters } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import { joinCost, stripsNeeded } from '../binding/strip-joins';
import type { Refusal } from '../calculator';
import type { LengthQuantity } from '../explanation';
import { givenLength, lengthUp } from '../quantities';
import type { LongStripsInput } from './input';

/** Strips of one length. `cut` is what is cut now: with both seam allowances and the extra length. */
interface CutStrips {
  readonly name: string;
  readonly finished: number;
  readonly cut: Length;
  readonly count: number;
}

/** Rows of strips that lie side by side along the fabric. A row is as long as its longest strip. */
interface Rows {
  readonly rows: number;
  readonly strips: number;
  readonly length: Length;
}

export interface LongStripsDetails {
  /** The width to cut. */
  readonly width: Length;
  readonly strips: readonly CutStrips[];
  readonly count: number;
  readonly along: {
    readonly perRow: number;
    readonly rows: readonly Rows[];
    readonly fabric: number;
    readonly toBuy: Length;
  };
  /** Null where a join takes as much as a strip adds, or nearly as much, so that no one would cut that many strips. */
  readonly across: {
    readonly needed: number;
    readonly strips: number;
    readonly fabric: number;
    readonly toBuy: Length;
  } | null;
}

/** More than this is a slip in the input. */
const MOST_STRIPS = 1_000;
const MOST_FABRIC = lengthFromMeters(200);

export function planLongStrips(input: LongStripsInput): Result<LongStripsDetails, Refusal> {
  const width = lengthUp(input.stripWidth + 2 * input.seamAllowance, input.cutStep).rounded;
  if (width > input.fabricWidth) return failure(stripTooWide(input, width));
  const strips = stripsToCut(input);
  const count = strips.reduce((sum, one) => sum + one.count, 0);
  const perRow = roundDownTo(input.fabricWidth / width, 1);
  const rows = rowsOf(strips, perRow);
  const along = rows.reduce((sum, row) => sum + row.rows * row.length, 0);
  const across = joinedAcross(input, strips, width);
  if (along > MOST_FABRIC) return failure(TOO_MUCH_FABRIC);
  if (input.way === 'across') {
    if (across === null) return failure(joinsTakeAll(input));
    if (isTooMuch(across, width)) return failure(TOO_MUCH_FABRIC);
  }
  return success({
    width,
    strips,
    count,
    along: { perRow, rows, fabric: along, toBuy: fabricToBuy(input, along).rounded },
    across:
      across === null || isTooMuch(across, width)
        ? null
        : {
            ...across,
            fabric: across.strips * width,
            toBuy: fabricToBuy(input, across.strips * width).rounded,
          },
  });
}

/** What is cut now: finished, two seam allowances and the extra length, rounded up. */
export function cutLength(input: LongStripsInput, finished: number): LengthQuantity {
  return lengthUp(finished + 2 * input.seamAllowance + input.extraLength, input.cutStep);
}

function stripsToCut(input: LongStripsInput): readonly CutStrips[] {
  return finishedStrips(input).map(({ name, finished, count }) => ({
    name,
    finished,
    cut: cutLength(input, finished).rounded,
    count,
  }));
}

/** A mitered strip is as long as its outer edge, and so is a butted top or bottom. */
function finishedStrips({ strips, stripWidth: border }: LongStripsInput): readonly Omit<CutStrips, 'cut'>[] {
  if (strips.of === 'strips') {
    return strips.list.map(({ length, count }) => ({ name: 'Strip', finished: length, count }));
  }
  const { topWidth, topLength, corners } = strips;
  const side = corners === 'mitered' ? topLength + 2 * border : topLength;
  const end = corners === 'cornerstones' ? topWidth : topWidth + 2 * border;
  return [
    { name: 'Side', finished: side, count: 2 },
    { name: 'Top and bottom', finished: end, count: 2 },
  ];
}

/**
 * The longest strips share the first row, the next longest the second, and so on. With strips of one width no other way of
 * filling rows takes less fabric. Rows alike are listed as one.
 */
function rowsOf(strips: readonly CutStrips[], perRow: number): readonly Rows[] {
  const lengths = strips
    .flatMap(({ cut, count }) => Array.from({ length: count }, () => cut))
    .sort((one, other) => other - one);
  const rows: Rows[] = [];
  for (let first = 0; first < lengths.length; first += perRow) {
    const [length, last] = [lengths[first], rows.at(-1)];
    if (length === undefined) break;
    const count = Math.min(perRow, lengths.length - first);
    if (last?.length === length && last.strips === count) {
      rows[rows.length - 1] = { ...last, rows: last.rows + 1 };
    } else rows.push({ rows: 1, strips: count, length });
  }
  return rows;
}

/** All strips are joined into one and cut from it. */
function joinedAcross(input: LongStripsInput, strips: readonly CutStrips[], width: number) {
  const needed = strips.reduce((sum, { cut, count }) => sum + count * cut, 0);
  const count = stripsNeeded(needed, input.fabricWidth, joinCost(input.join, width, input.seamAllowance));
  return count === null ? null : { needed, strips: count };
}

function isTooMuch({ strips }: { readonly strips: number }, width: Length): boolean {
  return strips > MOST_STRIPS || strips * width > MOST_FABRIC;
}

function stripTooWide({ fabricWidth }: LongStripsInput, width: Length): Refusal {
  return {
    code: 'strip-too-wide',
    field: ['stripWidth'],
    says: 'A strip cut {strip} wide is wider than the fabric, which is {fabric} wide.',
    values: { strip: givenLength(width), fabric: givenLength(fabricWidth) },
  };
}

function joinsTakeAll({ fabricWidth, stripWidth }: LongStripsInput): Refusal {
  return {
    code: 'strips-too-short',
    field: ['way'],
    says: 'Strips {strip} wide from fabric {fabric} wide can’t be joined across it: each join takes as much as a strip adds. Cut them along the fabric.',
    values: { strip: givenLength(stripWidth), fabric: givenLength(lengthFromExact(fabricWidth, 'down')) },
  };
}

const TOO_MUCH_FABRIC: Refusal = {
  code: 'too-much-fabric',
  field: ['strips'],
  says: 'That takes more than {most} of fabric. Enter fewer or shorter strips.',
  values: { most: givenLength(MOST_FABRIC) },
};
