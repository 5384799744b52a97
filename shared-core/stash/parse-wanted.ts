import type { WantedPatch } from '#core/domain/stash-filter';
import { failure, type Result, success } from '#core/result';
import type { LengthProblem } from '#core/units/length-problem';
import type { LengthUnit } from '#core/units/length-unit';
import { parseFabricSize } from '#core/units/parse-fabric-size';

const MAXIMUM_SIZES = 20;

/**
 * Reads the patches a piece of fabric must be big enough for: `12 x 18`, `20 of 4 x 4`, or several of these separated by
 * semicolons. Sizes are across by along, at most twenty of them. Fails with the first size that cannot be read.
 */
export function parseWanted(
  text: string,
  bareUnit: LengthUnit,
): Result<readonly WantedPatch[], LengthProblem> {
  const parts = text
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const patches: WantedPatch[] = [];
  for (const part of parts.slice(0, MAXIMUM_SIZES)) {
    const [, count = '1', size = part] = /^(\d{1,5})\s*of\s*(.+)$/i.exec(part) ?? [];
    const read = parseFabricSize(size, bareUnit);
    if (!read.ok) return read;
    patches.push({ ...read.value, count: Math.max(1, Number(count)) });
  }
  if (patches.length === 0)
    return failure({ code: 'empty', read: text, expected: ['12 x 18', '20 of 4 x 4'] });
  return success(patches);
}
