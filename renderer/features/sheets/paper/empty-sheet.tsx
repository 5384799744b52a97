import type { ReactNode } from 'react';
import type { SheetPaper } from '#core/domain/paper';
import { Paper } from './paper';

interface EmptySheetProps {
  readonly paper: SheetPaper;
  readonly children: ReactNode;
}

/** A sheet that says why there is nothing to print. */
export function EmptySheet({ paper, children }: EmptySheetProps) {
  return (
    <Paper paper={paper} margin="14mm">
      <h1>Nothing to print</h1>
      <p>{children}</p>
    </Paper>
  );
}
