import { z } from 'zod';
import { failure, type Result, success } from '#core/result';
import { type Length, lengthFromMeters, lengthTimes } from '#core/units/length';
import type { Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import { fineLength, givenLength, lengthNearest, numberQuantity } from '#core/calculators/quantities';
import { derived, givenTerm } from '#core/calculators/working/terms';
import { closureOf } from '../closure';
import { fitLengths, type LengthModel, uncertaintyOf } from '../fit-lengths';
import { type Found, orRefused } from '../found';
import { measuredField, type Whole } from './measure-fields';
import { unseenNote } from './unseen';

const chord = z
  .object({
    chord: measuredField(
      'Straight across, from edge to edge',
      'Lay a ruler or stretch a tape over part of the piece; both ends are on the edge.',
    ),
    height: measuredField('From its middle out to the edge', 'At right angles to the ruler.'),
  })
  .readonly();

export const chords = z
  .object({
    way: z.literal('chords'),
    chords: z
      .array(chord.meta({ title: 'Chord' }))
      .min(2)
      .max(6)
      .readonly()
      .meta({ title: 'Chords, spread around the edge' }),
  })
  .readonly();
export type Chords = z.infer<typeof chords>;

/** Three chords of a circle, each as long as three quarters of the way across. */
export function startingChords(across: number, whole: Whole): Chords {
  const length = whole((3 * across) / 4);
  const height = whole((across - Math.sqrt(across ** 2 - length ** 2)) / 2);
  return { way: 'chords', chords: Array.from({ length: 3 }, () => ({ chord: length, height })) };
}

/** The radius of a circle from a chord and the height over its middle: published as (4h² + c²) ÷ 8h. */
export function radiusOfChord(length: number, height: number): number {
  return (4 * height ** 2 + length ** 2) / (8 * height);
}

/** The unknowns are the radius and, for each chord, half the angle it spans; the lengths are chord and height in turn. */
const MODEL: LengthModel = {
  lengthsAt: ([radius = 0, ...halves]) =>
    halves.flatMap((half) => [2 * radius * Math.sin(half), radius * (1 - Math.cos(half))]),
  slopesAt: ([radius = 0, ...halves]) =>
    halves.flatMap((half, index) => [
      [
        { unknown: 0, slope: 2 * Math.sin(half) },
        { unknown: index + 1, slope: 2 * radius * Math.cos(half) },
      ],
      [
        { unknown: 0, slope: 1 - Math.cos(half) },
        { unknown: index + 1, slope: radius * Math.sin(half) },
      ],
    ]),
};

export function findByChords(asked: Chords, accuracy: Length): Result<Found, Refusal> {
  const measured = asked.chords.flatMap((one) => [one.chord, one.height]);
  const radii = asked.chords.map((one) => radiusOfChord(one.chord, one.height));
  const flat = radii.findIndex((radius) => radius > LARGEST_RADIUS);
  if (flat >= 0) return failure(tooFlat(flat));
  const halves = asked.chords.map((one) => 2 * Math.atan((2 * one.height) / one.chord));
  const start = radii.reduce((sum, radius) => sum + radius / radii.length, 0);
  const fit = fitLengths(MODEL, measured, [start, ...halves]);
  const isClose =
    fit !== null &&
    MODEL.lengthsAt(fit).every(
      (length, index) => Math.abs(length - (measured[index] ?? 0)) < MOST_CHANGE * Math.max(...measured),
    );
  const isRound = isClose && fit.slice(1).every((half) => half > 0 && half <= WIDEST);
  const unknowns = orRefused(isRound ? fit : null, ['chords', 0, 'height'], NO_SUCH_CIRCLE);
  if (!unknowns.ok) return unknowns;
  const [radius = 0] = unknowns.value;
  const sure = uncertaintyOf(MODEL, unknowns.value, { unknown: 0, accuracy }) ?? 0;
  return success({
    lengths: asked.chords.flatMap((one, index) => [
      { words: `chord ${index + 1}`, path: ['chords', index, 'chord'], measured: one.chord },
      { words: `height of chord ${index + 1}`, path: ['chords', index, 'height'], measured: one.height },
    ]),
    fitted: MODEL.lengthsAt(unknowns.value),
    closure: closureOf({ model: MODEL, measured, unknowns: unknowns.value }, accuracy),
    arcs: [{ from: 'both ends of every chord', distance: radius }],
    centers: [],
    figures: [{ label: 'Small errors may put it off by', quantity: fineLength(sure, 'up') }],
    tables: [],
    working: asked.chords.map(({ chord: length, height }, index) => ({
      label: `Radius by chord ${index + 1}`,
      formula: '(4h² + c²) ÷ (8h)',
      terms: [givenTerm('c', 'chord', length), givenTerm('h', 'height over its middle', height)],
      result: lengthNearest(radii[index] ?? 0),
      rule: derived(
        'Half the chord, the height and the radius make a right triangle. The radius used is the one that fits all chords best.',
      ),
    })),
    notes: [...flatNotes(sure, accuracy), HOW_TO, UNSEEN],
    picture: pictureOf(radius, unknowns.value.slice(1)),
  });
}

/** As a share of the longest length: one that has to change by more is a mistake, not a measurement. */
const MOST_CHANGE = 0.1;

/** Half the angle of a chord that lies a little past the center; from farther on, its height would be on the other side. */
const WIDEST = (100 * Math.PI) / 180;

/** The chords spread evenly around the edge, the first at the top. */
function pictureOf(radius: number, halves: readonly number[]): Found['picture'] {
  const center = { x: radius, y: radius };
  const ends = halves.map((half, index) => {
    const middle = (2 * Math.PI * index) / halves.length - Math.PI / 2;
    const at = (angle: number) => ({
      x: center.x + radius * Math.cos(angle),
      y: center.y + radius * Math.sin(angle),
    });
    return [at(middle - half), at(middle + half)] as const;
  });
  return {
    edge: { kind: 'circle', center, radius },
    lines: ends,
    named: ends.flatMap(([from, to], index) => [
      { name: String(index + 1), point: from },
      { name: String(index + 1), point: to },
    ]),
    center,
    motif: null,
  };
}

/** How many times the accuracy the radius may be off by before it is said. */
const SURE_ENOUGH = 2;

function flatNotes(sure: number, accuracy: Length): readonly Note[] {
  if (sure <= SURE_ENOUGH * accuracy) return [];
  return [
    {
      kind: 'warning',
      says: 'Your chords are short for this edge: being off by {accuracy} in each length can put the center off by {sure}. Measure longer chords, about three quarters of the way across, or measure four diameters.',
      values: { accuracy: givenLength(accuracy), sure: fineLength(sure, 'up') },
    },
  ];
}

/** No piece is wider than twice this. */
const LARGEST_RADIUS = lengthFromMeters(10);

function tooFlat(index: number): Refusal {
  return {
    code: 'edge-nearly-straight',
    field: ['measured', 'chords', index, 'height'],
    says: 'With chord {number} the edge would be nearly straight, of a piece more than {most} across. Measure its height again, or take a longer chord.',
    values: { number: numberQuantity(index + 1), most: givenLength(lengthTimes(LARGEST_RADIUS, 2)) },
  };
}

const NO_SUCH_CIRCLE =
  'No round edge has these chords and heights, so one of them is wrong. Measure the heights again, at right angles from the middle of each chord.';

const HOW_TO: Note = {
  kind: 'tip',
  says: 'Mark both ends of each chord with a pin. The arcs from all the pins, all of one radius, cross at the center. Lay the piece flat and do not pull the edge.',
  values: {},
};

const UNSEEN = unseenNote(
  'fewer than 1 with chords of three quarters of the way across, and about 33 with chords of less than half.',
);
