import { runCalc } from './run-calc';

const { status, stdout, stderr } = runCalc(process.argv.slice(2));
process.stdout.write(stdout);
process.stderr.write(stderr);
process.exitCode = status;
