import type { WantedPatch } from '#core/domain/stash-filter';
import { failure } from '#core/result';
import { parseWanted } from '#core/stash/parse-wanted';
import { formatLengthForEditing } from '#core/units/format-length';
import { lengthProblemWords } from '#renderer/text/field-problems';
import { useDisplay } from '#renderer/ui/base/display';
import { TypedField } from '#renderer/ui/fields/typed-field';

interface WantedFieldProps {
  readonly value: readonly WantedPatch[] | null;
  readonly onCommit: (patches: readonly WantedPatch[] | null) => void;
}

/** The patches that a single piece must be big enough for: one size or several. */
export function WantedField({ value, onCommit }: WantedFieldProps) {
  const display = useDisplay().length;
  const bare = display.system === 'inch' ? 'in' : 'cm';
  return (
    <TypedField
      label="Big enough for"
      isOptional
      value={value}
      placeholder={bare === 'in' ? '20 of 4 x 4 1/2' : '20 of 10 x 12'}
      onCommit={onCommit}
      read={(text) => {
        const patches = parseWanted(text, bare);
        return patches.ok ? patches : failure(lengthProblemWords(patches.error));
      }}
      format={(patches) => patches.map((patch) => patchText(patch, display)).join('; ')}
      emptyProblem="Enter a size, such as 12 x 18."
    />
  );
}

function patchText(
  { width, length, count }: WantedPatch,
  display: Parameters<typeof formatLengthForEditing>[1],
): string {
  const size = `${formatLengthForEditing(width, display)} x ${formatLengthForEditing(length, display)}`;
  return count === 1 ? size : `${String(count)} of ${size}`;
}
