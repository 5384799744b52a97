import { z } from 'zod';
import { choiceField, countField, lengthField, textField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { overlapField } from '#core/calculators/binding/binding-fields';
import {
  fabricWidthField,
  seamField,
  yardageStepField,
  yardageStepOfSettings,
} from '#core/calculators/shared-fields';

const fabric = textField({ title: 'Fabric', minimum: 1, maximum: 120, isFabricName: true });
const startingSide = lengthFromInches(5);

const patternPatchSchema = z
  .object({
    fabric,
    cutAs: choiceField(['patch', 'cut-once', 'cut-twice', 'strip'], {
      title: 'Cut as',
      help: 'A square or rectangle; cut once or twice on the diagonal into triangles; or a strip across the whole fabric.',
    }),
    width: lengthField({ title: 'Width', help: 'Cut size, seam allowance included.' }),
    length: lengthField({ title: 'Length', help: 'Of no matter for a strip across the fabric.' }),
    count: countField({ title: 'How many to cut', minimum: 1, maximum: 100_000 }),
  })
  .readonly()
  .meta({
    title: 'Patches',
    examples: [{ fabric: 'Background', cutAs: 'patch', width: startingSide, length: startingSide, count: 1 }],
  });
export type PatternPatch = z.infer<typeof patternPatchSchema>;

const statedFabric = z
  .object({ fabric, length: lengthField({ title: 'It asks for', help: 'Along the fabric.' }) })
  .readonly()
  .meta({ title: 'Fabric', examples: [{ fabric: 'Background', length: lengthFromInches(36) }] });

const bindingStrips = z
  .object({
    width: lengthField({ title: 'Strip width' }),
    count: countField({ title: 'How many strips', minimum: 1, maximum: 100 }),
  })
  .readonly()
  .meta({ title: 'Strips', examples: [{ width: lengthFromInches(2.25), count: 1 }] });

const statedSize = z
  .object({ width: lengthField({ title: 'Width' }), length: lengthField({ title: 'Length' }) })
  .readonly()
  .meta({ title: 'Size', examples: [{ width: lengthFromInches(60), length: lengthFromInches(60) }] });

export const patternListInput = z
  .object({
    patches: z.array(patternPatchSchema).min(1).max(300).readonly().meta({
      title: 'Patches of the pattern',
      description: 'As its cutting list has them, strips that are cut up left out.',
    }),
    stated: z.array(statedFabric).max(60).readonly().meta({
      title: 'Fabric the pattern asks for',
      description: 'To be checked against its own patches.',
    }),
    bindingStrips: z.array(bindingStrips).max(1).readonly().meta({
      title: 'Binding strips of the pattern',
      description:
        'Across the fabric. Checked against your outline; their fabric is asked for by the binding.',
    }),
    finishedSize: z.array(statedSize).max(1).readonly().meta({
      title: 'Finished size of the pattern',
      description: 'Checked against your outline.',
    }),
    outline: outlineSchema,
    bindingOverlap: overlapField(),
    seamAllowance: seamField(),
    fabricWidth: fabricWidthField(),
    yardageStep: yardageStepField(),
  })
  .readonly();
export type PatternListInput = z.infer<typeof patternListInput>;

/** Starts with one square, until a cutting list is read. */
export function patternListFromProject({ outline, settings }: Measurements): PatternListInput {
  const side = settings.unitSystem === 'inch' ? startingSide : lengthFromMillimeters(125);
  return {
    patches: [{ fabric: 'Background', cutAs: 'patch', width: side, length: side, count: 1 }],
    stated: [],
    bindingStrips: [],
    finishedSize: [],
    outline,
    bindingOverlap: settings.bindingOverlap,
    seamAllowance: settings.seamAllowance,
    fabricWidth: settings.fabricWidth,
    yardageStep: yardageStepOfSettings(settings),
  };
}
