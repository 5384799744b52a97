import { oneRow, type ReadableStore } from '../base/handles';
import { textOf } from '../base/rows';

/** What tells this workshop file from every other, and from its own backups once one is restored. */
export function fileIdOf(store: ReadableStore): string {
  return textOf(oneRow(store, 'SELECT id FROM workshop_file') ?? {}, 'id');
}

/** Makes the open file another one: what belonged to it before does so no longer. */
export function renewFileId({ database }: ReadableStore): void {
  database.exec('UPDATE workshop_file SET id = lower(hex(randomblob(16)))');
}
