import { z } from 'zod';
import { type Result, success } from '#core/result';
import type { Refusal } from '#core/calculators/calculator';
import type { Note } from '#core/calculators/explanation';
import { lengthNearest } from '#core/calculators/quantities';
import { derived, givenTerm } from '#core/calculators/working/terms';
import { closureOf } from '../closure';
import { fitLengths, type LengthModel } from '../fit-lengths';
import { type Found, orRefused } from '../found';
import { measuredField, type Whole } from './measure-fields';
import { unseenNote } from './unseen';

const diameter = (pin: string) =>
  measuredField(
    `Across from pin ${pin}`,
    pin === 'A' ? 'Hold the tape at the pin and swing it across until it shows the most.' : undefined,
  );

export const diameters = z
  .object({
    way: z.literal('diameters'),
    fromA: diameter('A'),
    fromB: diameter('B'),
    fromC: diameter('C'),
    fromD: diameter('D'),
  })
  .readonly();
export type Diameters = z.infer<typeof diameters>;

export function startingDiameters(across: number, whole: Whole): Diameters {
  const fromA = whole(across);
  return { way: 'diameters', fromA, fromB: fromA, fromC: fromA, fromD: fromA };
}

const NAMES = ['fromA', 'fromB', 'fromC', 'fromD'] as const;
const PINS = ['A', 'B', 'C', 'D'] as const;

/** Every diameter of a round piece is the same length. */
const MODEL: LengthModel = {
  lengthsAt: ([across = 0]) => NAMES.map(() => across),
  slopesAt: () => NAMES.map(() => [{ unknown: 0, slope: 1 }]),
};

/** The center is half a diameter from its pin; each pin keeps its own, so that a piece slightly out of round has its middle there too. */
export function findByDiameters(asked: Diameters, accuracy: number): Result<Found, Refusal> {
  const measured = NAMES.map((name) => asked[name]);
  const fit = fitLengths(MODEL, measured, [measured[0] ?? 0]);
  const [across = 0] = fit ?? [];
  const isRound = measured.every((one) => Math.abs(one - across) < MOST_OFF * across);
  const unknowns = orRefused(isRound ? fit : null, ['fromA'], NOT_ROUND);
  if (!unknowns.ok) return unknowns;
  const center = { x: across / 2, y: across / 2 };
  const ends = PINS.map((pin, index) => {
    const angle = ((index - 2) * Math.PI) / 4;
    const reach = (sign: number) => ({
      x: center.x + (sign * across * Math.cos(angle)) / 2,
      y: center.y + (sign * across * Math.sin(angle)) / 2,
    });
    return { name: pin, point: reach(1), opposite: reach(-1) };
  });
  return success({
    lengths: NAMES.map((name, index) => ({
      words: `across from pin ${PINS[index] ?? ''}`,
      path: [name],
      measured: asked[name],
    })),
    fitted: MODEL.lengthsAt(unknowns.value),
    closure: closureOf({ model: MODEL, measured, unknowns: unknowns.value }, accuracy),
    arcs: PINS.map((pin, index) => ({ from: `pin ${pin}`, distance: (measured[index] ?? 0) / 2 })),
    centers: [],
    figures: [{ label: 'Across, on average', quantity: lengthNearest(across) }],
    tables: [],
    working: [
      {
        label: 'From pin A to the center',
        formula: 'd ÷ 2',
        terms: [givenTerm('d', 'across from pin A', asked.fromA)],
        result: lengthNearest(asked.fromA / 2),
        rule: derived('The middle of every diameter is the center.'),
      },
    ],
    notes: [HOW_TO, UNSEEN],
    picture: {
      edge: { kind: 'circle', center, radius: across / 2 },
      lines: ends.map(({ point, opposite }) => [point, opposite] as const),
      named: ends,
      center,
      motif: null,
    },
  });
}

/** As a share of the diameter: a piece farther from round than this is another shape. */
const MOST_OFF = 0.1;

const NOT_ROUND =
  'These diameters differ too much for a round piece. Measure them again. If the piece is oval, fold it in halves instead.';

const HOW_TO: Note = {
  kind: 'tip',
  says: 'Put pins A, B, C and D on the edge, each about an eighth of the way round from the last. Chalk an arc from each pin: they cross in a small patch, and the center is its middle.',
  values: {},
};

const UNSEEN = unseenNote(
  'none. It cannot tell a wrong length from a piece that is not round: if one stays different when you measure again, the piece is oval there.',
);
