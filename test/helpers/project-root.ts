import path from 'node:path';

/** The folder of the project. */
export const projectRoot = path.resolve(import.meta.dirname, '../..');
