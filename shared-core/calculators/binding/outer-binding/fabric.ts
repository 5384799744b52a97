import type { Need } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import { lengthFromExact } from '#core/units/length';
import { fabricNeed } from '#core/calculators/needs';
import { bindingCuts } from '../binding-cuts';
import type { OuterBindingInput } from './input';
import type { OuterBindingDetails } from './work';
import { joinCost } from '../strip-joins';

/** What the bias is cut from when the edge needs bias, else strips across the fabric. */
export function outerBindingNeeds(input: OuterBindingInput, details: OuterBindingDetails): readonly Need[] {
  const width = { fabricWidth: input.fabricWidth, extraPercent: input.safetyExtra };
  const { biasWay: bias } = details;
  if (bias !== null) {
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
  const { biasWay: bias } = details;
  if (bias !== null) {
    const [width, length] = [lengthFromExact(bias.width, 'up'), lengthFromExact(bias.length, 'up')];
    return bindingCuts('Binding', width, length, bias.pieces);
  }
  return bindingCuts('Binding', input.fabricWidth, input.stripWidth, details.strips);
}
