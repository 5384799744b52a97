import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { build, type Rolldown } from 'vite';
import type { Calculator } from '#core/calculators/calculator';
import type { completeInput } from '#core/calculators/complete-input';
import type { Measurements } from '#core/domain/measurements';
import { anyMeasurements } from '#test/helpers/measurements';

const PROJECTS = 50;
const ROUNDS = 40;
const WARM_UP_ROUNDS = 10;

/** A calculator is to answer within a millisecond, a whole project within five. */
const LIMIT_US = { calculator: 1_000, project: 5_000 };

/** What is measured: the core as it is shipped, bundled and minified, not as the test runner would transform it. */
interface BuiltCore {
  readonly calculators: readonly Calculator[];
  readonly completeInput: typeof completeInput;
}

/** Prints one JSON line a calculator, one for a whole project and one for the size of the bundled core. */
export async function runCoreBench(_args: readonly string[]): Promise<void> {
  const whole = await bundleCore([]);
  const core = await loadCore(whole);
  const projects = fc.sample(anyMeasurements, { seed: 320, numRuns: PROJECTS });
  for (const calculator of core.calculators) {
    const inputs = projects.map((project) => calculator.fromProject(project));
    const times = measure(inputs, (input) => calculator.calculate(input));
    printTimes(calculator.name, times, LIMIT_US.calculator);
  }
  const times = measure(projects, (project) => recalculate(core, project));
  printTimes('project', times, LIMIT_US.project);
  const size = (code: string) => ({ bytes: Buffer.byteLength(code), gzipBytes: gzipSync(code).byteLength });
  console.log(
    JSON.stringify({ name: 'bundle', ...size(whole), withoutZod: size(await bundleCore(['zod'])) }),
  );
}

/** What the notebook does when a project has changed: every calculator's input again, checked, and its answer. */
function recalculate(core: BuiltCore, project: Measurements): void {
  for (const calculator of core.calculators) {
    const completed = core.completeInput(calculator, project, {});
    if (!completed.ok) throw new Error(`${calculator.name}: ${JSON.stringify(completed.error)}`);
    calculator.calculate(completed.value.input);
  }
}

/**
 * Microseconds in rising order, after a warm-up that is not counted. Each is the fastest of three calls in a row, so that what
 * else the machine does meanwhile does not count as the calculator's own time.
 */
function measure<Input>(inputs: readonly Input[], run: (input: Input) => unknown): readonly number[] {
  for (let round = 0; round < WARM_UP_ROUNDS; round += 1) inputs.forEach((input) => run(input));
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const input of inputs) times.push(Math.min(...[1, 2, 3].map(() => timeOf(() => run(input)))));
  }
  return times.sort((a, b) => a - b);
}

function timeOf(run: () => unknown): number {
  const start = process.hrtime.bigint();
  run();
  return Number(process.hrtime.bigint() - start) / 1_000;
}

function printTimes(name: string, times: readonly number[], limitUs: number): void {
  const at = (share: number) => Number((times[Math.floor(share * (times.length - 1))] ?? NaN).toFixed(1));
  console.log(JSON.stringify({ name, medianUs: at(0.5), p99Us: at(0.99), limitUs, samples: times.length }));
}

const ROOT = path.resolve(import.meta.dirname, '../..');
/** Written nowhere: the plugin below hands it over. */
const ENTRY = path.join(ROOT, 'core-entry.js');

async function loadCore(code: string): Promise<BuiltCore> {
  const folder = path.join(ROOT, '.cache', 'bench');
  mkdirSync(folder, { recursive: true });
  const file = path.join(folder, 'core.mjs');
  writeFileSync(file, code);
  return (await import(pathToFileURL(file).href)) as BuiltCore;
}

/** Every file of the core in one minified module: nothing is left out because nobody uses it. */
async function bundleCore(external: string[]): Promise<string> {
  const core = path.join(ROOT, 'shared-core');
  const files = readdirSync(core, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  );
  const entry = [
    `export { calculators } from '#core/calculators/registry';`,
    `export { completeInput } from '#core/calculators/complete-input';`,
    ...files
      .sort()
      .map((file, index) => `export * as m${index} from ${JSON.stringify(path.join(core, file))};`),
  ];
  const output = await build({
    configFile: false,
    logLevel: 'error',
    root: ROOT,
    plugins: [
      {
        name: 'core-entry',
        enforce: 'pre',
        resolveId: (id) => (id === ENTRY ? ENTRY : null),
        load: (id) => (id === ENTRY ? entry.join('\n') : null),
      },
    ],
    build: {
      write: false,
      minify: true,
      // No `lib`: vite leaves the white space of library modules alone.
      rolldownOptions: { input: ENTRY, external, preserveEntrySignatures: 'strict' },
    },
  });
  const outputs = (Array.isArray(output) ? output : [output]) as readonly Rolldown.RolldownOutput[];
  return outputs
    .flatMap((one) => one.output.map((chunk) => (chunk.type === 'chunk' ? chunk.code : '')))
    .join('');
}
