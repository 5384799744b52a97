import type { Need } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import { lengthFromExact } from '#core/units/length';
import { fabricNeed } from '../needs';
import { bindingCuts } from './binding-cuts';
import type { OuterBindingInput } from './outer-binding-input';
import type { OuterBindingDetails } from './outer-binding-plan';
import type { BindingWay } from './outer-binding-ways';
import { joinCost } from './strip-joins';

/** Squares for continuous bias where the edge needs bias, else strips across the fabric. */
export function outerBindingNeeds(asked: OuterBindingInput, details: OuterBindingDetails): readonly Need[] {
  const width = { fabricWidth: asked.fabricWidth, extraPercent: asked.safetyExtra };
  const bias = squaresForBias(details);
  if (bias !== undefined) {
    const squares = { width: bias.width, length: bias.length, count: bias.pieces, mayTurn: true };
    return [fabricNeed('Binding', [squares], width)];
  }
  const { needed } = details;
  const cost = joinCost(asked.join, asked.stripWidth, asked.seamAllowance);
  // A binding shorter than a join is one strip without any.
  const strips = { strip: asked.stripWidth, needed, cost: needed > cost ? cost : 0 };
  return [{ ...fabricNeed('Binding', [], width), amount: { measure: 'strips', ...strips } }];
}

export function outerBindingCuts(asked: OuterBindingInput, details: OuterBindingDetails): PatchList {
  const bias = squaresForBias(details);
  if (bias !== undefined) {
    const [width, length] = [lengthFromExact(bias.width, 'up'), lengthFromExact(bias.length, 'up')];
    return bindingCuts(width, length, bias.pieces);
  }
  return details.isBiasNeeded ? [] : bindingCuts(asked.fabricWidth, asked.stripWidth, details.strips);
}

/** Undefined where straight strips go round the edge, or where no square of this fabric is large enough. */
export function squaresForBias({ isBiasNeeded, ways }: OuterBindingDetails): BindingWay | undefined {
  return isBiasNeeded ? ways.find(({ way }) => way === 'continuous-bias') : undefined;
}
