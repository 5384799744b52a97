import type { FabricPiece } from '#core/domain/stash';
import { useRead } from '#renderer/bridge/query';
import { KIND_WORDS } from './fabric-words';

/** The maker's name for the kind of a piece; the built-in name if that kind is deleted. */
export function useKindName({ kind, kindId }: Pick<FabricPiece, 'kind' | 'kindId'>): string {
  const kinds = useRead('kind:list', {}).value ?? [];
  return kinds.find(({ id }) => id === kindId)?.name ?? KIND_WORDS[kind].name;
}
