import { z } from 'zod';
import { lengthField } from './fields';

const width = lengthField({ title: 'Width', help: 'Finished, edge to edge.' });
const length = lengthField({ title: 'Length', help: 'Finished, edge to edge.' });

/**
 * The finished outer edge of a project. Sizes are from edge to edge; a regular polygon is measured across its flats. This schema reads
 * what is saved, also sides that cannot close: they could be saved once, and their project must still open.
 */
export const savedOutlineSchema = z
  .discriminatedUnion('shape', [
    z.object({ shape: z.literal('square'), side: lengthField({ title: 'Side' }) }).readonly(),
    z.object({ shape: z.literal('rectangle'), width, length }).readonly(),
    z
      .object({
        shape: z.literal('rounded'),
        width,
        length,
        cornerRadius: lengthField({
          title: 'Radius of the corners',
          help: 'Of the round that is drawn at each corner, such as half the width of a plate.',
        }),
      })
      .readonly(),
    z.object({ shape: z.literal('circle'), diameter: lengthField({ title: 'Across' }) }).readonly(),
    z.object({ shape: z.literal('ellipse'), width, length }).readonly(),
    z
      .object({ shape: z.literal('hexagon'), acrossFlats: lengthField({ title: 'Across the flats' }) })
      .readonly(),
    z
      .object({ shape: z.literal('octagon'), acrossFlats: lengthField({ title: 'Across the flats' }) })
      .readonly(),
    z
      .object({
        shape: z.literal('sides'),
        sides: z
          .array(lengthField({ title: 'Side' }))
          .min(3)
          .max(60)
          .readonly(),
        width,
        length,
      })
      .readonly(),
  ])
  .meta({ title: 'Shape' });

export type Outline = z.infer<typeof savedOutlineSchema>;
export type OutlineShape = Outline['shape'];

/**
 * Why a list of sides is no outline. side-too-long: one side is as long as all the others together. side-past-size: one side is longer
 * than the diagonal of width and length. too-short-around: the way around cannot touch all four sides of the rectangle of width and
 * length, for which it must be at least twice the diagonal.
 */
export type SidesFault = 'side-too-long' | 'side-past-size' | 'too-short-around';

/** Null if the sides can close, and for every other shape, which always closes. */
export function sidesFault(outline: Outline): SidesFault | null {
  if (outline.shape !== 'sides') return null;
  const around = outline.sides.reduce<number>((sum, side) => sum + side, 0);
  const longest = Math.max(...outline.sides);
  const diagonal = Math.hypot(outline.width, outline.length);
  if (longest >= around - longest) return 'side-too-long';
  if (longest > diagonal) return 'side-past-size';
  return around < 2 * diagonal ? 'too-short-around' : null;
}

const EXPECTED: Readonly<Record<SidesFault, { readonly at: 'sides' | 'width'; readonly expected: string }>> =
  {
    'side-too-long': {
      at: 'sides',
      expected: 'sides that meet all around: the longest one shorter than all the others together',
    },
    'side-past-size': {
      at: 'sides',
      expected: 'sides that fit into width and length: none longer than the diagonal from corner to corner',
    },
    'too-short-around': {
      at: 'width',
      expected: 'a width and length that the sides can reach: together, the sides are too short for them',
    },
  };

/** An outline that is entered: sides must be able to close. */
export const outlineSchema = savedOutlineSchema
  .superRefine((outline, context) => {
    const fault = sidesFault(outline);
    if (fault === null) return;
    const { at, expected } = EXPECTED[fault];
    context.addIssue({ code: 'custom', path: [at], message: expected });
  })
  .meta({ title: 'Shape' });

/** A round hole in the finished center; `diameter` is that of the cut edge, before binding. */
export const holeSchema = z
  .object({ diameter: lengthField({ title: 'Hole across' }) })
  .readonly()
  .meta({ title: 'Hole' });
export type Hole = z.infer<typeof holeSchema>;
