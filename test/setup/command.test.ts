import { describe, expect, test } from 'vitest';
import { isOnPath, lastLines, run } from '#setup/command';
import { SetupProblem } from '#setup/report';

const node = (script: string, timeoutMs?: number): ReturnType<typeof run> =>
  run(process.execPath, ['-e', script], timeoutMs === undefined ? {} : { timeoutMs });

describe('a program run by set-up', () => {
  test('gives its exit code and all that it printed', async () => {
    const { code, output } = await node("console.log('out'); console.error('err'); process.exitCode = 3");
    expect(code).toBe(3);
    expect(output.split('\n').sort()).toEqual(['', 'err', 'out']);
  });

  test('is stopped at its time limit, and then has no exit code', async () => {
    expect(await node('setInterval(() => {}, 1000)', 200)).toMatchObject({ code: null });
  });

  test('that does not exist is a failure, not a crash', async () => {
    expect(await run('no-such-program-here', [])).toMatchObject({ code: null });
    expect(isOnPath('no-such-program-here')).toBe(false);
  });

  test('is quoted by its last lines', () => {
    expect(lastLines('a\nb\nc\n', 2)).toBe('b\nc');
  });
});

test('a set-up problem says what is missing and what fixes it', () => {
  expect(new SetupProblem('No compiler.', 'apt-get install g++').message).toBe(
    'No compiler.\n  To fix it: apt-get install g++',
  );
});
