import { runCalc } from './run-calc';

const { status, stdout, stderr } = runCalc(process.argv.slice(2));
// Whoever reads may stop early, as `head` does; the rest is then of no use.
process.stdout.on('error', ({ code }: NodeJS.ErrnoException) => process.exit(code === 'EPIPE' ? 0 : 1));
process.stdout.write(stdout);
process.stderr.write(stderr);
process.exitCode = status;
