import type { Note } from '../explanation';
import { fineLength, givenLength } from '../quantities';
import { cautionNotes } from '../caution-notes';
import type { AccuracyInput } from './input';
import type { AccuracyDetails } from './work';

export function accuracyNotes(
  input: AccuracyInput,
  { block, row, rowsApart }: AccuracyDetails,
): readonly Note[] {
  const { tolerance } = input;
  const allowed = givenLength(tolerance, 'fine');
  const over = (exact: number) => fineLength(exact, 'up');
  const notes: readonly (Note | false)[] = [
    block.likely > tolerance && {
      kind: 'warning',
      says: 'A block is usually off by up to {off}, more than the {allowed} that can be eased. Sew a test block and measure it.',
      values: { off: over(block.likely), allowed },
    },
    block.likely <= tolerance &&
      block.worst > tolerance && {
        kind: 'tip',
        says: 'If all errors go the same way, a block is off by {off}. Measure the first block before you sew the rest.',
        values: { off: over(block.worst) },
      },
    !input.trimsBlocks &&
      row.worst > tolerance && {
        kind: 'tip',
        says: 'Trimmed blocks don’t pass on their errors, so rows meet better. Now two rows usually differ by up to {apart}.',
        values: { apart: over(rowsApart.likely) },
      },
    {
      kind: 'tip',
      says: 'A seam that is always a little wide adds up like the worst case. Sew three strips together, measure the middle one, and move the seam guide. A scant seam, a thread or two narrower, makes up for what the fold takes.',
      values: {},
    },
  ];
  return [
    ...notes.filter((note) => note !== false),
    ...cautionNotes('rotaryBlade', 'machineNeedle', 'iron', 'usedBlades'),
  ];
}
