import { roundDownTo, roundNearest, roundUpTo } from '#core/units/rounding';
import type { ProjectPriceInput } from './input';

/** An amount in minor units: exact, and rounded once. */
interface Amount {
  readonly exact: number;
  readonly minor: number;
}

export interface ProjectPriceDetails {
  readonly materials: number;
  readonly longarm: number;
  readonly work: Amount;
  /** Materials, quilting and work, each rounded. */
  readonly costs: number;
  readonly overhead: Amount;
  readonly markup: Amount;
  /** Of one before tax, the sum of the rounded lines. */
  readonly beforeTax: number;
  /** What is named as the price of one: with the tax in it or without. */
  readonly price: Amount;
  /** On all of them. */
  readonly tax: Amount;
  /** For all of them, with tax. */
  readonly toPay: number;
  readonly inCash: number;
  readonly deposit: Amount;
  /** What an hour of work earns once materials, quilting, overhead and tax are paid; null without hours. */
  readonly perHour: number | null;
}

/** Less than this is no time that earns anything by the hour. */
const FEWEST_HOURS = 0.01;

export function workOutProjectPrice(input: ProjectPriceInput): ProjectPriceDetails {
  const work = nearest(times(input.hours, input.hourRate));
  const materials = roundNearest(input.materials, 1);
  const longarm = roundNearest(input.longarm, 1);
  const costs = materials + longarm + work.minor;
  const overhead = nearest(percentOf(input.overheadPercent, costs));
  const markup = nearest(percentOf(input.markupPercent, costs + overhead.minor));
  const beforeTax = costs + overhead.minor + markup.minor;
  const price = priceOf(input, beforeTax);
  const tax = taxOf(input, price.minor);
  const all = input.alike * price.minor;
  const toPay = input.taxIs === 'included' ? all : all + tax.minor;
  const kept = (toPay - tax.minor) / input.alike - materials - longarm - overhead.minor;
  return {
    materials,
    longarm,
    work,
    costs,
    overhead,
    markup,
    beforeTax,
    price,
    tax,
    toPay,
    inCash: roundNearest(toPay, wholeCents(input.cashStep)),
    deposit: nearest(percentOf(input.depositPercent, toPay)),
    perHour: input.hours < FEWEST_HOURS ? null : kept / sixDecimals(input.hours),
  };
}

/** Never rounded down, so that it covers what it is made of. */
function priceOf({ taxIs, taxPercent, priceStep }: ProjectPriceInput, beforeTax: number): Amount {
  const exact = taxIs === 'included' ? beforeTax + percentOf(taxPercent, beforeTax) : beforeTax;
  return { exact, minor: roundUpTo(exact, wholeCents(priceStep)) };
}

function taxOf(input: ProjectPriceInput, price: number): Amount {
  const { taxIs, taxOn, taxHalves, alike } = input;
  const taxPercent = sixDecimals(input.taxPercent);
  const taxIn = (sum: number) =>
    taxIs === 'included' ? (sum * taxPercent) / (100 + taxPercent) : percentOf(taxPercent, sum);
  const round = (exact: number) => (taxHalves === 'up' ? roundNearest(exact, 1) : halvesDown(exact));
  const whole = taxIn(alike * price);
  return { exact: whole, minor: taxOn === 'the-whole' ? round(whole) : alike * round(taxIn(price)) };
}

/** Rates may have parts of a cent; coins and prices have none. */
function wholeCents(step: number): number {
  return Math.max(1, roundNearest(step, 1));
}

/** To the nearest, but exactly a half is dropped. */
function halvesDown(exact: number): number {
  return 2 * exact === roundNearest(2 * exact, 1) ? roundDownTo(exact, 1) : roundNearest(exact, 1);
}

/** As numbers are typed: with no more decimals than that, products with whole cents are exact. */
export function sixDecimals(number: number): number {
  return roundNearest(number * 1e6, 1) / 1e6;
}

function times(number: number, amount: number): number {
  return (roundNearest(number * 1e6, 1) * amount) / 1e6;
}

function percentOf(percent: number, amount: number): number {
  return times(percent, amount) / 100;
}

function nearest(exact: number): Amount {
  return { exact, minor: roundNearest(exact, 1) };
}
