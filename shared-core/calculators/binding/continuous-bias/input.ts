import { z } from 'zod';
import { lengthField } from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import {
  type Length,
  lengthFromExact,
  lengthFromInches,
  lengthFromUnits,
  UNITS_PER_YARD,
} from '#core/units/length';
import { outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { fabricWidthField, seamField } from '#core/calculators/shared-fields';
import { neededLengthField, squareStepField, squareStepOfSettings, stripWidthField } from '../binding-fields';
import type { ContinuousBiasPlan } from './work';

/** No fabric is wider, so no square is larger. */
const WIDEST_FABRIC = lengthFromInches(130);

export const continuousBiasInput = z
  .object({
    needed: neededLengthField(),
    stripWidth: stripWidthField(),
    seamAllowance: seamField(
      'For both seams: the one that joins the halves and the one that makes the tube.',
    ),
    squareStep: squareStepField(),
    fabricWidth: fabricWidthField(),
    pieceWidth: lengthField({ title: 'A piece of fabric you have: width', maximum: WIDEST_FABRIC }),
    pieceLength: lengthField({ title: 'A piece of fabric you have: length', maximum: WIDEST_FABRIC }),
  })
  .readonly();
export type ContinuousBiasInput = z.infer<typeof continuousBiasInput>;

export interface ContinuousBiasDetails extends ContinuousBiasPlan {
  readonly side: Length;
  /** What the rule of area, a²/w, promises for one square, and by what fraction that is too much. */
  readonly areaRule: number;
  readonly areaRuleExcess: number;
  /** Side of the square that the rule of area asks for, and the strip it really gives. */
  readonly areaRuleSide: Length;
  readonly areaRuleSideGives: number;
  /** What the largest square from the maker's own piece of fabric gives. */
  readonly pieceGives: number;
}

/** Starts with the strip for the outer edge, and with a yard of fabric of the usual width. */
export function continuousBiasInputFromProject({ outline, settings }: Measurements): ContinuousBiasInput {
  return {
    needed: lengthFromExact(outlinePerimeter(outline) + settings.bindingOverlap, 'up'),
    stripWidth: settings.bindingStripWidth,
    seamAllowance: settings.seamAllowance,
    squareStep: squareStepOfSettings(settings),
    fabricWidth: settings.fabricWidth,
    pieceWidth: settings.fabricWidth,
    pieceLength: lengthFromUnits(UNITS_PER_YARD),
  };
}
