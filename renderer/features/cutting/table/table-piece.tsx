import type { CutStep } from '#core/cutting/tree/cut-steps';
import type { JobPlan, PiecePlan } from '#core/cutting/tree/cutting-job';
import { type KeptWithTicks, lengthDone, standingTicks, stepsOfPiece } from '#core/cutting/tree/kept-plan';
import type { KeptPiece } from '#core/domain/cutting-plan';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import { cutsWords } from '#renderer/text/cut-words';
import { Typeset } from '#renderer/ui/answers/typeset';
import type { Shelf } from '../planning/job-of-setup';
import { PieceDrawing, usePieceWords } from '../planning/piece-drawing';
import { StepList } from './step-list';
import type { Ticking } from './use-ticking';
import shared from '../cutting.module.css';
import styles from './table.module.css';

/** A piece of fabric of a kept plan with its steps. */
export interface PieceAtTable {
  readonly kept: KeptPiece;
  readonly plan: PiecePlan;
  readonly steps: readonly CutStep[];
  /** Places of the steps that are cut. */
  readonly done: ReadonlySet<number>;
  /** The step whose turn it is; -1 when all are cut. */
  readonly next: number;
  readonly lengthDone: number;
}

export function piecesAtTable(kept: KeptWithTicks, plan: JobPlan): readonly PieceAtTable[] {
  return kept.plan.pieces.flatMap((piece, index) => {
    const planned = plan.pieces[index];
    if (planned === undefined) return [];
    const steps = stepsOfPiece(piece, kept.ticked);
    const done = new Set(standingTicks(kept.ticked, piece.pieceId).map(({ place }) => place));
    const next = steps.findIndex((_, place) => !done.has(place));
    return [{ kept: piece, plan: planned, steps, done, next, lengthDone: lengthDone(piece, kept.ticked) }];
  });
}

interface TablePieceProps {
  readonly piece: PieceAtTable;
  readonly setup: CuttingSetup;
  readonly shelf: Shelf;
  readonly ticking: Ticking;
  readonly goesTo: (line: CuttingLine) => string;
  /** The kind of patch that is looked at, in any of the drawings. */
  readonly spotlight: string | null;
  readonly onSpotlight: (key: string | null) => void;
}

/** One piece at the table: its cuts to tick beside its drawing. */
export function TablePiece({ piece, setup, shelf, ticking, ...looking }: TablePieceProps) {
  const { name, kind, size } = usePieceWords(piece.plan, setup, shelf);
  const { pieceId } = piece.kept;
  return (
    <li className={styles['piece']}>
      <div className={styles['pieceHead']}>
        <h2 className={shared['heading']}>
          <Typeset text={`${name}, ${kind}, ${size}`} />
        </h2>
        <p className={shared['quiet']}>
          {cutsWords(piece.plan)}
          {pieceId === null &&
            '. It has to be bought first; it can be cut once it is written down under “To buy”.'}
        </p>
      </div>
      <StepList
        name={name}
        steps={piece.steps}
        done={piece.done}
        next={pieceId === null ? -1 : piece.next}
        onTick={pieceId === null ? null : (place, isCut) => ticking.tick(pieceId, place, isCut)}
        isBusy={ticking.isBusy}
      />
      <div className={styles['drawing']}>
        <PieceDrawing
          piece={piece.plan}
          steps={piece.steps}
          setup={setup}
          shelf={shelf}
          done={piece.lengthDone}
          maxWidth={520}
          {...looking}
        />
      </div>
    </li>
  );
}
