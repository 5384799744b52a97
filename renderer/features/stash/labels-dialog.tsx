import { useState } from 'react';
import { type LabelSheet, labelSheetSchema as labelSheetSchema } from '#core/domain/label-sheet';
import type { Workshop } from '#core/domain/workshop';
import { PAPERS, type SheetPaper } from '#core/domain/paper';
import { type LaidLabel, layLabels } from '#core/stash/lay-labels';
import { LABELS_AT_ONCE, type LabelsOf, useLabelPieces } from '#renderer/bridge/label-pieces';
import { useWrite } from '#renderer/bridge/query';
import { useOpening } from '#renderer/bridge/workshop';
import { labelProblemWords } from '#renderer/text/label-words';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { Notice } from '#renderer/ui/page/notice';
import { NumberField } from '#renderer/ui/fields/number-field';
import { paperOf, PrintSheetButton } from '#renderer/ui/page/print-sheet-button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';
import { Typeset } from '#renderer/ui/answers/typeset';
import styles from './labels.module.css';

interface LabelsDialogProps {
  readonly of: LabelsOf;
  readonly onClose: () => void;
}

/** Prints labels for pieces of fabric. The layout of the sheet is saved; where on the sheet they start is asked each time. */
export function LabelsDialog({ of, onClose }: LabelsDialogProps) {
  const found = useLabelPieces(of);
  const workshop = useOpening()?.workshop;
  const { length } = useDisplay();
  const [startAt, setStartAt] = useState(1);
  const [hasLines, setHasLines] = useState(true);
  const printing = useWrite('shell:print-sheet');
  if (found === undefined || workshop === undefined) return null;
  const count = found.pieces.length;
  const { labelSheet } = workshop;
  const paper = paperOf(length);
  const laid = layLabels(labelSheet, paper, count, startAt);
  return (
    <Dialog
      title="Labels"
      isWide
      onClose={onClose}
      foot={
        <>
          <Button isSmall onClick={onClose}>
            Close
          </Button>
          {laid.ok && count > 0 && (
            <PrintSheetButton
              printing={printing}
              sheet={`labels/${sheetOf(of)}`}
              parameters={{
                ...sheetParameters(of),
                ...(startAt === 1 ? {} : { start: String(startAt) }),
                ...(hasLines ? { lines: '1' } : {}),
              }}
              name="Labels"
              look="main"
            >
              Print the labels
            </PrintSheetButton>
          )}
        </>
      }
    >
      <p role="status">
        <Typeset
          text={laid.ok ? countWords(count, laid.value.length) : labelProblemWords(laid.error, length)}
        />
      </p>
      {found.isMore && (
        <Notice kind="tip">
          There are more pieces: at most {LABELS_AT_ONCE} labels are printed at once. Narrow the search to
          print the others.
        </Notice>
      )}
      <div className={styles['columns']}>
        <SheetDrawing sheet={labelSheet} paper={paper} labels={laid.ok ? (laid.value[0] ?? []) : []} />
        <div className={styles['settings']}>
          <NumberField
            label="Start at label number"
            help="For a sheet that is partly used; count row by row."
            value={startAt}
            minimum={1}
            maximum={labelSheet.across * labelSheet.down}
            isWhole
            onCommit={(number) => setStartAt(number ?? 1)}
          />
          <Checkbox label="Lines to cut along" isChecked={hasLines} onChange={setHasLines} />
          <SheetLayout workshop={workshop} />
        </div>
      </div>
    </Dialog>
  );
}

/** The layout of the label sheet, saved with the workshop as it is changed. */
function SheetLayout({ workshop }: { readonly workshop: Workshop }) {
  const changing = useWrite('workshop:change');
  const save = (value: Readonly<Record<string, unknown>>) => {
    const checked = labelSheetSchema.safeParse(value);
    if (checked.success) void changing.write({ workshop: { ...workshop, labelSheet: checked.data } });
  };
  return (
    <>
      <details>
        <summary>Layout of the sheet</summary>
        <SchemaForm schema={labelSheetSchema} value={workshop.labelSheet} onChange={save} />
      </details>
      <ProblemNotice problem={changing.problem} />
    </>
  );
}

interface SheetDrawingProps {
  readonly sheet: LabelSheet;
  readonly paper: SheetPaper;
  readonly labels: readonly LaidLabel[];
}

/** The first sheet to scale, with the labels that are printed and those that stay empty. */
function SheetDrawing({ sheet, paper, labels }: SheetDrawingProps) {
  const { width, height } = PAPERS[paper];
  const all = layLabels(sheet, paper, sheet.across * sheet.down, 1);
  const printed = new Set(labels.map(({ x, y }) => `${String(x)} ${String(y)}`));
  return (
    <svg
      className={styles['sheet']}
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      role="img"
      aria-label={`The first sheet: ${String(labels.length)} of ${String(sheet.across * sheet.down)} labels`}
    >
      <rect className={styles['paper']} width={width} height={height} />
      {(all.ok ? (all.value[0] ?? []) : []).map(({ index, x, y }) => (
        <rect
          key={index}
          className={printed.has(`${String(x)} ${String(y)}`) ? styles['printed'] : styles['empty']}
          x={x}
          y={y}
          width={sheet.width}
          height={sheet.height}
        />
      ))}
    </svg>
  );
}

function countWords(count: number, sheets: number): string {
  if (count === 0) return 'There are no pieces to label.';
  const labels = count === 1 ? '1 label' : `${String(count)} labels`;
  return `${labels} on ${sheets === 1 ? '1 sheet' : `${String(sheets)} sheets`}`;
}

function sheetOf(of: LabelsOf): string {
  switch (of.of) {
    case 'fabric':
      return `fabric/${of.fabricId}`;
    case 'place':
      return `place/${of.placeId}`;
    case 'found':
      return 'found';
  }
}

function sheetParameters(of: LabelsOf): Readonly<Record<string, string>> {
  switch (of.of) {
    case 'fabric':
      return of.pieceId === undefined ? {} : { piece: of.pieceId };
    case 'place':
      return {};
    case 'found':
      return { search: of.search, filter: JSON.stringify(of.filter) };
  }
}
