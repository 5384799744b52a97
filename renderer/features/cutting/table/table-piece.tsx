import type { CutStep } from '#core/cutting/tree/cut-steps';
import type { JobPlan, PiecePlan } from '#core/cutting/tree/cutting-job';
import { type KeptWithTicks, lengthDone, bookedTicks, stepsOfPiece } from '#core/cutting/tree/kept-plan';
import type { KeptPiece } from '#core/domain/cutting-plan';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import { cutsWords } from '#renderer/text/cut-words';
import { Typeset } from '#renderer/ui/answers/typeset';
import type { PlanStash } from '../planning/job-of-setup';
import { PlannedPiece, usePlannedPieceWords } from '../planning/planned-piece';
import { StepList } from './step-list';
import type { Ticking } from './use-ticking';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './table.module.css';

/** A piece of fabric of a saved plan with its steps. */
export interface PieceAtTable {
  readonly saved: KeptPiece;
  readonly plan: PiecePlan;
  readonly steps: readonly CutStep[];
  /** Places of the steps that are cut. */
  readonly done: ReadonlySet<number>;
  /** Place of the next step; -1 when all are cut. */
  readonly next: number;
  readonly lengthDone: number;
}

export function piecesAtTable(saved: KeptWithTicks, plan: JobPlan): readonly PieceAtTable[] {
  return saved.plan.pieces.flatMap((piece, index) => {
    const planned = plan.pieces[index];
    if (planned === undefined) return [];
    const steps = stepsOfPiece(piece, saved.ticked);
    const done = new Set(bookedTicks(saved.ticked, piece.pieceId).map(({ place }) => place));
    const next = steps.findIndex((_, place) => !done.has(place));
    return [{ saved: piece, plan: planned, steps, done, next, lengthDone: lengthDone(piece, saved.ticked) }];
  });
}

interface TablePieceProps {
  readonly piece: PieceAtTable;
  readonly setup: CuttingSetup;
  readonly stash: PlanStash;
  readonly ticking: Ticking;
  readonly goesTo: (line: CuttingLine) => string;
  /** The kind of patch highlighted in all drawings. */
  readonly spotlight: string | null;
  readonly onSpotlight: (key: string | null) => void;
}

/** One piece to cut: its steps to tick beside its drawing. */
export function TablePiece({ piece, setup, stash, ticking, ...spotlightProps }: TablePieceProps) {
  const { name, kind, size } = usePlannedPieceWords(piece.plan, setup, stash);
  const { pieceId } = piece.saved;
  return (
    <li className={styles['piece']}>
      <div className={styles['pieceHead']}>
        <h2 className={layout['heading']}>
          <Typeset text={`${name}, ${kind}, ${size}`} />
        </h2>
        <p className={layout['quiet']}>
          {cutsWords(piece.plan)}
          {pieceId === null && '. Buy it first: you can cut it once you record it under “To buy”.'}
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
        <PlannedPiece
          piece={piece.plan}
          steps={piece.steps}
          setup={setup}
          stash={stash}
          done={piece.lengthDone}
          maxWidth={520}
          {...spotlightProps}
        />
      </div>
    </li>
  );
}
