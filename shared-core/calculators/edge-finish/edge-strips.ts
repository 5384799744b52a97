import type { Need } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import { type Length, lengthFromExact } from '#core/units/length';
import {
  biasFabricLength,
  type BiasStripsLayout,
  layBiasStrips,
  slantedJoinCost,
  squaredStripsLength,
} from '#core/calculators/binding/bias-strips/work';
import { biasStripsSteps } from '#core/calculators/binding/bias-strips/steps';
import { LONGEST_BIAS_FABRIC } from '#core/calculators/binding/binding-fields';
import { joinCost, stripsNeeded } from '#core/calculators/binding/strip-joins';
import type { Refusal } from '#core/calculators/calculator';
import type { Step } from '#core/calculators/explanation';
import { fabricNeed } from '#core/calculators/needs';
import { countQuantity, givenLength, lengthUp } from '#core/calculators/quantities';
import { derived, givenTerm, term } from '#core/calculators/working/terms';

/** What a strip around an edge is cut from. */
interface StripFabric {
  readonly grain: 'bias' | 'straight';
  readonly fabricWidth: Length;
  readonly seamAllowance: Length;
  /** Shorter strips are not worth joining. */
  readonly shortestStrip: Length;
  readonly squareStep: Length;
  readonly safetyExtra: number;
}

/** Strips joined on the diagonal into one. Lengths in 1/320 mm. */
export interface EdgeStrips {
  readonly strip: Length;
  readonly needed: number;
  /** Length of fabric of the usable width. */
  readonly fabric: number;
  /** Strips across the fabric, on the straight grain. */
  readonly straight: { readonly strips: number } | null;
  readonly bias: (BiasStripsLayout & { readonly gives: number }) | null;
}

/** More strips than this are a slip in the input. */
const MOST_STRIPS = 1_000;

/** Null where this fabric never gives as much. */
export function cutEdgeStrips(input: StripFabric, strip: Length, needed: number): EdgeStrips | null {
  return input.grain === 'bias' ? cutOnBias(input, strip, needed) : cutStraight(input, strip, needed);
}

function cutOnBias(input: StripFabric, strip: Length, needed: number): EdgeStrips | null {
  const { fabricWidth: width, seamAllowance: seam, shortestStrip: shortest } = input;
  const fabric = { width, strip, seam, shortest };
  const length = biasFabricLength(fabric, { needed, step: input.squareStep, longest: LONGEST_BIAS_FABRIC });
  if (length === null) return null;
  const layout = fewestStrips(layBiasStrips({ ...fabric, length }), { strip, seam, needed });
  const bias = { ...layout, gives: squaredStripsLength(layout, strip) };
  return { strip, needed, fabric: length, straight: null, bias };
}

/** The longest strips of the fabric, as many as reach. The rest of it need not be cut. */
function fewestStrips(
  { strips, ends }: BiasStripsLayout,
  { strip, seam, needed }: Readonly<Record<'strip' | 'seam' | 'needed', number>>,
): BiasStripsLayout {
  const longest = strips.toSorted((one, other) => other.middle - one.middle);
  let joined = 0;
  for (const [index, { middle }] of longest.entries()) {
    joined += index === 0 ? middle : middle - slantedJoinCost(seam);
    if (joined - strip >= needed) return { ends, strips: longest.slice(0, index + 1), joined };
  }
  return { ends, strips: longest, joined };
}

function cutStraight(input: StripFabric, strip: Length, needed: number): EdgeStrips | null {
  const cost = joinCost('diagonal', strip, input.seamAllowance);
  const strips = stripsNeeded(needed, input.fabricWidth, cost);
  if (strips === null || strips > MOST_STRIPS) return null;
  return { strip, needed, fabric: strips * strip, straight: { strips }, bias: null };
}

/** How many strips there are, whatever their grain. */
export function stripsOf({ straight, bias }: EdgeStrips): number {
  return straight?.strips ?? bias?.strips.length ?? 0;
}

/** What to buy: the rectangle of the bias strips, or strips that may also come from what is at hand. */
export function edgeStripsNeed(
  name: string,
  { fabricWidth: width, safetyExtra: extraPercent, seamAllowance }: StripFabric,
  { straight, strip, needed, fabric }: EdgeStrips,
): Need {
  const from = { fabricWidth: width, extraPercent };
  if (straight === null) return fabricNeed(name, [{ width, length: fabric, count: 1, mayTurn: false }], from);
  const cost = joinCost('diagonal', strip, seamAllowance);
  return {
    ...fabricNeed(name, [], from),
    amount: { measure: 'strips', strip, needed, cost: needed > cost ? cost : 0 },
  };
}

export function edgeStripsCuts(
  name: string,
  width: Length,
  { straight, strip, fabric }: EdgeStrips,
): PatchList {
  const length = straight === null ? lengthFromExact(fabric, 'up') : strip;
  return [{ fabric: name, width, length, count: straight?.strips ?? 1, mayTurn: true }];
}

export function edgeStripsSteps(
  { fabricWidth, seamAllowance }: StripFabric,
  { bias, straight, strip, needed, fabric }: EdgeStrips,
): readonly Step[] {
  if (bias !== null) return biasStripsSteps({ stripWidth: strip, seamAllowance }, bias);
  const count = countQuantity(straight?.strips ?? 0, ['strip', 'strips'], 'up');
  return [
    {
      label: 'Strips across the fabric',
      formula: '(N − w) ÷ (U − w), rounded up, at least one',
      terms: [
        term('N', 'strip needed', lengthUp(needed)),
        givenTerm('U', 'usable fabric width', fabricWidth),
        givenTerm('w', 'strip width, which a diagonal join takes', strip),
      ],
      result: count,
      rule: derived('Every strip but the first loses one join.'),
    },
    {
      label: 'Fabric for the strips',
      formula: 'n · w',
      terms: [term('n', 'strips', count), givenTerm('w', 'strip width', strip)],
      result: lengthUp(fabric),
      rule: derived('They lie one below the other.'),
    },
  ];
}

export function noFabricForStrips({ fabricWidth }: Pick<StripFabric, 'fabricWidth'>, strip: Length): Refusal {
  return {
    code: 'no-fabric',
    field: ['fabricWidth'],
    says: 'Strips {strip} wide from fabric {width} wide don’t reach around this edge, however much of it you cut.',
    values: { strip: givenLength(strip), width: givenLength(fabricWidth) },
  };
}
