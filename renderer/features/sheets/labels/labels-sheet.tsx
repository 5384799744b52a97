import type { PieceWithCode } from '#core/contract/stash';
import type { LabelSheet } from '#core/domain/label-sheet';
import { PAPERS, type SheetPaper } from '#core/domain/paper';
import { NO_COLOR } from '#core/domain/stash';
import { type LaidLabel, layLabels } from '#core/stash/lay-labels';
import { codeOfPiece, formatPieceCode } from '#core/stash/piece-code';
import { type LabelsOf, useLabelPieces } from '#renderer/bridge/label-pieces';
import { useOpening } from '#renderer/bridge/workshop';
import { labelPlace, labelProblemWords, labelSize } from '#renderer/text/label-words';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { QrCode } from '#renderer/ui/drawings/qr-code';
import { Typeset } from '#renderer/ui/answers/typeset';
import { Paper } from '../paper/paper';
import { cssMillimeters, PaperPage } from '../paper/paper-page';
import { EmptySheet } from '../paper/empty-sheet';
import styles from './labels-sheet.module.css';
import { defineSheet } from '../sheet';
import { readLabels } from './read-labels';

interface LabelsSheetProps {
  readonly of: LabelsOf;
  readonly paper: SheetPaper;
  /** The first label to print on, counted from 1; those before it are already used. */
  readonly startAt: number;
  readonly hasLines: boolean;
}

/** Labels for pieces of fabric at true size, on as many sheets as they need. */
function LabelsSheet({ of, paper, startAt, hasLines }: LabelsSheetProps) {
  const opening = useOpening();
  const found = useLabelPieces(of);
  const { length } = useDisplay();
  if (opening === undefined || found === undefined) return null;
  const { pieces } = found;
  if (pieces.length === 0)
    return <EmptySheet paper={paper}>There is no piece of fabric to label.</EmptySheet>;
  const { labelSheet, settings } = opening.workshop;
  const laid = layLabels(labelSheet, paper, pieces.length, startAt);
  if (!laid.ok) return <EmptySheet paper={paper}>{labelProblemWords(laid.error, length)}</EmptySheet>;
  const { width, height } = PAPERS[paper];
  return (
    <SettingsDisplay settings={settings}>
      <Paper paper={paper} margin="0">
        {laid.value.map((labels, number) => (
          <PaperPage key={number} width={width} height={height} label={`Sheet ${String(number + 1)}`}>
            {labels.map((label) => {
              const one = pieces[label.index];
              return (
                one !== undefined && (
                  <Label key={label.index} one={one} at={label} sheet={labelSheet} hasLines={hasLines} />
                )
              );
            })}
          </PaperPage>
        ))}
      </Paper>
    </SettingsDisplay>
  );
}

/** The type size grows with the label: a seventh of its height or a fifteenth of its width, whichever is less. */
const [LINES_DOWN, LETTERS_ACROSS] = [7, 15];

interface LabelProps {
  readonly one: PieceWithCode;
  readonly at: LaidLabel;
  readonly sheet: LabelSheet;
  readonly hasLines: boolean;
}

function Label({ one, at, sheet, hasLines }: LabelProps) {
  const { length } = useDisplay();
  const code = codeOfPiece(one.piece.id);
  const { name, swatch } = one.fabric;
  const type = Math.min(sheet.height / LINES_DOWN, sheet.width / LETTERS_ACROSS);
  const place = labelPlace(one);
  return (
    <article
      className={classes(styles['label'], hasLines && styles['lined'])}
      style={{
        left: cssMillimeters(at.x),
        top: cssMillimeters(at.y),
        width: cssMillimeters(sheet.width),
        height: cssMillimeters(sheet.height),
        fontSize: cssMillimeters(type),
      }}
      aria-label={`${name}, ${formatPieceCode(code)}`}
    >
      <div className={styles['qr']}>
        <QrCode text={code} />
      </div>
      <div className={styles['words']}>
        <p className={styles['name']}>{name}</p>
        <p>
          {swatch !== NO_COLOR && <span className={styles['swatch']} style={{ background: swatch }} />}
          <Typeset text={labelSize(one, length)} />
        </p>
        {place !== '' && <p className={styles['place']}>{place}</p>}
      </div>
      <p className={styles['code']}>{formatPieceCode(code)}</p>
    </article>
  );
}

export const labelsSheet = defineSheet(readLabels, LabelsSheet);
