import type { FabricPiece } from '#core/domain/stash';
import { useRead } from '#renderer/bridge/query';
import { KIND_WORDS } from './fabric-words';

/** What the maker calls the kind of a piece; the name of its form where her kind is gone. */
export function useKindName({ kind, kindId }: Pick<FabricPiece, 'kind' | 'kindId'>): string {
  const kinds = useRead('kind:list', {}).value ?? [];
  return kinds.find(({ id }) => id === kindId)?.name ?? KIND_WORDS[kind].name;
}
