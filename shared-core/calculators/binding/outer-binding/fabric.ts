import type { Need } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import { lengthFromExact } from '#core/units/length';
import { fabricNeed } from '#core/calculators/needs';
import { bindingCuts } from '../binding-cuts';
import type { OuterBindingInput } from './input';
import type { OuterBindingDetails } from './work';
import type { BindingWay } from './ways';
import { joinCost } from '../strip-joins';

/** Squares for continuous bias when the edge needs bias, else strips across the fabric. */
export function outerBindingNeeds(input: OuterBindingInput, details: OuterBindingDetails): readonly Need[] {
  const width = { fabricWidth: input.fabricWidth, extraPercent: input.safetyExtra };
  const bias = squaresForBias(details);
  if (bias !== undefined) {
    const squares = { width: bias.width, length: bias.length, count: bias.pieces, mayTurn: true };
    return [fabricNeed('Binding', [squares], width)];
  }
  const { needed } = details;
  const cost = joinCost(input.join, input.stripWidth, input.seamAllowance);
  // A binding shorter than one join is a single strip.
  const strips = { strip: input.stripWidth, needed, cost: needed > cost ? cost : 0 };
  return [{ ...fabricNeed('Binding', [], width), amount: { measure: 'strips', ...strips } }];
}

export function outerBindingCuts(input: OuterBindingInput, details: OuterBindingDetails): PatchList {
  const bias = squaresForBias(details);
  if (bias !== undefined) {
    const [width, length] = [lengthFromExact(bias.width, 'up'), lengthFromExact(bias.length, 'up')];
    return bindingCuts(width, length, bias.pieces);
  }
  return details.isBiasNeeded ? [] : bindingCuts(input.fabricWidth, input.stripWidth, details.strips);
}

/** Undefined when straight strips go around the edge, or when no square of this fabric is large enough. */
export function squaresForBias({ isBiasNeeded, ways }: OuterBindingDetails): BindingWay | undefined {
  return isBiasNeeded ? ways.find(({ way }) => way === 'continuous-bias') : undefined;
}
