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

/** As wide as fabric is woven; the largest square is no larger. */
const WIDEST_FABRIC = lengthFromInches(130);

export const continuousBiasInput = z
  .object({
    needed: neededLengthField(),
    stripWidth: stripWidthField(),
    seamAllowance: seamField('Of the two seams that make the tube.'),
    squareStep: squareStepField(),
    fabricWidth: fabricWidthField(),
    pieceWidth: lengthField({ title: 'A piece you have: width', maximum: WIDEST_FABRIC }),
    pieceLength: lengthField({ title: 'A piece you have: length', maximum: WIDEST_FABRIC }),
  })
  .readonly();
export type ContinuousBiasInput = z.infer<typeof continuousBiasInput>;

export interface ContinuousBiasDetails extends ContinuousBiasPlan {
  readonly side: Length;
  /** What the rule of area, a²/w, would promise of one square, and by what part of one that is too much. */
  readonly areaRule: number;
  readonly areaRuleExcess: number;
  /** Side of the square the rule of area would have you cut for one square, and what that really gives. */
  readonly areaRuleSide: Length;
  readonly areaRuleSideGives: number;
  /** What the largest square from the given piece gives. */
  readonly pieceGives: number;
}

/** The strip goes round the outside of the piece; a yard of the workshop's fabric stands for the piece at hand. */
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
