import { alikeRuns } from '#core/cutting/tree/alike-runs';
import type { PieceTree, SheetsTree } from '#core/domain/cutting-plan';
import { cutSteps } from '#core/cutting/tree/cut-steps';
import type { PiecePlan } from '#core/cutting/tree/cutting-job';
import { CutLayout, type CutLayoutProps } from './cut-layout';
import { frameFabric } from './cut-layout-frame';
import styles from './piece-layout.module.css';

interface PieceLayoutProps extends Omit<CutLayoutProps, 'tree' | 'cuts'> {
  readonly piece: Pick<PiecePlan, 'tree' | 'cuts'>;
}

/** A piece of fabric with its cuts, to scale. For a pack, one drawing for each way its sheets are cut. */
export function PieceLayout({ piece: { tree, cuts }, ...rest }: PieceLayoutProps) {
  if (tree.kind !== 'sheets') return <CutLayout tree={tree} cuts={cuts} {...rest} />;
  return <SheetLayouts tree={tree} cuts={cuts} {...rest} />;
}

const HIGHEST_SHEET = 300;

/** Pixels per 1/320 mm in the drawing of a piece, or of a pack's sheets. */
export function layoutScale(tree: PieceTree, maxWidth: number, maxHeight: number): number {
  if (tree.kind !== 'sheets') return frameFabric(tree, maxWidth, maxHeight).scale;
  const scales = tree.parts.map(
    (sheet) => frameFabric(sheet, maxWidth, Math.min(maxHeight, HIGHEST_SHEET), true).scale,
  );
  return Math.min(...scales);
}

function SheetLayouts({ tree, cuts, ...rest }: Omit<CutLayoutProps, 'tree'> & { readonly tree: SheetsTree }) {
  const { title, done, maxHeight = HIGHEST_SHEET, steps = cutSteps(tree) } = rest;
  const sheetLength = tree.height / tree.parts.length;
  return (
    <ul className={styles['sheets']}>
      {runsOf(tree).map((run) => {
        // Alike sheets are cut in order, so all of them are cut once the last one is.
        const from = run.end - sheetLength;
        const first = steps.findIndex((step) => step.from + step.length > run.end - run.times * sheetLength);
        const last = steps.findLastIndex((step) => step.from < run.end);
        const words = `${stepNumbers(first + 1, last + 1)}: ${String(run.times)} cut like this`;
        return (
          <li key={run.end}>
            <p className={styles['words']}>{words}</p>
            <CutLayout
              {...rest}
              title={`${title}. ${words}`}
              tree={run.part}
              cuts={cuts
                .filter(({ y }) => y >= from && y < run.end)
                .map((cut) => ({ ...cut, y: cut.y - from }))}
              steps={[]}
              isWhole
              done={run.end <= done ? sheetLength : 0}
              maxHeight={Math.min(maxHeight, HIGHEST_SHEET)}
            />
          </li>
        );
      })}
    </ul>
  );
}

/** Successive sheets that are cut alike, with the end of the last one. */
function runsOf({ parts }: SheetsTree) {
  let end = 0;
  return alikeRuns(parts).map(({ part, times }) => {
    end += times * part.height;
    return { part, times, end };
  });
}

function stepNumbers(first: number, last: number): string {
  return first === last ? `Step ${String(first)}` : `Steps ${String(first)} to ${String(last)}`;
}
