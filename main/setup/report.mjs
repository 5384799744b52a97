const quietMs = 2_000;

/** Something that set-up cannot provide by itself: what is missing, and the command that mends it. */
export class SetupProblem extends Error {
  /**
   * @param {string} what
   * @param {string} mend
   */
  constructor(what, mend) {
    super(`${what}\n  To mend it: ${mend}`);
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
 * Does one piece of work on one line of output: its title, a dot for every two seconds it takes, its time.
 *
 * @template T
 * @param {string} title
 * @param {() => Promise<T> | T} work
 * @returns {Promise<T>}
 */
export async function step(title, work) {
  const start = performance.now();
  process.stdout.write(`  ${title} `);
  const dots = setInterval(() => process.stdout.write('.'), quietMs);
  try {
    const result = await work();
    process.stdout.write(` ${secondsSince(start)}\n`);
    return result;
  } catch (error) {
    process.stdout.write(` failed after ${secondsSince(start)}\n`);
    throw error;
  } finally {
    clearInterval(dots);
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
