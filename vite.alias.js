import path from 'node:path';

/** @param {string} name */
const folder = (name) => `${path.join(import.meta.dirname, name)}/`;

/**
 * `#core`, `#main` and `#setup` are subpath imports of package.json. These two may end in .ts or .tsx, which a
 * subpath import cannot say, so they are `paths` in tsconfig.json and aliases here.
 */
export const aliases = { '#renderer/': folder('renderer'), '#test/': folder('test') };
