import path from 'node:path';

/** The workshop file and the folders beside it. */
export interface WorkshopFolders {
  readonly file: string;
  readonly photos: string;
  readonly backups: string;
}

export function foldersOf(file: string): WorkshopFolders {
  const folder = path.dirname(file);
  return { file, photos: path.join(folder, 'photos'), backups: path.join(folder, 'backups') };
}
