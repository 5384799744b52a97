import { createContext } from 'react';

/** Looks up names for what is typed in a field that names a fabric. The pages that know the stash provide it; elsewhere there are none. */
export const FabricNamesContext = createContext<(typed: string) => readonly string[]>(() => []);
