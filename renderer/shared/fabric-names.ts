import type { FabricId } from '#core/domain/ids';
import { useRead } from '../bridge/query';

/** As many as a list under a field can show. */
const MOST_NAMES = 20;

/** Names of fabrics in the stash in which what is typed occurs. */
export function useFabricNames(typed: string): readonly string[] {
  return useFound(typed).map(({ fabric }) => fabric.name);
}

/** The fabric of the stash with exactly this name, whatever its capitals; null if it is still to be bought. */
export function useFabricNamed(name: string): FabricId | null {
  const lowerCase = name.trim().toLowerCase();
  return useFound(name).find(({ fabric }) => fabric.name.toLowerCase() === lowerCase)?.fabric.id ?? null;
}

function useFound(typed: string) {
  const search = typed.trim().slice(0, 200);
  return useRead('fabric:list', { search, limit: MOST_NAMES }, { keepsPrevious: true }).value?.items ?? [];
}
