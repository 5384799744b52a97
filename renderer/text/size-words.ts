import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';

/** Width by length, in 1/320 mm: `2½ × 4½ in`. */
export function sizeWords(
  { width, length }: { readonly width: number; readonly length: number },
  display: LengthDisplay,
): string {
  const text = (units: number) => formatLength(lengthFromUnits(Math.round(units)), display);
  return sidesWords(text(width), text(length));
}

/** Two formatted lengths with the unit written once if they share it: `14 × 42 in`. */
export function sidesWords(width: string, length: string): string {
  const unit = / \S+$/.exec(length)?.[0] ?? '';
  const isShared = unit !== '' && width.endsWith(unit);
  return `${isShared ? width.slice(0, -unit.length) : width} × ${length}`;
}
