import { useRef, useState } from 'react';
import type { Problem } from '#core/contract/problem';
import type { FabricId } from '#core/domain/ids';
import { useWrite } from '#renderer/bridge/query';
import { type NewFabricDraft, purchaseOf } from '#renderer/features/stash/fabric-draft';
import { today } from '#renderer/text/dates';

interface Kept {
  readonly fabricId: FabricId;
  readonly isBooked: boolean;
}

/** Writes a fabric down, then its first piece, then its photo. What was done before a problem is not done again by the next try. */
export function useKeepFabric() {
  const kept = useRef<Kept | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const creating = useWrite('fabric:create');
  const buying = useWrite('ledger:buy');
  const showing = useWrite('fabric:set-photo');

  const keep = async (draft: NewFabricDraft, photo: File | null): Promise<FabricId | null> => {
    const refuse = (error: Problem) => {
      setProblem(error);
      return null;
    };
    setProblem(null);
    if (kept.current === null) {
      const made = await creating.write({ details: draft.fabric });
      if (!made.ok) return refuse(made.error);
      kept.current = { fabricId: made.value.fabricId, isBooked: false };
    }
    const { fabricId, isBooked } = kept.current;
    const first = purchaseOf(draft.piece, fabricId, today());
    if (!isBooked && first !== null) {
      const bought = await buying.write(first);
      if (!bought.ok) return refuse(bought.error);
      kept.current = { fabricId, isBooked: true };
    }
    if (photo !== null) {
      const shown = await showing.write({ fabricId, bytes: new Uint8Array(await photo.arrayBuffer()) });
      if (!shown.ok) return refuse(shown.error);
    }
    kept.current = null;
    return fabricId;
  };

  return {
    keep,
    problem,
    isKeeping: creating.isWriting || buying.isWriting || showing.isWriting,
    /** The fabric that was written down before something went wrong. */
    halfKept: () => kept.current?.fabricId ?? null,
  };
}
