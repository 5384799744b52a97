// What the rules of the layers are made of.

/** @typedef {import('dependency-cruiser').IRegularForbiddenRuleType} Rule */

/** @param {string[]} folders */
export const inside = (...folders) => folders.map((folder) => `^${folder}/`);

/** @param {string[]} rooms */
export const core = (...rooms) => inside(...rooms.map((room) => `shared-core/${room}`));

/** @param {string[]} packages */
export const npm = (...packages) => packages.map((name) => `(^|/)node_modules/${name}/`);

export const anyPackage = '(^|/)node_modules/';
export const production = inside('shared-core', 'main', 'renderer');
export const vocabulary = ['^shared-core/(assert-never|result|field-problem|message-of)\\.ts$'];
export const schemas = npm('zod');

/**
 * @param {string} name
 * @param {string} comment
 * @param {Rule['from']} from
 * @param {Rule['to']} to
 * @returns {Rule}
 */
export const forbid = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to });
