import type { Problem } from '#core/contract/problem';
import { Button, type ButtonLook } from './button';
import { useDisplay } from './display';
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
  readonly part?: 'quarter';
  /** What the file is called unless the maker says otherwise. */
  readonly name: string;
  readonly look?: ButtonLook;
  readonly children: string;
}

/** Makes a sheet for paper, on letter for who measures in inches and on A4 for all others, and asks where to keep it. */
export function PrintSheetButton({ printing, sheet, part, name, look, children }: PrintSheetButtonProps) {
  const { system } = useDisplay().length;
  const paper = system === 'inch' ? 'letter' : 'a4';
  const path = `/sheets/${sheet}?paper=${paper}${part === undefined ? '' : `&part=${part}`}`;
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
