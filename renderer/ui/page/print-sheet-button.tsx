import type { Problem } from '#core/contract/problem';
import type { SheetPaper } from '#core/domain/paper';
import type { LengthDisplay } from '#core/units/unit-system';
import { Button, type ButtonLook } from './button';
import { useDisplay } from '../base/display';
import { ProblemNotice } from './problem-notice';

/** The call that prints a sheet, which the feature gets from the bridge. */
interface SheetPrinting {
  readonly write: (input: { readonly path: string; readonly name: string }) => Promise<unknown>;
  readonly isWriting: boolean;
  readonly problem: Problem | null;
}

interface PrintSheetButtonProps {
  readonly printing: SheetPrinting;
  /** The sheet's address below `/sheets/`, such as `project/ID`, without its paper. */
  readonly sheet: string;
  /** More parameters of the address. */
  readonly parameters?: Readonly<Record<string, string>>;
  /** The proposed name of the file. */
  readonly name: string;
  readonly look?: ButtonLook;
  readonly children: string;
}

/** Letter for inches, A4 for the metric system. */
export function paperOf({ system }: LengthDisplay): SheetPaper {
  return system === 'inch' ? 'letter' : 'a4';
}

/** Makes a sheet as a PDF and asks where to save it. */
export function PrintSheetButton({
  printing,
  sheet,
  parameters,
  name,
  look,
  children,
}: PrintSheetButtonProps) {
  const paper = paperOf(useDisplay().length);
  const path = `/sheets/${sheet}?${new URLSearchParams({ paper, ...parameters }).toString()}`;
  return (
    <>
      <Button
        isSmall
        {...(look === undefined ? {} : { look })}
        disabled={printing.isWriting}
        onClick={() => void printing.write({ path, name })}
      >
        {printing.isWriting ? 'Making the sheet…' : children}
      </Button>
      <ProblemNotice problem={printing.problem} />
    </>
  );
}
