import { z } from 'zod';
import { lengthField } from './fields';

const width = lengthField({ title: 'Width', help: 'Finished, edge to edge.' });
const length = lengthField({ title: 'Length', help: 'Finished, edge to edge.' });

/** The finished outer edge of a project. Sizes are from edge to edge; a regular polygon is measured across its flats. */
export const outlineSchema = z
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

export type Outline = z.infer<typeof outlineSchema>;
export type OutlineShape = Outline['shape'];

/** A round hole in the finished center; `diameter` is that of the cut edge, before binding. */
export const holeSchema = z
  .object({ diameter: lengthField({ title: 'Hole across' }) })
  .readonly()
  .meta({ title: 'Hole' });
export type Hole = z.infer<typeof holeSchema>;
