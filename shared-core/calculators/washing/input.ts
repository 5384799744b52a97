import { z } from 'zod';
import { choiceField, lengthField, percentField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { type Length, lengthFromMeters, lengthFromExact } from '#core/units/length';
import { outlineBounds } from '../outline/outline-measures';
import { cutStepField, cutStepOfSettings } from '../shared-fields';

/** A hexagon 10 m across its flats, the largest outline, is 11.5 m from point to point. */
const widest = lengthFromMeters(12);
const side = (title: string, help: string) => lengthField({ title, help, maximum: widest });
const shrinkage = (title: string, help: string) => percentField({ title, help, minimum: 0, maximum: 30 });

const wish = z
  .object({
    shape: choiceField(['rectangle', 'round'], { title: 'Shape' }),
    width: side('Width', 'After the first wash.'),
    length: side('Length', 'After the first wash.'),
  })
  .readonly();

/** Added after answers had been saved without it; they had no wish. */
const laterFields = {
  wish: wish.nullable().default(null).nullable().meta({
    title: 'Size wanted after washing',
    description:
      'Taken instead of width and length above. You can then make the size to start from the size of the project, and its backing, batting and binding follow.',
  }) as unknown as z.ZodType<z.infer<typeof wish> | null, z.infer<typeof wish> | null>,
};

export const washingInput = z
  .object({
    width: side('Width', 'Of the finished quilt. You get both: what it washes to, and how large to make it.'),
    length: side('Length', 'Of the finished quilt.'),
    quiltingPercent: shrinkage(
      'Shrinkage from quilting',
      '2 to 4% is common practice. Dense quilting shrinks it more.',
    ),
    acrossPercent: shrinkage(
      'Shrinks across',
      'In the first wash. 3 to 5% is common practice with cotton batting.',
    ),
    alongPercent: shrinkage('Shrinks along', 'Fabric often shrinks more along the selvage.'),
    ...laterFields,
    sample: z
      .object({
        marked: side(
          'Marked before washing',
          'The side of a square drawn on a quilted sample of the same fabric and batting.',
        ),
        across: side('Across after washing', 'The same square, measured across.'),
        along: side('Along after washing', 'The same square, measured along the selvage.'),
      })
      .readonly()
      .nullable()
      .meta({
        title: 'Washed sample',
        description: 'If you have one, its shrinkage is used instead of the two percentages above.',
      }),
    cutStep: cutStepField(),
  })
  .readonly()
  .refine(({ sample }) => sample === null || isPlausible(sample.marked, sample.across, sample.along), {
    path: ['sample'],
    message: 'a sample between 30% smaller and 30% larger than it was marked',
  });

export type WashingInput = z.infer<typeof washingInput>;

function isPlausible(marked: Length, ...after: readonly Length[]): boolean {
  return after.every((one) => one >= 0.7 * marked && one <= 1.3 * marked);
}

export function washingInputFromProject({ outline, settings }: Measurements): WashingInput {
  const bounds = outlineBounds(outline);
  return {
    width: lengthFromExact(bounds.width, 'up'),
    length: lengthFromExact(bounds.length, 'up'),
    quiltingPercent: 3,
    acrossPercent: settings.washAcrossPercent,
    alongPercent: settings.washAlongPercent,
    wish: null,
    sample: null,
    cutStep: cutStepOfSettings(settings),
  };
}
