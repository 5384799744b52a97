import { lengthFromInches, type Length } from '#core/units/length';

/** A rectangle of fabric that a square might be cut from. */
export interface FabricSource {
  readonly name: string;
  readonly width: Length;
  readonly length: Length;
}

/**
 * Pieces as shops cut them, for a usable width: a fat quarter is 18 by 22 in (common practice), half a yard and a yard run the
 * whole width.
 */
export function fabricSources(fabricWidth: Length): readonly FabricSource[] {
  return [
    { name: 'a fat quarter', width: lengthFromInches(18), length: lengthFromInches(22) },
    { name: 'half a yard', width: fabricWidth, length: lengthFromInches(18) },
    { name: 'a yard', width: fabricWidth, length: lengthFromInches(36) },
  ];
}

/** Side of the largest square in it. */
export function largestSquare(source: Pick<FabricSource, 'width' | 'length'>): Length {
  return source.width < source.length ? source.width : source.length;
}
