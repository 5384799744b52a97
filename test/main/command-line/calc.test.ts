import { spawnSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { calculators } from '#core/calculators/registry';
import { lengthFromInches } from '#core/units/length';
import { runCalc } from '#main/command-line/run-calc';
import { withTemporaryFolder } from '#test/helpers/temporary-folder';

const calc = (...args: readonly string[]) => runCalc(args);

/** Runs the real program, as `npm run calc` does after set-up. */
function spawnCalc(...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'main/command-line/calc.ts', ...args],
    {
      encoding: 'utf8',
      timeout: 60_000,
      maxBuffer: 64 * 1024 * 1024,
    },
  );
  return { status, stdout, stderr };
}

const json = (text: string) => JSON.parse(text) as Record<string, unknown>;

describe('the calculators on the command line', { timeout: 60_000 }, () => {
  it.each([[['hand-finish', '--text']], [['backing', '{seam: 1}']]])(
    'print and exit as the run of %j says',
    (args) => {
      expect(spawnCalc(...args)).toEqual(calc(...args));
    },
  );

  it('are listed with question and input, each field with its words, limits and default', () => {
    const { status, stdout, stderr } = calc('list');
    expect([status, stderr]).toEqual([0, '']);
    const { about, calculators: listed } = json(stdout) as {
      about: string;
      calculators: { name: string; input: object }[];
    };
    expect(about).toContain('1/320 mm');
    expect(listed.map(({ name }) => name)).toEqual(calculators.map(({ name }) => name));
    expect(listed.find(({ name }) => name === 'backing')?.input).toMatchObject({
      type: 'object',
      properties: {
        fabricWidth: {
          title: 'Usable fabric width',
          default: lengthFromInches(42),
          anyOf: [
            { type: 'integer', minimum: lengthFromInches(4), maximum: lengthFromInches(130) },
            { type: 'string', examples: ['9 1/2 in', '24 cm'] },
          ],
        },
      },
    });
  });

  it('answer as data with the words of the screen beside it', () => {
    const input = { outline: { shape: 'rectangle', width: '50 in', length: '65"' }, safetyExtraPercent: 0 };
    const { status, stdout, stderr } = calc('backing', JSON.stringify(input));
    expect([status, stderr]).toEqual([0, '']);
    const answer = json(stdout);
    expect(answer).toMatchObject({
      calculator: 'backing',
      version: 2,
      input: {
        outline: { width: lengthFromInches(50), length: lengthFromInches(65) },
        seam: lengthFromInches(1 / 2),
      },
      words: {
        figures: [
          'Fabric to buy: 3¼ yd (exactly 116 in)',
          expect.any(String),
          expect.any(String),
          'Cut size of the backing: 58 × 73 in',
          expect.any(String),
        ],
      },
      figures: expect.arrayContaining([
        {
          label: 'Fabric to buy',
          quantity: expect.objectContaining({ exact: lengthFromInches(116) }) as unknown,
        },
      ]) as unknown,
      diagram: { parts: expect.any(Array) as unknown },
      details: { ways: expect.any(Array) as unknown },
    });
  });

  it('take every field that is left out from the sample project', () => {
    const { status, stdout } = calc('hand-finish');
    expect(status).toBe(0);
    expect(json(stdout)['input']).toMatchObject({ outline: { shape: 'hexagon' }, hasSlit: true });
  });

  it('work in the units and the step that are asked for', () => {
    const metric = calc('hole-size', '{}', '--units', 'metric');
    expect([metric.status, metric.stderr]).toEqual([0, '']);
    const { words } = json(metric.stdout) as { words: { figures: readonly string[] } };
    expect(words.figures.join(' ')).toMatch(/ (mm|cm)\b/);
    expect(words.figures.join(' ')).not.toMatch(/ in\b/);
    const square = JSON.stringify({ unit: { unit: 'square', side: '3 1/16 in' } });
    expect(calc('patch-size', square, '--step', '1/16').stdout).toContain('"Cut square: 3 9/16 in"');
    expect(calc('patch-size', square, '--step', '1/4').stdout).toContain(
      '"Cut square: 3¾ in (exactly 3.5625 in)"',
    );
    const bare = calc('patch-size', '{"unit": {"unit": "square", "side": "10"}}', '--units', 'metric');
    expect(json(bare.stdout)['input']).toMatchObject({ unit: { side: 32_000 } });
  });

  it('start from a project in JSON or in a file', async () => {
    const project = {
      outline: { shape: 'circle', diameter: '50 in' },
      settingChanges: { backingOverhang: '3 in' },
    };
    const started = {
      outline: { shape: 'circle', diameter: lengthFromInches(50) },
      overhang: lengthFromInches(3),
    };
    const typed = calc('backing', '--project', JSON.stringify(project));
    expect([typed.status, typed.stderr]).toEqual([0, '']);
    expect(json(typed.stdout)['input']).toMatchObject(started);
    await withTemporaryFolder(async (folder) => {
      const file = join(folder, 'project.json');
      await writeFile(file, JSON.stringify({ ...project, hole: { diameter: '6 in' }, hasSlit: true }));
      const { stdout } = calc('outer-binding', '--project', file);
      expect(json(stdout)['input']).toMatchObject({ hole: { diameter: lengthFromInches(6) }, hasSlit: true });
    });
  });

  it('print what the screen shows, as text', () => {
    const { status, stdout, stderr } = calc('patch-size', '--text');
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toContain(
      'Patch sizes\nWhat size do I cut, and how much fabric does it take?\n\nCut square: 3½ in\n',
    );
    expect(stdout).toMatch(/\nPatches to cut\nDrawn +Patch +Fabric/);
    expect(stdout).toMatch(/\nWorking\n/);
  });

  it.each<[string, readonly string[], string]>([
    [
      'unknown units',
      ['backing', '--units', 'feet'],
      'calc: --units: read "feet", expected inch or metric\n',
    ],
    [
      'an unknown step',
      ['backing', '--step', '1/3'],
      'calc: --step: read "1/3", expected 1/4, 1/8 or 1/16 of an inch\n',
    ],
    [
      'an unknown option',
      ['backing', '--colour'],
      'calc: read --colour, expected --units inch|metric, --step 1/4|1/8|1/16, --project FILE or JSON, --text\n',
    ],
    [
      'a project that is no JSON',
      ['backing', '--project', 'no-such-file'],
      'calc: --project: read "no-such-file", expected a JSON object or a file with one: {"outline": {…}, "hole": {…}, "hasSlit": true}\n',
    ],
    [
      'a project with a fault',
      ['backing', '--project', '{"outline": {"shape": "circle"}}'],
      'calc: --project.outline.diameter: read nothing, expected a length from 1/64 in to 393 11/16 in\n',
    ],
    [
      'a length out of bounds',
      ['backing', '{"seam": "9 ft"}'],
      'backing: seam: read "9 ft", expected a length from 1/16 in to 2 in\n',
    ],
    [
      'a fault in a group',
      ['backing', '{"outline": {"shape": "circle"}}'],
      'backing: outline.diameter: read nothing, expected a length from 1/64 in to 393 11/16 in\n',
    ],
    [
      'several faults',
      ['backing', '{"seam": 0, "printRuns": "up"}'],
      'backing: seam: read 0, expected a length from 1/16 in to 2 in (and 1 more)\n',
    ],
    [
      'an unknown field',
      ['washing', '{"depth\\n": 1}'],
      'washing: depth: read an unknown field, expected one of the fields width, length, quiltingPercent, acrossPercent, alongPercent, wish, sample, cutStep\n',
    ],
    [
      'text that is no JSON',
      ['backing', '{seam: 1}'],
      `backing: read "{seam: 1}", expected a JSON object such as '{"field": "9 1/2 in"}'\n`,
    ],
    ['JSON that is no group', ['backing', '[1]'], 'backing: read a list of 1, expected a group of fields\n'],
    [
      'an input without an answer',
      ['backing', '{"fabricWidth": "4 in", "wideWidth": "4 in", "seam": "2 in"}'],
      'backing: fabricWidth: read {"fabricWidth":"4 in","wideWidth":"4 in…, no answer: Fabric 4 in wide with seam allowances of 2 in would take more than 30 panels. Use wider fabric or a narrower seam.\n',
    ],
  ])('end with 2 and one line for %s', (_what, args, line) => {
    expect(calc(...args)).toEqual({ status: 2, stdout: '', stderr: line });
  });

  it.each([[['no-such-thing']], [['__proto__']], [[]], [['backing', '{}', 'more']], [['list', 'more']]])(
    'end with 2 and one line for the arguments %j',
    (args) => {
      const { status, stdout, stderr } = calc(...args);
      expect([status, stdout]).toEqual([2, '']);
      expect(stderr).toMatch(/^calc: [^\n]+\n$/);
      expect(stderr).toContain('expected');
    },
  );
});
