import { parseArgs } from 'node:util';
import type { CuttingRule } from '#core/cutting/tree/cut-plan';

export type Orientation = 'rotatable' | 'fixed';

export interface BenchOptions {
  /** A folder of instance files, or `fabric-jobs` for the seeded jobs. */
  readonly folder: string;
  readonly seconds: number;
  readonly orientation: Orientation;
  readonly rule: CuttingRule;
  readonly layouts: string | undefined;
  /** `cpu` counts the processor time of this process, for a machine that is busy otherwise; `wall` is elapsed time. */
  readonly clock: 'wall' | 'cpu';
  readonly only: RegExp;
}

const usage =
  'cutting FOLDER|fabric-jobs [--seconds 2] [--orientation rotatable|fixed] [--rule guillotine|2-stage] ' +
  '[--layouts OUTFOLDER] [--clock wall|cpu] [--only NAME]';

/** Reads the command line; throws an error with the usage if it is not valid. */
export function readBenchOptions(args: readonly string[]): BenchOptions {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      seconds: { type: 'string', default: '2' },
      orientation: { type: 'string', default: 'rotatable' },
      rule: { type: 'string', default: 'guillotine' },
      layouts: { type: 'string' },
      clock: { type: 'string', default: 'wall' },
      only: { type: 'string', default: '' },
    },
  });
  const [folder] = positionals;
  const seconds = Number(values.seconds);
  const { orientation, rule, clock } = values;
  const isValid =
    (orientation === 'rotatable' || orientation === 'fixed') &&
    (rule === 'guillotine' || rule === '2-stage') &&
    (clock === 'wall' || clock === 'cpu');
  if (folder === undefined || !isValid || !(seconds > 0)) throw new Error(`Usage: npm run bench -- ${usage}`);
  return {
    folder,
    seconds,
    orientation,
    rule,
    clock,
    layouts: values.layouts,
    only: new RegExp(values.only),
  };
}

/** Milliseconds of the clock in the options. */
export function benchClock(clock: BenchOptions['clock']): () => number {
  return clock === 'wall' ? () => performance.now() : () => process.cpuUsage().user / 1000;
}
