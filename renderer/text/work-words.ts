import type { WorkDone, WorkMeasure } from '#core/domain/clock';
import type { Learned } from '#core/learned/learned';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits, UNITS_PER_INCH } from '#core/units/length';
import { roundNearest } from '#core/units/rounding';
import type { LengthDisplay } from '#core/units/unit-system';

/** What can be counted when work is logged, as a choice. */
export const MEASURE_WORDS: Readonly<Record<WorkMeasure, string>> = {
  blocks: 'Blocks sewn',
  hand: 'Sewn by hand',
  cuts: 'Cuts made',
};

/** `24 blocks`, `1 cut`, `38 in by hand`. */
export function doneWords({ what, amount }: WorkDone, display: LengthDisplay): string {
  if (what === 'hand') return `${formatLength(lengthFromUnits(amount), display)} by hand`;
  const one = what === 'blocks' ? 'block' : 'cut';
  return amount === 1 ? `1 ${one}` : `${String(amount)} ${one}s`;
}

/** A rate with its spread and count: `12 min a block, mostly 10 to 15, from 5 times`. */
export function rateWords(what: WorkMeasure, learned: Learned, display: LengthDisplay): string {
  const times = learned.count === 1 ? 'once' : `${String(learned.count)} times`;
  if (what === 'hand') {
    const anHour = (minutes: number) =>
      formatLength(lengthFromUnits(roundNearest((60 / minutes) * UNITS_PER_INCH, 1)), display);
    const spread = learned.count === 1 ? '' : `, mostly ${anHour(learned.high)} to ${anHour(learned.low)}`;
    return `${anHour(learned.median)} by hand in an hour${spread}, counted ${times}`;
  }
  const minutes = (value: number) => String(roundNearest(value, 0.1)).replace(/(\.\d).*$/, '$1');
  const spread = learned.count === 1 ? '' : `, mostly ${minutes(learned.low)} to ${minutes(learned.high)}`;
  return `${minutes(learned.median)} min a ${what === 'blocks' ? 'block' : 'cut'}${spread}, counted ${times}`;
}
