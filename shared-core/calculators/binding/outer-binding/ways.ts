import { biasFabricLength, biasSquareSide, layBiasStrips, squaredStripsLength } from '../bias-strips/work';
import { LONGEST_BIAS_FABRIC } from '../binding-fields';
import { planContinuousBias } from '../continuous-bias/work';
import type { OuterBindingInput } from './input';

/** One way to cut the strip from fabric. Lengths and areas are doubles in 1/320 mm. */
export interface BindingWay {
  readonly way: 'straight-strips' | 'bias-strips' | 'bias-strips-of-square' | 'continuous-bias';
  /** Pieces of fabric of this size; more than one only for squares. */
  readonly pieces: number;
  readonly width: number;
  readonly length: number;
  /** Cuts after the fabric is cut to this size, and seams without the closing join. */
  readonly cuts: number;
  readonly seams: number;
  readonly gives: number;
  /** Strip left over, and the area of fabric that is not strip. */
  readonly spare: number;
  readonly scraps: number;
}

interface StraightStrips {
  readonly needed: number;
  readonly strips: number;
  readonly given: number;
}

/** All ways that give enough strip. */
export function bindingWays(input: OuterBindingInput, straight: StraightStrips): readonly BindingWay[] {
  const { needed, strips, given } = straight;
  const ways: readonly (Omit<BindingWay, 'spare' | 'scraps'> | null)[] = [
    {
      way: 'straight-strips',
      pieces: 1,
      width: input.fabricWidth,
      length: strips * input.stripWidth,
      cuts: strips + 1,
      seams: strips - 1,
      gives: given,
    },
    biasStripsWay(input, needed),
    biasSquareWay(input, needed),
    continuousWay(input, needed),
  ];
  return ways
    .filter((way) => way !== null)
    .map((way) => ({
      ...way,
      spare: way.gives - needed,
      scraps: way.pieces * way.width * way.length - way.gives * input.stripWidth,
    }));
}

function biasFabric({ stripWidth, seamAllowance, shortestStrip }: OuterBindingInput) {
  return { strip: stripWidth, seam: seamAllowance, shortest: shortestStrip };
}

function biasStripsWay(
  input: OuterBindingInput,
  needed: number,
): Omit<BindingWay, 'spare' | 'scraps'> | null {
  const fabric = { ...biasFabric(input), width: input.fabricWidth };
  const length = biasFabricLength(fabric, { needed, step: input.squareStep, longest: LONGEST_BIAS_FABRIC });
  if (length === null) return null;
  return { way: 'bias-strips', width: input.fabricWidth, length, ...cutFrom({ ...fabric, length }) };
}

function biasSquareWay(
  input: OuterBindingInput,
  needed: number,
): Omit<BindingWay, 'spare' | 'scraps'> | null {
  const fabric = biasFabric(input);
  const side = biasSquareSide(fabric, { needed, step: input.squareStep, largest: input.fabricWidth });
  if (side === null) return null;
  return {
    way: 'bias-strips-of-square',
    width: side,
    length: side,
    ...cutFrom({ ...fabric, width: side, length: side }),
  };
}

function cutFrom(fabric: Parameters<typeof layBiasStrips>[0]) {
  const layout = layBiasStrips(fabric);
  return {
    pieces: 1,
    cuts: layout.strips.length + 1,
    seams: layout.strips.length - 1,
    gives: squaredStripsLength(layout, fabric.strip),
  };
}

function continuousWay(
  input: OuterBindingInput,
  needed: number,
): Omit<BindingWay, 'spare' | 'scraps'> | null {
  const plan = planContinuousBias({
    needed,
    strip: input.stripWidth,
    seam: input.seamAllowance,
    squareStep: input.squareStep,
    largest: input.fabricWidth,
  });
  if (plan === null) return null;
  return {
    way: 'continuous-bias',
    pieces: plan.squares,
    width: plan.side,
    length: plan.side,
    cuts: 2 * plan.squares,
    seams: 2 * plan.squares + plan.squares - 1,
    gives: plan.gives,
  };
}
