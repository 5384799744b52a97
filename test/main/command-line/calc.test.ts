import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { calculators } from '#core/calculators/registry';
import { lengthFromInches } from '#core/units/length';

/** Runs the real program, as `npm run calc` does after set-up. */
function calc(...args: readonly string[]) {
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
      version: 1,
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

  it.each<[string, readonly string[], string]>([
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
      'washing: depth: read an unknown field, expected one of the fields width, length, quiltingPercent, acrossPercent, alongPercent, sample, cutStep\n',
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
