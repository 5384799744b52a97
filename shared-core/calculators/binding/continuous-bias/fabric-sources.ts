import { lengthFromInches, type Length } from '#core/units/length';

/** A rectangle of fabric to cut a square from. */
interface FabricSource {
  readonly name: string;
  readonly width: Length;
  readonly length: Length;
}

/** Pieces of fabric as shops cut them. A fat quarter is 18 by 22 in (common practice); yardage has the usable width. */
export function fabricSources(fabricWidth: Length): readonly FabricSource[] {
  return [
    { name: 'a fat quarter', width: lengthFromInches(18), length: lengthFromInches(22) },
    { name: 'half a yard', width: fabricWidth, length: lengthFromInches(18) },
    { name: 'a yard', width: fabricWidth, length: lengthFromInches(36) },
  ];
}

/** Side of the largest square. */
export function largestSquare(source: Pick<FabricSource, 'width' | 'length'>): Length {
  return source.width < source.length ? source.width : source.length;
}
