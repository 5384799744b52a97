import type { Booking } from '#core/contract/stash';
import type { RunningClock } from '#core/domain/clock';
import type { FabricPieceId, ProjectId } from '#core/domain/ids';
import { holdsOf } from './holds';

interface Known {
  /** The projects it may be for, in their order. */
  readonly open: readonly ProjectId[];
  readonly running: Pick<RunningClock, 'projectId'> | null;
  /** Of the fabric, the newest first. */
  readonly ledger: readonly Booking[];
  readonly pieceId: FabricPieceId;
}

/**
 * For which project a piece is taken up, as far as can be told: the one whose clock runs, else the one this fabric was last cut
 * for, else one that has set some of the piece aside, or of another piece of the fabric; else the first that is due.
 */
export function proposedProject({ open, running, ledger, pieceId }: Known): ProjectId | null {
  const lastCut = ledger.find(
    ({ projectId, entries, isTakenBack }) =>
      !isTakenBack &&
      projectId !== null &&
      open.includes(projectId) &&
      entries.some(({ kind }) => kind === 'cut'),
  );
  const others = new Set(ledger.flatMap(({ entries }) => entries.map((entry) => entry.pieceId)));
  const holders = [pieceId, ...others].flatMap((id) => holdsOf(ledger, id));
  const likely = [running?.projectId, lastCut?.projectId, ...holders.map((hold) => hold.projectId)];
  return [...likely, ...open].find((id) => id !== undefined && id !== null && open.includes(id)) ?? null;
}
