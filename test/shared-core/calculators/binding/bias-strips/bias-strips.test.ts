import { describe, expect, it } from 'vitest';
import { biasStrips } from '#core/calculators/binding/bias-strips/bias-strips';
import type { BiasStripsInput } from '#core/calculators/binding/bias-strips/input';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromExact, lengthFromInches as inches } from '#core/units/length';

const starting = (change: Partial<BiasStripsInput> = {}): BiasStripsInput => ({
  ...biasStrips.fromProject({
    outline: { shape: 'square', side: inches(38.5) },
    hole: null,
    hasSlit: false,
    settings: STARTING_SETTINGS,
  }),
  ...change,
});
const answer = (change: Partial<BiasStripsInput> = {}) => {
  const result = biasStrips.calculate(starting(change));
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};

/** All the strip that a piece of this length gives, in whole units. */
const answerGives = (length: number) =>
  lengthFromExact(answer({ pieceLength: inches(length) }).details.gives, 'down');

describe('bias strips from a piece of fabric', () => {
  it('start from half a yard of fabric of the usual width and the length of the binding', () => {
    expect(starting()).toMatchObject({
      pieceWidth: inches(42),
      pieceLength: inches(18),
      needed: inches(154 + 12),
    });
  });

  it('say whether they are enough, and by how much', () => {
    const enough = answer();
    expect(enough.details.isEnough).toBe(true);
    expect(enough.figures[2]).toMatchObject({ label: 'Left over' });
    const short = answer({ needed: inches(400) });
    expect(short.details.isEnough).toBe(false);
    expect(short.figures[2]).toMatchObject({ label: 'Short by' });
  });

  it('name the shortest fabric that is enough, and half an inch less is not', () => {
    const { leastFabricLength } = answer({ needed: inches(400) }).details;
    expect(answer({ needed: inches(400), pieceLength: leastFabricLength! }).details.isEnough).toBe(true);
    const shorter = inches(leastFabricLength! / inches(1) - 1 / 2);
    expect(answer({ needed: inches(400), pieceLength: shorter }).details.isEnough).toBe(false);
  });

  it('ask the shopping list and the cutting plan for the same fabric, never for more than a piece that is enough', () => {
    for (const length of [12, 17.2, 18, 30]) {
      for (const needed of [60, 166, 300]) {
        const input = starting({ pieceLength: inches(length), needed: inches(needed) });
        const { details } = answer(input);
        const [need] = biasStrips.needs!(input, details, inches(42));
        const [cut] = biasStrips.cuts!(input, details);
        const { patches } = need!.amount as { patches: readonly { width: number; length: number }[] };
        expect([cut?.width, cut?.length]).toEqual([patches[0]?.width, patches[0]?.length]);
        if (details.isEnough) expect(cut!.length).toBeLessThanOrEqual(inches(length));
      }
    }
    // The next half inch after 17 1/4 in is 17 1/2: the piece itself is asked for.
    const close = starting({ pieceLength: inches(17.25), needed: answerGives(17.25) });
    expect(biasStrips.cuts!(close, answer(close).details)).toMatchObject([{ length: inches(17.25) }]);
  });

  it('list every strip once, the longest first', () => {
    const { details, tables } = answer();
    const rows = tables[0]!.rows.map(([count, length]) => [
      count?.kind === 'count' ? count.rounded : 0,
      length?.kind === 'length' ? length.exact : 0,
    ]);
    expect(rows.reduce((sum, [count = 0]) => sum + count, 0)).toBe(details.strips.length);
    expect(rows.map(([, length]) => length)).toEqual(
      rows.map(([, length = 0]) => length).sort((a, b) => b - a),
    );
  });

  it('draw every strip on the fabric', () => {
    const { details, diagram } = answer();
    const drawn = diagram!.parts.filter((part) => part.part === 'polygon' && part.tone !== 'leftover');
    expect(drawn).toHaveLength(details.strips.length);
  });

  it('are refused when none fits, and when there would be more than any binding', () => {
    expect(biasStrips.calculate(starting({ pieceWidth: inches(3), pieceLength: inches(3) }))).toMatchObject({
      ok: false,
      error: { code: 'fabric-too-small', field: ['pieceLength'] },
    });
    const vast = { pieceWidth: inches(390), pieceLength: inches(390), stripWidth: inches(1 / 2) };
    expect(biasStrips.calculate(starting(vast))).toMatchObject({
      ok: false,
      error: { code: 'too-much-strip' },
    });
  });
});
