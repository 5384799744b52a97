import { useRef, useState } from 'react';
import type { Problem } from '#core/contract/problem';
import type { FabricId } from '#core/domain/ids';
import { useWrite } from '#renderer/bridge/query';
import { type NewFabricDraft, purchaseOf } from '#renderer/features/stash/fabric-draft';

interface Saved {
  readonly fabricId: FabricId;
  readonly isBooked: boolean;
}

/** Saves a new fabric, then its first piece, then its photo. After a problem, the next try does not repeat what was saved. */
export function useSaveFabric() {
  const saved = useRef<Saved | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const creating = useWrite('fabric:create');
  const buying = useWrite('ledger:buy');
  const addingPhoto = useWrite('fabric:set-photo');

  const save = async (draft: NewFabricDraft, photo: File | null): Promise<FabricId | null> => {
    const refuse = (error: Problem) => {
      setProblem(error);
      return null;
    };
    setProblem(null);
    if (saved.current === null) {
      const made = await creating.write({ details: draft.fabric });
      if (!made.ok) return refuse(made.error);
      saved.current = { fabricId: made.value.fabricId, isBooked: false };
    }
    const { fabricId, isBooked } = saved.current;
    const first = purchaseOf(draft.piece, fabricId);
    if (!isBooked && first !== null) {
      const bought = await buying.write(first);
      if (!bought.ok) return refuse(bought.error);
      saved.current = { fabricId, isBooked: true };
    }
    if (photo !== null) {
      const added = await addingPhoto.write({ fabricId, bytes: new Uint8Array(await photo.arrayBuffer()) });
      if (!added.ok) return refuse(added.error);
    }
    saved.current = null;
    return fabricId;
  };

  return {
    save,
    problem,
    isSaving: creating.isWriting || buying.isWriting || addingPhoto.isWriting,
    /** The fabric that was saved before something went wrong. */
    partiallySavedId: () => saved.current?.fabricId ?? null,
  };
}
