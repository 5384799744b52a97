import type { ClothPiece } from '#core/domain/stash';
import { useRead } from '#renderer/bridge/query';
import { KIND_WORDS } from './cloth-words';

/** What the maker calls the kind of a piece; the name of its form where her kind is gone. */
export function useKindName({ kind, kindId }: Pick<ClothPiece, 'kind' | 'kindId'>): string {
  const kinds = useRead('kind:list', {}).value ?? [];
  return kinds.find(({ id }) => id === kindId)?.name ?? KIND_WORDS[kind].name;
}
