import type { Problem } from '#core/contract/problem';
import { type Result, success } from '#core/result';
import { makeBackup } from '../files/backups';
import { foldersOf } from '../files/workshop-folders';
import type { Bench } from './bench';
import { openStore } from './open-store';
import type { StartOptions } from './protocol';
import { type Surroundings, systemSurroundings } from './surroundings';

/** Opens a workshop with its folders, and backs it up at every start and before it is brought forward. */
export function openBench(
  { file, programVersion, isDemo }: StartOptions,
  surroundings: Surroundings = systemSurroundings(),
): Result<Bench, Problem> {
  const folders = foldersOf(file);
  const opened = openStore(file, {
    surroundings,
    backUp: (database, why) => makeBackup(database, folders.backups, why, surroundings.now()),
  });
  return opened.ok ? success({ store: opened.value, folders, programVersion, isDemo }) : opened;
}
