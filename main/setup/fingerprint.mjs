import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';

/**
 * A short text that changes when any file at or under these paths is added, removed, resized or written. A path that
 * does not exist counts as absent.
 *
 * @param {readonly string[]} paths
 */
export function fingerprint(paths) {
  const hash = createHash('sha256');
  const visit = (/** @type {string} */ place) => {
    const stat = fs.statSync(place, { throwIfNoEntry: false });
    if (stat === undefined) return;
    if (stat.isDirectory()) {
      for (const name of fs.readdirSync(place).sort()) visit(path.join(place, name));
    } else {
      hash.update(`${place} ${stat.size} ${stat.mtimeMs}\n`);
    }
  };
  paths.forEach(visit);
  return hash.digest('hex');
}
