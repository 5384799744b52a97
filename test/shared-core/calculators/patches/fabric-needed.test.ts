import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fabricNeeded, type PatchDemand } from '#core/calculators/patches/fabric-needed';
import { patchesPerStrip, stripsToCut, stripsToJoin } from '#core/calculators/patches/fill-strips';
import { formatSentence } from '#core/calculators/format-quantity';
import { patchSize } from '#core/calculators/patches/patch-size/patch-size';
import type { PatchSizeInput } from '#core/calculators/patches/patch-size/input';
import type { UnitSizes } from '#core/calculators/patches/patch-units';
import { lengthFromUnits } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { detailsOf, inches, patchInput } from './bench-input';

function demand(width: number, length: number, count: number, more: Partial<PatchDemand> = {}): PatchDemand {
  return {
    fabric: 'Blue',
    name: 'Patch',
    stripWidth: inches(width),
    along: { first: inches(length), pitch: inches(length), count },
    isRectangle: true,
    mayTurn: true,
    mayJoin: false,
    ...more,
  };
}

const usable = inches(42);
const seam = inches(1 / 4);

function needed(demands: readonly PatchDemand[]) {
  const answer = fabricNeeded(demands, usable, seam);
  if (!answer.ok) throw new Error(answer.error.code);
  return answer.value;
}

describe('patches from one strip', () => {
  it('are rounded down: eight of 5 in from 42 in, none of 43 in, one of exactly 42 in (derived)', () => {
    const from = (length: number) =>
      patchesPerStrip({ first: inches(length), pitch: inches(length) }, usable);
    expect([from(5), from(43), from(42), from(21)]).toEqual([8, 0, 1, 2]);
  });

  // Common practice: triangles 5 in high with sides of 4.91 in; 40 in have room for eight on each side.
  it('count neighbors that are turned upside down by their pitch', () => {
    expect(patchesPerStrip({ first: inches(4.91), pitch: inches(4.91) }, inches(40))).toBe(8);
    expect(patchesPerStrip({ first: inches(4.91), pitch: inches(4.91 / 2) }, inches(40))).toBe(15);
  });
});

describe('strips', () => {
  it('are shared by shapes of one height, as the shopping list lays them (derived)', () => {
    // By hand: wedges that take 8 in, then 5 in more each. Two are 13 in and three 18 in long: 31 of 42 in. The four patches of
    // 10 in after them fit one beside the wedges and three in a second strip.
    const wedges = (count: number) =>
      demand(6, 8, count, {
        name: `${String(count)} wedges`,
        isRectangle: false,
        along: { first: inches(8), pitch: inches(5), count },
      });
    const both = needed([wedges(2), wedges(3)]);
    expect(both.strips).toMatchObject([{ strips: 1, width: inches(6), length: inches(6) }]);
    expect(both.patches.map(({ width, count }) => [width, count])).toEqual([
      [inches(13), 1],
      [inches(18), 1],
    ]);
    expect(needed([wedges(2), wedges(3), demand(6, 10, 4)]).strips).toMatchObject([{ strips: 2 }]);
    // Nine wedges: one strip of seven, 8 + 6 · 5 = 38 in, and one for the other two, which is kept as long as the first.
    expect(needed([wedges(9)]).patches).toMatchObject([{ width: inches(38), length: inches(6), count: 2 }]);
  });

  it('for one length are the count divided by the patches of one strip, rounded up', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 42 }), fc.integer({ min: 1, max: 500 }), (length, count) => {
        const strips = stripsToCut([{ first: length, pitch: length, count }], 42);
        expect(strips).toBe(Math.ceil(count / Math.floor(42 / length)));
      }),
    );
  });

  it('for mixed lengths are never fewer than the fabric needs, and never more than each length by itself takes', () => {
    const anyPieces = fc.array(
      fc.record({ first: fc.integer({ min: 1, max: 42 }), count: fc.integer({ min: 1, max: 60 }) }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(anyPieces, (kinds) => {
        const pieces = kinds.map((kind) => ({ ...kind, pitch: kind.first }));
        const strips = stripsToCut(pieces, 42)!;
        const least = pieces.reduce((sum, { first, count }) => sum + first * count, 0) / 42;
        const apart = pieces.reduce((sum, piece) => sum + stripsToCut([piece], 42)!, 0);
        expect(strips).toBeGreaterThanOrEqual(Math.ceil(least));
        expect(strips).toBeLessThanOrEqual(apart);
      }),
    );
  });

  it('are filled with the longest patches first, in any order of the list', () => {
    // 30 and 12 share a strip twice; the three of 10 then take one more. In the order listed below it would be four.
    const pieces = [
      { first: 10, pitch: 10, count: 3 },
      { first: 12, pitch: 12, count: 2 },
      { first: 30, pitch: 30, count: 2 },
    ];
    expect(stripsToCut(pieces, 42)).toBe(3);
    expect(stripsToCut([...pieces].reverse(), 42)).toBe(3);
  });

  it('are null if a patch is too long for them', () => {
    expect(stripsToCut([{ first: 43, pitch: 43, count: 1 }], 42)).toBeNull();
    const mixed = [5, 43].map((first) => ({ first, pitch: first, count: 1 }));
    expect(stripsToCut(mixed, 42)).toBeNull();
    expect(stripsToJoin([{ first: 43, pitch: 43, count: 1 }], 1, 0.5)).toBeNull();
  });

  // Negative check of a printed slip: 8 x 8 patches, two each way: 124 for 128, 4 strips of 42 for 4.29, so 5.
  it('are five of 42 in to join 180 in, not four (derived)', () => {
    expect(stripsToJoin([{ first: 180, pitch: 180, count: 1 }], 42, 0)).toBe(5);
  });

  it('lose half an inch to every join with quarter-inch seams (derived)', () => {
    // Four strips give 4 x 42 - 3 x 1/2 = 166.5 in.
    expect(stripsToJoin([{ first: 166.5, pitch: 166.5, count: 1 }], 42, 0.25)).toBe(4);
    expect(stripsToJoin([{ first: 166.6, pitch: 166.6, count: 1 }], 42, 0.25)).toBe(5);
  });
});

