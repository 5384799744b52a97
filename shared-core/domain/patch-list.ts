import { z } from 'zod';
import { countField, flagField, lengthField, textField } from './fields';
import { pieceWidthSchema } from './stash';

/**
 * Rectangles of one size to cut from one fabric. `width` runs across the fabric (from selvage to selvage) and `length` along
 * it; a patch that may turn can also be cut the other way. Shapes cut from a strip (diamonds, hexagons) are listed as the
 * strips they need.
 */
const patchToCutSchema = z
  .object({
    fabric: textField({ title: 'Fabric', minimum: 1, maximum: 120 }),
    width: pieceWidthSchema,
    length: lengthField({ title: 'Length', help: 'Along the selvage; all sizes are cut sizes.' }),
    count: countField({ title: 'How many', minimum: 1, maximum: 1_000_000 }),
    mayTurn: flagField({ title: 'Can be turned', help: 'It has no print that must stay upright.' }),
  })
  .readonly();
export type PatchToCut = z.infer<typeof patchToCutSchema>;

export const patchListSchema = z.array(patchToCutSchema).max(500).readonly();
export type PatchList = z.infer<typeof patchListSchema>;
