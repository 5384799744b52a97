import { roundNearest } from '#core/units/rounding';
import type { Length } from '#core/units/length';
import type { Measurement, SeamCheckInput } from './input';
import { fitColumns, type Fitted, leftBeside } from './least-squares';
import { studentFactor } from './student';
import { type Whole, wholeOf } from './whole';

/** A measurement that has been made. */
export interface Made extends Measurement {
  readonly found: Length;
  /** Its place in the input. */
  readonly at: number;
  /** What it measures less what it should, in 1/320 mm. */
  readonly off: number;
  /** −1/2 at the inner end, 1/2 at the outer end, 0 otherwise. */
  readonly side: number;
  /** From −1/2 for the first to 1/2 for the last. */
  readonly time: number;
}

/** Lengths in 1/320 mm. The truth is within ± `within` of `value` in 95 of 100 cases. */
export interface Estimate {
  readonly value: number;
  readonly within: number;
  /** The averages that the value is the quotient of: what only this error explains, by what is off, and by itself. */
  readonly product: number;
  readonly square: number;
}

interface Prediction {
  readonly value: number;
  readonly within: number;
  /** How much the scatter counts in the errors of seams and patches, squared. */
  readonly spread: number;
}

export interface Scatter {
  /** Of the cut width of one patch: its standard deviation, not less than what the ruler can show. */
  readonly each: number;
  readonly freedom: number;
  /** Student's factor. */
  readonly factor: number;
  /** The root of the weighted sum of squares left over. */
  readonly left: number;
}

export interface RingAngle {
  /** The wedges lack this many radians of a full turn; less than 0 if there are too many. */
  readonly lacks: number;
  readonly within: number;
  /** How much more a seam and a wedge lose at the outer end than at the inner one, in 1/320 mm. */
  readonly taper: number;
  readonly spread: number;
  /** How far the middle rises above the edge, in 1/320 mm; 0 for a ring that does not lack anything. */
  readonly rise: number;
  readonly mostRise: number;
}

export interface SeamCheckWork {
  readonly made: readonly Made[];
  /** How many errors are to be told apart, and how many measurements that takes at least. */
  readonly errors: number;
  readonly needed: number;
  readonly scatter: Scatter | null;
  /** How much each seam takes too much, from both of its sides. Null if it is not known yet. */
  readonly seam: Estimate | null;
  /** How much each patch is cut too wide. Null if it is not known, or not to be told from the seams. */
  readonly cut: Estimate | null;
  /** The seam and the cut look the same in all measurements. */
  readonly isMixed: boolean;
  /** How much more a seam takes at the last than at the first measurement. */
  readonly growth: (Estimate & { readonly factor: number; readonly each: number }) | null;
  /** What is to come of it all. Null if nothing was said of it. */
  readonly whole: Whole | null;
  /** What that will measure. Null if it is not known. */
  readonly top: Prediction | null;
  readonly ring: RingAngle | null;
  /** Sew each seam narrower by this, on each side; less than 0: wider. 0 while no error is certain. */
  readonly move: { readonly exact: number; readonly rounded: number };
}

export function madeOf({ measured }: SeamCheckInput): readonly Made[] {
  const found = measured.flatMap((one, at) => (one.found === null ? [] : [{ ...one, found: one.found, at }]));
  const sides = { along: 0, inner: -1 / 2, outer: 1 / 2 };
  const last = Math.max(1, found.length - 1);
  return found.map((one, order) => ({
    ...one,
    off: one.found - one.size,
    side: sides[one.end],
    time: order / last - 1 / 2,
  }));
}

/**
 * Weighted least squares: off = −(seams · seam error) + (patches · cut error), with further errors for the two ends of a ring. The
 * scatter is that of the cuts, so the square of what may be left grows with the number of patches, and a weight is 1 ÷ patches.
 */
export function workOutSeamCheck(input: SeamCheckInput): SeamCheckWork {
  const made = madeOf(input);
  const columns = columnsOf(made, input);
  const fit = fitOf(made, columns);
  const errors = fit.found.filter(Boolean).length;
  const scatter = scatterOf(fit, input);
  const most = 2 * input.seamAllowance;
  const estimate = (at: number) => useful(estimateOf({ made, columns, fit, scatter }, at), most);
  const seam = estimate(0);
  const isMixed = made.length > 0 && !input.cutsAreRight && fit.found[1] === false;
  const cut = input.cutsAreRight ? null : estimate(1);
  const whole = wholeOf(input);
  const move = seam === null || Math.abs(seam.value) <= seam.within ? 0 : seam.value / 2;
  return {
    made,
    errors,
    needed: Math.max(errors, 1) + 1,
    scatter,
    seam,
    cut,
    isMixed,
    growth: growthOf(input, made, columns),
    whole,
    top: seam === null ? null : predictionOf(input, whole, fit, scatter),
    ring: seam === null ? null : ringOf(input, made, fit, scatter),
    move: { exact: move, rounded: roundNearest(move, input.guideStep) },
  };
}

type Columns = readonly (readonly number[])[];

