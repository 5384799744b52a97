import { describe, expect, it } from 'vitest';
import type { Measurement, SeamCheckInput } from '#core/calculators/seam-check/input';
import { scatterFactors } from '#core/calculators/seam-check/student';
import { seamCheck } from '#core/calculators/seam-check/seam-check';
import { type SeamCheckWork, workOutSeamCheck } from '#core/calculators/seam-check/work';
import { lengthFromExact, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';

const inches = lengthFromInches;
const TRIALS = 2_000;
/** Four standard deviations of the number of hits: √(2,000 · 0.95 · 0.05) is 9.7. */
const HITS = { least: 1_861, most: 1_939 };

/** Numbers from 0 to 1 by a linear congruential generator, the same in every run. */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}

/** Normally scattered by the polar form of two even numbers. */
function scatterFrom(seed: number): (deviation: number) => number {
  const even = numbersFrom(seed);
  return (deviation) => deviation * Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
}

interface Truth {
  readonly seam: number;
  readonly cut: number;
  readonly each: number;
  /** By how much the seam error of the last block is larger than that of the first. */
  readonly growth: number;
  /** By how much more a seam takes at the outer end. */
  readonly taper: number;
}

const TRUTH: Truth = {
  seam: inches(1 / 20),
  cut: inches(-1 / 50),
  each: inches(1 / 24),
  growth: 0,
  taper: 0,
};
const PATCH = inches(3);
const SEAM = inches(1 / 4);

/** Cuts patches one by one and sews them together one by one, as a maker does. */
function sewn(
  patches: number,
  seamError: number,
  { cut, each }: Truth,
  scatter: (deviation: number) => number,
) {
  let width = 0;
  for (let patch = 0; patch < patches; patch += 1) {
    if (patch > 0) width -= 2 * SEAM + seamError;
    width += PATCH + 2 * SEAM + cut + scatter(each);
  }
  return width;
}

function measurement(patches: number, found: number, end: Measurement['end'] = 'along'): Measurement {
  const size = lengthFromExact(patches * PATCH + 2 * SEAM, 'nearest');
  return { size, seams: patches - 1, patches, end, found: lengthFromExact(found, 'nearest') };
}

const start: SeamCheckInput = {
  ...seamCheck.fromProject(SAMPLE_MEASUREMENTS),
  readTo: lengthFromMillimeters(0.1),
  top: { size: lengthFromExact(24 * PATCH + 2 * SEAM, 'nearest'), seams: 23, patches: 24 },
};

/** How many of the trials with these pieces of work hit what the check asks. */
function hits(
  counts: readonly number[],
  truth: Truth,
  isHit: (work: SeamCheckWork, scatter: (deviation: number) => number) => boolean,
  changes: Partial<SeamCheckInput> = {},
): number {
  const scatter = scatterFrom(320);
  let hit = 0;
  for (let trial = 0; trial < TRIALS; trial += 1) {
    const measured = counts.map((patches, order) => {
      const seam = truth.seam + truth.growth * (order / (counts.length - 1) - 1 / 2);
      return measurement(patches, sewn(patches, seam, truth, scatter));
    });
    if (isHit(workOutSeamCheck({ ...start, ...changes, measured }), scatter)) hit += 1;
  }
  return hit;
}

function expectNineteenOfTwenty(count: number): void {
  expect(count).toBeGreaterThanOrEqual(HITS.least);
  expect(count).toBeLessThanOrEqual(HITS.most);
}

const within = (found: { readonly value: number; readonly within: number } | null, truth: number) =>
  found !== null && Math.abs(found.value - truth) <= found.within;

