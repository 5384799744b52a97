import type { LabelSheet } from '#core/domain/label-sheet';
import { PAPERS, type SheetPaper } from '#core/domain/paper';
import { failure, type Result, success } from '#core/result';

/** A label on its sheet: its number among all labels, from 0, and its upper left corner in 1/320 mm. */
export interface LaidLabel {
  readonly index: number;
  readonly x: number;
  readonly y: number;
}

/** The grid is larger than the paper by `over`, or `startAt` is past the last label of a sheet. */
export type LabelProblem =
  | { readonly code: 'too-wide' | 'too-tall'; readonly over: number }
  | { readonly code: 'starts-beyond'; readonly onASheet: number };

/**
 * Lays labels on sheets, row by row from the left. The first sheet starts at label number `startAt`, counted from 1, because
 * the labels before it are already used up.
 */
export function layLabels(
  sheet: LabelSheet,
  paper: SheetPaper,
  count: number,
  startAt: number,
): Result<readonly (readonly LaidLabel[])[], LabelProblem> {
  const { across, down, width, height, gapAcross, gapDown, left, top } = sheet;
  const [stepAcross, stepDown] = [width + gapAcross, height + gapDown];
  const overWidth = left + across * stepAcross - gapAcross - PAPERS[paper].width;
  if (overWidth > 0) return failure({ code: 'too-wide', over: overWidth });
  const overHeight = top + down * stepDown - gapDown - PAPERS[paper].height;
  if (overHeight > 0) return failure({ code: 'too-tall', over: overHeight });
  const onASheet = across * down;
  if (startAt > onASheet) return failure({ code: 'starts-beyond', onASheet });
  const before = startAt - 1;
  const sheets = Array.from({ length: Math.ceil((before + count) / onASheet) }, (_sheet, number) => {
    const first = Math.max(0, number * onASheet - before);
    const end = Math.min(count, (number + 1) * onASheet - before);
    return Array.from({ length: end - first }, (_label, place): LaidLabel => {
      const index = first + place;
      const spot = (index + before) % onASheet;
      return {
        index,
        x: left + (spot % across) * stepAcross,
        y: top + Math.floor(spot / across) * stepDown,
      };
    });
  });
  return success(sheets);
}
