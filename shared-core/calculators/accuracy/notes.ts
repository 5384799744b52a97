import type { Note } from '../explanation';
import { givenLength, lengthUp } from '../quantities';
import type { AccuracyDetails } from './work';
import type { AccuracyInput } from './input';

export function accuracyNotes(
  input: AccuracyInput,
  { block, row, rowsApart }: AccuracyDetails,
): readonly Note[] {
  const { tolerance } = input;
  const allowed = givenLength(tolerance);
  const over = (exact: number) => lengthUp(exact);
  const notes: readonly (Note | false)[] = [
    block.likely > tolerance && {
      kind: 'warning',
      says: 'A block is off by {off} as a rule, more than the {allowed} that can be eased. Sew a test block and measure it.',
      values: { off: over(block.likely), allowed },
    },
    block.likely <= tolerance &&
      block.worst > tolerance && {
        kind: 'tip',
        says: 'If all errors go the same way a block is off by {off}: measure the first block before you sew the others.',
        values: { off: over(block.worst) },
      },
    !input.trimsBlocks &&
      row.worst > tolerance && {
        kind: 'tip',
        says: 'Trimmed to size, blocks no longer pass on their errors: rows then meet better than the {apart} they may differ now.',
        values: { apart: over(rowsApart.likely) },
      },
    {
      kind: 'tip',
      says: 'A seam that is always a little wide adds up like the worst case. Sew two strips, measure, and move the guide.',
      values: {},
    },
  ];
  return notes.filter((note) => note !== false);
}