/** Seams, patches, then both again for the two ends of a ring where both were measured. */
function columnsOf(made: readonly Made[], { cutsAreRight }: SeamCheckInput): Columns {
  const seams = made.map((one) => -one.seams);
  const patches = made.map((one) => one.patches);
  const sided = (column: readonly number[]) => column.map((value, at) => value * (made[at]?.side ?? 0));
  const main = cutsAreRight ? [seams] : [seams, patches];
  return hasBothEnds(made) ? [...main, ...main.map(sided)] : main;
}

function hasBothEnds(made: readonly Made[]): boolean {
  return made.some(({ end }) => end === 'inner') && made.some(({ end }) => end === 'outer');
}

function weightsOf(made: readonly Made[]): readonly number[] {
  return made.map(({ patches }) => 1 / patches);
}

function fitOf(made: readonly Made[], columns: Columns): Fitted {
  return fitColumns(
    columns,
    made.map(({ off }) => off),
    weightsOf(made),
  );
}

/** A ruler read in steps hides less than a step, evenly spread: its standard deviation is a step ÷ √12. */
function scatterOf({ freedom, leftOver }: Fitted, { readTo }: SeamCheckInput): Scatter | null {
  if (freedom < 1) return null;
  const left = Math.sqrt(leftOver);
  const each = Math.max(left / Math.sqrt(freedom), readTo / Math.sqrt(12));
  return { each, freedom, factor: studentFactor(freedom), left };
}

interface Fitting {
  readonly made: readonly Made[];
  readonly columns: Columns;
  readonly fit: Fitted;
  readonly scatter: Scatter | null;
}

/**
 * Null if the column is made of others, or there are too few measurements. A column made of the ones before it stays out: the
 * first of them stands for both.
 */
function estimateOf({ made, columns, fit, scatter }: Fitting, at: number): Estimate | null {
  if (scatter === null) return null;
  const weights = weightsOf(made);
  const others = columns.filter((_, other) => other !== at && fit.found[other] === true);
  const beside = leftBeside(columns[at] ?? [], others, weights);
  const average = (other: readonly number[]) =>
    weights.reduce((sum, weight, row) => sum + weight * (beside[row] ?? 0) * (other[row] ?? 0), 0) /
    made.length;
  const square = average(beside);
  if (square === 0) return null;
  const product = average(made.map(({ off }) => off));
  const within = (scatter.factor * scatter.each) / Math.sqrt(made.length * square);
  return { value: product / square, within, product, square };
}

/** An error that may as well be larger than a whole seam, on both of its sides, is not known. */
function useful<Found extends { readonly value: number; readonly within: number }>(
  found: Found | null,
  most: number,
): Found | null {
  return found === null || found.within > most ? null : found;
}

function growthOf(input: SeamCheckInput, made: readonly Made[], before: Columns): SeamCheckWork['growth'] {
  const columns = [...before, made.map(({ seams, time }) => -seams * time)];
  const fit = fitOf(made, columns);
  const scatter = scatterOf(fit, input);
  const most = 2 * input.seamAllowance;
  const growth = useful(estimateOf({ made, columns, fit, scatter }, before.length), most);
  if (growth === null || scatter === null || Math.abs(growth.value) > most) return null;
  return { ...growth, factor: scatter.factor, each: scatter.each };
}

/** One more row of the columns, with the scatter of its own patches. */
function predictionOf(
  { cutsAreRight }: SeamCheckInput,
  whole: Whole | null,
  fit: Fitted,
  scatter: Scatter | null,
): Prediction | null {
  if (whole === null || scatter === null) return null;
  const { size, seams, patches, own } = whole;
  const { value, spread } = fit.sumOf(cutsAreRight ? [-seams] : [-seams, patches]);
  const within = scatter.factor * scatter.each * Math.sqrt(own + spread);
  return within > size / 2 ? null : { value: size + value, within, spread };
}

/** A right angle too much or too little is beyond any ring that was sewn as planned. */
const MOST_LACKING = Math.PI / 2;

/**
 * Each wedge with its seam is narrower at the outer end by the taper, and so loses an angle of taper ÷ leg. The wedges of the ring
 * scatter as well, at both ends.
 */
function ringOf(
  { ring, cutsAreRight }: SeamCheckInput,
  made: readonly Made[],
  fit: Fitted,
  scatter: Scatter | null,
): RingAngle | null {
  if (ring === null || scatter === null || !hasBothEnds(made)) return null;
  const { value, spread } = fit.sumOf(cutsAreRight ? [0, 1] : [0, 0, 1, -1]);
  if (spread === 0) return null;
  const { wedges, leg, radius } = ring;
  const lacks = (wedges * value) / leg;
  const within = (scatter.factor * scatter.each * Math.sqrt(wedges ** 2 * spread + 2 * wedges)) / leg;
  if (Math.abs(lacks) + within > MOST_LACKING) return null;
  return {
    lacks,
    within,
    taper: value,
    spread,
    rise: riseOf(lacks, radius),
    mostRise: riseOf(lacks + within, radius),
  };
}

/** A ring that lacks an angle closes to a cone, whose edge is as long as before less that angle. */
function riseOf(lacks: number, radius: number): number {
  const share = 1 - Math.max(0, lacks) / (2 * Math.PI);
  return radius * Math.sqrt(1 - share ** 2);
}