describe('fabric', () => {
  it('shares strips of one width among all patches of a fabric', () => {
    const { strips } = needed([demand(2.5, 30, 2), demand(2.5, 12, 2), demand(2.5, 5, 3, { fabric: 'Red' })]);
    expect(strips.map(({ fabric, strips: count, length }) => [fabric, count, length])).toEqual([
      ['Blue', 2, inches(5)],
      ['Red', 1, inches(2.5)],
    ]);
  });

  it('is cut along its length for a patch that is wider, and if that saves fabric', () => {
    expect(needed([demand(4, 50, 3)]).strips[0]).toMatchObject({
      width: inches(50),
      strips: 1,
      isJoined: false,
    });
    expect(needed([demand(4, 22, 10)]).strips[0]).toMatchObject({ width: inches(22), strips: 1 });
    expect(needed([demand(4, 22, 2)]).strips[0]).toMatchObject({ width: inches(4), strips: 2 });
  });

  it('is never turned for a directional print', () => {
    expect(needed([demand(4, 22, 10, { mayTurn: false })]).strips[0]).toMatchObject({
      width: inches(4),
      strips: 10,
    });
    const answer = fabricNeeded([demand(4, 50, 3, { mayTurn: false })], usable, seam);
    expect(answer).toMatchObject({ ok: false, error: { code: 'wider-than-fabric' } });
  });

  it('is joined for borders, with the strips in the list', () => {
    const { strips, patches } = needed([
      demand(4.5, 60, 2, { mayJoin: true }),
      demand(4.5, 50, 2, { mayJoin: true }),
    ]);
    expect(strips).toEqual([
      { fabric: 'Blue', width: inches(4.5), strips: 6, length: inches(27), isJoined: true },
    ]);
    expect(patches).toEqual([
      { fabric: 'Blue', width: usable, length: inches(4.5), count: 6, mayTurn: true },
    ]);
  });
});

describe('fabric that is refused', () => {
  it('is narrower than a patch, which is named', () => {
    const answer = patchSize.calculate(patchInput({ unit: 'square', side: inches(60) }));
    if (answer.ok) throw new Error('It was cut');
    const style = {
      display: { system: 'inch', inchStep: 8 },
      currency: currencyFromCode('EUR'),
      locale: 'en',
    } as const;
    expect(answer.error.field).toEqual(['fabricWidth']);
    expect(formatSentence(answer.error, style)).toBe(
      'Square: 60½ in by 60½ in is too wide for the fabric, which is 42 in wide.',
    );
  });

  it('is longer than 250 m', () => {
    const answer = patchSize.calculate(patchInput({ unit: 'square', side: inches(40) }, { count: 5_000 }));
    expect(answer).toMatchObject({ ok: false, error: { code: 'too-much-fabric', field: ['count'] } });
  });
});

describe('notes', () => {
  const triangles = { unit: 'half-square-triangles', side: inches(3), atATime: 'two' } as const;
  const notesFor = (
    seamAllowance = seam,
    unit: UnitSizes = triangles,
    more: Partial<PatchSizeInput> = {},
  ) => {
    const answer = patchSize.calculate(patchInput(unit, { seamAllowance, ...more }));
    return answer.ok ? answer.value.notes.map(({ kind, says }) => `${kind}: ${says}`) : [];
  };

  it('say that 7/8 in and 1¼ in are only for a quarter-inch seam', () => {
    expect(notesFor().some((note) => note.startsWith('warning'))).toBe(false);
    expect(notesFor(inches(3 / 8)).filter((note) => note.startsWith('warning'))).toHaveLength(1);
  });

  it('say so only for a unit with such a patch, and not if exact sizes are wanted', () => {
    const wide = inches(3 / 8);
    const warns = (...asked: Parameters<typeof notesFor>) =>
      notesFor(...asked).some((note) => note.startsWith('warning'));
    expect(warns(wide, { unit: 'on-point-set', block: inches(6), across: 3, down: 2 })).toBe(true);
    expect(warns(wide, { unit: 'square', side: inches(3) })).toBe(false);
    expect(warns(wide, triangles, { rounding: 'exact' })).toBe(false);
  });

  it('say to trim only if the cut size was rounded up', () => {
    expect(notesFor().some((note) => note.includes('Trim it to {width} by {length}'))).toBe(true);
    const plain = patchSize.calculate(patchInput({ unit: 'square', side: inches(3) }));
    expect(plain.ok && plain.value.notes.every(({ kind }) => kind === 'caution')).toBe(true);
  });
});

it('counts cuts through one layer: a strip, its squared end, five crosscuts and a diagonal each', () => {
  const unit = { unit: 'corner-setting-triangles', block: inches(6) } as const;
  // Ten triangles from five squares in one strip: two cuts for the strip, one to square its end, five across, five diagonals.
  expect(detailsOf(unit, { count: 10 }).cuts).toBe(2 + 1 + 5 + 5);
});

it('works with a size of one unit', () => {
  const sliver = patchSize.calculate(patchInput({ unit: 'square', side: lengthFromUnits(1) }));
  expect(sliver.ok).toBe(true);
});
