import { z } from 'zod';
import { lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { type Length, lengthFromExact, lengthFromInches } from '#core/units/length';
import { outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { seamField } from '#core/calculators/shared-fields';
import type { BiasStripsLayout } from './work';
import {
  neededLengthField,
  shortestStripField,
  SHORTEST_STRIP,
  squareStepField,
  squareStepOfSettings,
  stripWidthField,
} from '../binding-fields';

export const biasStripsInput = z
  .object({
    pieceWidth: lengthField({ title: 'Piece of fabric: width' }),
    pieceLength: lengthField({ title: 'Piece of fabric: length' }),
    stripWidth: stripWidthField(),
    seamAllowance: seamField('For the joins between strips.'),
    shortestStrip: shortestStripField(),
    needed: neededLengthField(),
    lengthStep: squareStepField(),
  })
  .readonly();
export type BiasStripsInput = z.infer<typeof biasStripsInput>;

export interface BiasStripsDetails extends BiasStripsLayout {
  /** Length of all strips joined, both ends cut square. */
  readonly gives: number;
  readonly isEnough: boolean;
  /** Shortest length of fabric of this width that gives enough strip; null when none does. */
  readonly leastFabricLength: Length | null;
}

/** Starts with half a yard of fabric of the usual width. */
export function biasStripsInputFromProject({ outline, settings }: Measurements): BiasStripsInput {
  return {
    pieceWidth: settings.fabricWidth,
    pieceLength: lengthFromInches(18),
    stripWidth: settings.bindingStripWidth,
    seamAllowance: settings.seamAllowance,
    shortestStrip: SHORTEST_STRIP,
    needed: lengthFromExact(outlinePerimeter(outline) + settings.bindingOverlap, 'up'),
    lengthStep: squareStepOfSettings(settings),
  };
}
