const quietMs = 2_000;

/** Something that set-up cannot provide by itself: what is missing, and the command that fixes it. */
export class SetupProblem extends Error {
  /**
   * @param {string} what
   * @param {string} fix
   */
  constructor(what, fix) {
    super(`${what}\n  To fix it: ${fix}`);
    this.name = 'SetupProblem';
  }
}

/**
 * Seconds since a moment of `performance.now()`, for people: "0.4 s".
 *
 * @param {number} start
 */
export const secondsSince = (start) => `${((performance.now() - start) / 1000).toFixed(1)} s`;

/**
 * Does one piece of work and prints one line that says how long it took. Slow work prints a line at its start too. Steps
 * may run at the same time, because each line is printed whole.
 *
 * @template T
 * @param {string} title
 * @param {() => Promise<T> | T} work
 * @returns {Promise<T>}
 */
export async function step(title, work) {
  const start = performance.now();
  const announce = setTimeout(() => console.log(`  ${title} ...`), quietMs);
  try {
    const result = await work();
    console.log(`  ${title}: ${secondsSince(start)}`);
    return result;
  } catch (error) {
    console.log(`  ${title}: FAILED after ${secondsSince(start)}`);
    throw error;
  } finally {
    clearTimeout(announce);
  }
}

/**
 * Runs a program of the project: a set-up problem ends it with its message alone, anything else with its stack.
 *
 * @param {() => Promise<number | undefined>} program
 */
export async function runProgram(program) {
  try {
    process.exitCode = (await program()) ?? 0;
  } catch (error) {
    console.error(error instanceof SetupProblem ? `\n${error.message}` : error);
    process.exitCode = 1;
  }
}
