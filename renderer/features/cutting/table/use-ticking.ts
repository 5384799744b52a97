import { useState } from 'react';
import type { Problem } from '#core/contract/problem';
import type { FabricPieceId, ProjectId } from '#core/domain/ids';
import { useWrite } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';

export interface Ticking {
  readonly tick: (pieceId: FabricPieceId, place: number, isCut: boolean) => void;
  readonly isBusy: boolean;
  readonly problem: Problem | null;
  /** Repeats a cut that was refused because the fabric is set aside for others; null when none was. */
  readonly cutAnyway: (() => void) | null;
}

/** Ticks a step, which records its cut in the ledger, or undoes the last one. */
export function useTicking(projectId: ProjectId): Ticking {
  const ticking = useWrite('cutting:tick');
  const unticking = useWrite('cutting:untick');
  const [refused, setRefused] = useState<{ readonly pieceId: FabricPieceId; readonly place: number } | null>(
    null,
  );
  const cut = async (pieceId: FabricPieceId, place: number, knowingly: boolean) => {
    const answer = await ticking.write({ projectId, pieceId, place, knowingly, on: today() });
    const isHeld =
      !answer.ok && answer.error.code === 'short-of-fabric' && answer.error.asked <= answer.error.there;
    setRefused(isHeld ? { pieceId, place } : null);
  };
  return {
    tick: (pieceId, place, isCut) => {
      setRefused(null);
      if (isCut) void cut(pieceId, place, false);
      else void unticking.write({ projectId, pieceId, place, on: today() });
    },
    isBusy: ticking.isWriting || unticking.isWriting,
    problem: ticking.problem ?? unticking.problem,
    cutAnyway: refused === null ? null : () => void cut(refused.pieceId, refused.place, true),
  };
}
