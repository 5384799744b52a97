// Stands in for the test tool while the core is mutated: collects the tests of the files that import it instead of running them.
import { format } from 'node:util';

export { expect } from 'vitest';

/** @typedef {(...values: unknown[]) => unknown} Body */
/** @typedef {{ id: string, name: string, file: string, body: () => unknown }} CollectedTest */

/** @type {CollectedTest[]} */
export const collected = [];
/** @type {string[]} */
const suites = [];
let file = '';

/**
 * All tests that `load`, which imports the named test file, defines.
 *
 * @param {string} name
 * @param {() => Promise<unknown>} load
 */
export async function collectFrom(name, load) {
  file = name;
  await load();
}

/**
 * @param {string} name
 * @param {(...values: unknown[]) => void} define
 * @param {readonly unknown[]} values
 */
function suite(name, define, values = []) {
  suites.push(name);
  define(...values);
  suites.pop();
}

/**
 * The body is the one function among the arguments; options such as a timeout are the mutation runner's own business.
 *
 * @param {string} name
 * @param {readonly unknown[]} rest
 * @param {readonly unknown[]} values
 */
function test(name, rest, values = []) {
  const body = rest.find(isBody);
  if (body === undefined) throw new Error(`No test body: ${name}`);
  const full = [...suites, name].join(' ');
  const twins = collected.filter((one) => one.file === file && one.name === full).length;
  const id = [`${file}#${full}`, ...(twins === 0 ? [] : [String(twins)])].join(' ');
  collected.push({ id, name: full, file, body: () => body(...values) });
}

/**
 * @param {unknown} argument
 * @returns {argument is Body}
 */
function isBody(argument) {
  return typeof argument === 'function';
}

/**
 * @param {unknown} row
 * @returns {readonly unknown[]}
 */
function valuesOfRow(row) {
  return Array.isArray(row) ? row : [row];
}

/**
 * @param {string} name
 * @param {unknown} row
 */
function nameOfRow(name, row) {
  const values = valuesOfRow(row);
  const fields = Object.entries(values[0] ?? {}).map(([key, value]) => [`$${key}`, String(value)]);
  const filled = fields.reduce((so, [key = '', value = '']) => so.replaceAll(key, value), name);
  const places = filled.match(/%[sdifjo]/g)?.length ?? 0;
  return format(filled, ...values.slice(0, places));
}

export const describe = Object.assign(
  (/** @type {string} */ name, /** @type {() => void} */ define) => suite(name, define),
  {
    each:
      (/** @type {readonly unknown[]} */ rows) =>
      (/** @type {string} */ name, /** @type {(...values: unknown[]) => void} */ define) =>
        rows.forEach((row) => suite(nameOfRow(name, row), define, valuesOfRow(row))),
  },
);

export const it = Object.assign(
  (/** @type {string} */ name, /** @type {unknown[]} */ ...rest) => test(name, rest),
  {
    each:
      (/** @type {readonly unknown[]} */ rows) =>
      (/** @type {string} */ name, /** @type {unknown[]} */ ...rest) =>
        rows.forEach((row) => test(nameOfRow(name, row), rest, valuesOfRow(row))),
  },
);
export { it as test };
