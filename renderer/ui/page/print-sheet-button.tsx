import type { Problem } from '#core/contract/problem';
import type { SheetPaper } from '#core/domain/paper';
import type { LengthDisplay } from '#core/units/unit-system';
import { Button, type ButtonLook } from './button';
import { useDisplay } from '../base/display';
import { ProblemNotice } from './problem-notice';

/** The call that makes a sheet, as the feature that shows the button was lent it by the bridge. */
export interface SheetPrinting {
  readonly write: (input: { readonly path: string; readonly name: string }) => Promise<unknown>;
  readonly isWriting: boolean;
  readonly problem: Problem | null;
}

interface PrintSheetButtonProps {
  readonly printing: SheetPrinting;
  /** The sheet's address below `/sheets/`, such as `project/ID`, without its paper. */
  readonly sheet: string;
  /** What else the address says, besides its paper. */
  readonly asked?: Readonly<Record<string, string>>;
  /** What the file is called unless the maker says otherwise. */
  readonly name: string;
  readonly look?: ButtonLook;
  readonly children: string;
}

/** Letter for who measures in inches, A4 for all others. */
export function paperOf({ system }: LengthDisplay): SheetPaper {
  return system === 'inch' ? 'letter' : 'a4';
}

/** Makes a sheet for paper and asks where to keep it. */
export function PrintSheetButton({ printing, sheet, asked, name, look, children }: PrintSheetButtonProps) {
  const paper = paperOf(useDisplay().length);
  const path = `/sheets/${sheet}?${new URLSearchParams({ paper, ...asked }).toString()}`;
  return (
    <>
      <Button
        isSmall
        {...(look === undefined ? {} : { look })}
        disabled={printing.isWriting}
        onClick={() => void printing.write({ path, name })}
      >
        {printing.isWriting ? 'Laying out the sheet…' : children}
      </Button>
      <ProblemNotice problem={printing.problem} />
    </>
  );
}
