import { z } from 'zod';
import { choiceField, lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { lengthFromInches, lengthFromMeters, lengthFromMillimeters } from '#core/units/length';
import { machineThreadInputFromProject, threadFields } from '../machine-thread/input';

export const quiltingThreadInput = z
  .object({
    outline: outlineSchema,
    density: choiceField(['light', 'medium', 'heavy', 'by-spacing'], {
      title: 'Density of the quilting',
      help: 'Light, medium and heavy are amounts in print. By spacing it is worked out from your own lines.',
    }),
    spacing: lengthField({
      title: 'From line to line',
      help: 'How far your lines of quilting lie apart, on average. A grid has lines both ways: enter half of its spacing.',
      minimum: lengthFromInches(1 / 16),
      maximum: lengthFromInches(24),
    }),
    ...threadFields('All layers of the quilt, pressed together.'),
    bobbins: choiceField(['wound-from-the-cone', 'bought-wound'], { title: 'Bobbins' }),
    coneHolds: lengthField({
      title: 'One cone or spool holds',
      help: 'As its label says. 3,000 yd or 2,750 m is a usual cone for a longarm (from memory).',
      minimum: lengthFromMeters(1),
      maximum: lengthFromMeters(10_000),
    }),
  })
  .readonly();

export type QuiltingThreadInput = z.infer<typeof quiltingThreadInput>;

export function quiltingThreadFromProject(measurements: Measurements): QuiltingThreadInput {
  const { outline, settings } = measurements;
  const isInch = settings.unitSystem === 'inch';
  const { seamLength: _, ...thread } = machineThreadInputFromProject(measurements);
  return {
    outline,
    density: 'medium',
    spacing: isInch ? lengthFromInches(1 / 2) : lengthFromMillimeters(12),
    ...thread,
    bobbins: 'wound-from-the-cone',
    coneHolds: isInch ? lengthFromInches(3_000 * 36) : lengthFromMeters(2_750),
  };
}
