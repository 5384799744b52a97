import path from 'node:path';

/** The folder of the project. */
export const root = path.resolve(import.meta.dirname, '../..');

/**
 * A path inside the project.
 *
 * @param {string[]} parts
 */
export const inRoot = (...parts) => path.join(root, ...parts);

/**
 * A path inside `.cache`, which keeps what takes long to fetch and must outlive node_modules.
 *
 * @param {string[]} parts
 */
export const inCache = (...parts) => inRoot('.cache', ...parts);
