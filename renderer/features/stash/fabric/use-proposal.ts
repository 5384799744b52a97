import type { Booking } from '#core/contract/stash';
import type { RunningClock } from '#core/domain/clock';
import type { FabricPieceId, ProjectId } from '#core/domain/ids';
import { holdsOf } from './holds';

interface ProposalFacts {
  /** The open projects, the first due first. */
  readonly open: readonly ProjectId[];
  readonly running: Pick<RunningClock, 'projectId'> | null;
  /** The ledger of the fabric, newest booking first. */
  readonly ledger: readonly Booking[];
  readonly pieceId: FabricPieceId;
}

/**
 * The open project a piece is most likely used for: the one with the running clock, else the one this fabric was last cut for,
 * else one that has some of this piece set aside, else some of another piece of the fabric, else the first due.
 */
export function proposedProject({ open, running, ledger, pieceId }: ProposalFacts): ProjectId | null {
  const lastCut = ledger.find(
    ({ projectId, entries, isUndone: isTakenBack }) =>
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
