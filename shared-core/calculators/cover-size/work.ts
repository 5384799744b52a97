import type { Outline } from '#core/domain/outline';
import type { Length } from '#core/units/length';
import { lengthUp } from '../quantities';
import { outlineBounds } from '../outline/outline-measures';
import type { CoverSizeInput } from './input';

/** A size once it lies in place, and the size to make so that it washes to that. Lengths in 1/320 mm. */
export interface CoverSize {
  readonly width: Length;
  readonly length: Length;
  readonly makeWidth: Length;
  readonly makeLength: Length;
  /** Of the top before it is quilted, finished, without its seam allowance. */
  readonly topWidth: Length;
  readonly topLength: Length;
  /** Of the shrinkage that the width and the length are made larger for. */
  readonly percents: readonly [across: number, along: number];
  /** How far a square corner hangs below the top; null for a round cover. */
  readonly cornerDrop: number | null;
  readonly outline: Outline;
}

/** What a cover goes over. */
export type CoveredThing = NonNullable<CoverSizeInput['over']>;

type Hanging = Omit<CoverSizeInput, 'over' | 'outline' | 'mattresses'>;

export function workOutCoverSize(input: Hanging, over: CoveredThing): CoverSize {
  const { drop, cutStep, quiltingPercent } = input;
  const percents = percentsOf(input, over);
  const [width, length] = sidesOf(input, over);
  const make = (side: number, percent: number) => lengthUp(side / (1 - percent / 100), cutStep).rounded;
  const [makeWidth, makeLength] = [make(width, percents[0]), make(length, percents[1])];
  return {
    width,
    length,
    makeWidth,
    makeLength,
    topWidth: make(makeWidth, quiltingPercent),
    topLength: make(makeLength, quiltingPercent),
    percents,
    cornerDrop: over.over === 'round' ? null : Math.hypot(drop, over.over === 'bed' ? over.footDrop : drop),
    outline:
      over.over === 'round'
        ? { shape: 'circle', diameter: makeWidth }
        : { shape: 'rectangle', width: makeWidth, length: makeLength },
  };
}

/** A round cover must reach all around, so the direction that shrinks more decides. */
function percentsOf({ acrossPercent, alongPercent }: Hanging, over: CoveredThing): readonly [number, number] {
  const most = Math.max(acrossPercent, alongPercent);
  return over.over === 'round' ? [most, most] : [acrossPercent, alongPercent];
}

/** The top of it, and what hangs down. A bed has a drop at both sides and at the foot, and a fold at the pillows. */
function sidesOf({ drop }: Hanging, over: CoveredThing): readonly [Length, Length] {
  const around = (side: number) => lengthUp(side + 2 * drop).rounded;
  switch (over.over) {
    case 'round':
      return [around(over.diameter), around(over.diameter)];
    case 'rectangle':
      return [around(over.width), around(over.length)];
    case 'bed':
      return [around(over.width), lengthUp(over.length + over.footDrop + over.pillowFold).rounded];
  }
}

/** The project as it is, washed. */
export function washedBounds({ outline, acrossPercent, alongPercent }: CoverSizeInput) {
  const { width, length } = outlineBounds(outline);
  return {
    bounds: { width, length },
    width: width * (1 - acrossPercent / 100),
    length: length * (1 - alongPercent / 100),
  };
}