describe('of 2,000 tops sewn patch by patch, 95 in 100 have', () => {
  const few = [1, 1, 3, 3, 3, 3];
  const many = [1, 1, 2, 3, 4, 6, 9, 9, 12, 3, 3, 1];

  it.each([
    ['few', few],
    ['many', many],
  ])('what a seam takes within its ±: %s measurements', (_name, counts) => {
    expectNineteenOfTwenty(hits(counts, TRUTH, ({ seam }) => within(seam, TRUTH.seam)));
  });

  it('what a seam takes within its ± from three blocks, if the cuts are right', () => {
    const truth = { ...TRUTH, cut: 0 };
    const changes = { cutsAreRight: true };
    expectNineteenOfTwenty(hits([3, 3, 3], truth, ({ seam }) => within(seam, truth.seam), changes));
  });

  it.each([
    ['few', few],
    ['many', many],
  ])('what a patch is off by within its ±: %s measurements', (_name, counts) => {
    expectNineteenOfTwenty(hits(counts, TRUTH, ({ cut }) => within(cut, TRUTH.cut)));
  });

  it('the top that is sewn next within its ±', () => {
    const isNext = ({ top }: SeamCheckWork, scatter: (deviation: number) => number) =>
      within(top, sewn(24, TRUTH.seam, TRUTH, scatter));
    expectNineteenOfTwenty(hits(many, TRUTH, isNext));
  });

  it.each([0, inches(1 / 10)])('a growth of %i units from the first to the last within its ±', (growth) => {
    const truth = { ...TRUTH, growth };
    expectNineteenOfTwenty(hits(many, truth, (work) => within(work.growth, growth)));
  });

  it('the scatter of their cuts within its range', () => {
    const isHit = ({ scatter }: SeamCheckWork) => {
      if (scatter === null) return false;
      const { low, high } = scatterFactors(scatter.freedom);
      return low * scatter.each <= TRUTH.each && TRUTH.each <= high * scatter.each;
    };
    expectNineteenOfTwenty(hits(many, TRUTH, isHit));
  });

  it('the width of a ring of eight wedges within its ±', () => {
    const ring = { wedges: 8, leg: inches(26), radius: inches(29) };
    const isNext = ({ top }: SeamCheckWork, scatter: (deviation: number) => number) => {
      let narrower = 0;
      for (let wedge = 0; wedge < 8; wedge += 1) narrower += TRUTH.seam - TRUTH.cut - scatter(TRUTH.each);
      return within(top, inches(58.5) - narrower / 8 / Math.sin(Math.PI / 8));
    };
    expectNineteenOfTwenty(hits(many, TRUTH, isNext, { top: null, ring }));
  });

  it('the angle of the whole ring within its ±', () => {
    const truth = { ...TRUTH, cut: 0, taper: inches(1 / 16) };
    const ring = { wedges: 8, leg: inches(26), radius: inches(29) };
    const scatter = scatterFrom(77);
    const ends = ['inner', 'outer'] as const;
    const takes = { inner: truth.seam - truth.taper / 2, outer: truth.seam + truth.taper / 2 };
    let hit = 0;
    for (let trial = 0; trial < TRIALS; trial += 1) {
      const measured = [2, 2, 2, 2, 4, 4].flatMap((patches) =>
        ends.map((end) => measurement(patches, sewn(patches, takes[end], truth, scatter), end)),
      );
      const { ring: angle } = workOutSeamCheck({ ...start, measured, ring, cutsAreRight: true });
      // The ring itself: eight wedges, each of which scatters at both ends, and eight seams.
      let lost = 8 * truth.taper;
      for (let wedge = 0; wedge < 8; wedge += 1) lost -= scatter(truth.each) - scatter(truth.each);
      if (angle !== null && Math.abs(angle.lacks - lost / ring.leg) <= angle.within) hit += 1;
    }
    expectNineteenOfTwenty(hit);
  });
});

it('finds the error within its ± in at least 94 of 100 tops if the seams scatter as well', () => {
  const scatter = scatterFrom(5);
  let hit = 0;
  for (let trial = 0; trial < TRIALS; trial += 1) {
    const measured = [1, 1, 3, 3, 3, 3, 6, 6].map((patches) => {
      const uneven = Array.from({ length: patches - 1 }, () => scatter(inches(1 / 32)));
      const width = sewn(patches, TRUTH.seam, TRUTH, scatter) - uneven.reduce((sum, one) => sum + one, 0);
      return measurement(patches, width);
    });
    if (within(workOutSeamCheck({ ...start, measured }).seam, TRUTH.seam)) hit += 1;
  }
  expect(hit).toBeGreaterThanOrEqual(0.94 * TRIALS);
});
