import { describe, expect, it } from 'vitest';
import { fabricNeeded } from '#core/calculators/patches/fabric-needed';
import { patchSize } from '#core/calculators/patches/patch-size/patch-size';
import type { UnitSizes } from '#core/calculators/patches/patch-units';
import { type Length, lengthFromExact, UNITS_PER_INCH, UNITS_PER_YARD } from '#core/units/length';
import { answerOf } from '#test/helpers/answer-of';
import {
  cornerTriangles,
  cutInches,
  detailsOf,
  exactInches,
  geese,
  hst,
  inches,
  patchInput,
  sideTriangles,
} from './bench-input';

const qst = (side: Length): UnitSizes => ({ unit: 'quarter-square-triangles', side });
const exactly = { rounding: 'exact' } as const;

/** Cut sizes of every patch in inches, each with how many of it. */
function cuts(unit: UnitSizes, changes: Parameters<typeof detailsOf>[1] = {}) {
  return detailsOf(unit, changes).patches.map(({ name, across, along, count }) => [
    name,
    across / UNITS_PER_INCH,
    along / UNITS_PER_INCH,
    count,
  ]);
}

describe('the customary add-ons of 7/8 and 1¼ in', () => {
  it('are 0.021447 and 0.042893 in more than the exact add-ons of a quarter-inch seam at every size (derived)', () => {
    for (const side of [1, 2.5, 6, 12.125]) {
      expect(side + 7 / 8 - exactInches(hst(inches(side)))).toBeCloseTo(0.021447, 6);
      expect(side + 1.25 - exactInches(qst(inches(side)))).toBeCloseTo(0.042893, 6);
    }
  });

  it('are the exact add-ons rounded up to an eighth, so both give the same cut (derived)', () => {
    for (let eighths = 4; eighths <= 96; eighths += 7) {
      const side = inches(eighths / 8);
      expect(cutInches(hst(side), undefined, exactly)).toBe(cutInches(hst(side)));
      expect(cutInches(qst(side), undefined, exactly)).toBe(cutInches(qst(side)));
    }
  });

  it('give the same corner squares for whole blocks from 3 to 16 in (derived)', () => {
    for (let block = 3; block <= 16; block += 1) {
      const corner = cornerTriangles(inches(block));
      expect(cutInches(corner, undefined, exactly)).toBe(cutInches(corner));
    }
  });

  it('are not rounded to the nearest eighth, which would cut 12½ in for 8 in blocks that need 12.521 in (derived)', () => {
    for (const rounding of ['customary', 'exact'] as const)
      expect(cutInches(sideTriangles(inches(8)), undefined, { rounding })).toBeGreaterThanOrEqual(12.521);
  });

  // Published: NHQ cut another quarter inch to trim: 3 in from 4 1/8 and 4 1/2, trimmed to 3 1/2.
  it('finish at the same size as cutting a quarter inch larger and trimming (common practice)', () => {
    expect(cutInches(hst(inches(3)))).toBe(4.125 - 0.25);
    expect(cutInches(qst(inches(3)))).toBe(4.5 - 0.25);
    const trimmed = detailsOf({ unit: 'square', side: inches(3.5) }, { sizesAre: 'cut' });
    expect(trimmed.finishedWidth).toBe(inches(3));
  });

  // Common practice: 6 × 1.414 = 8.484, up to the next quarter 8 1/2 for trimming room.
  it('are rounded up to a coarser step: 8.484 in becomes 8½ in, and 8½ + 1¼ in is cut', () => {
    const quarter = { ...exactly, cutStep: inches(1 / 4) };
    expect(cutInches(sideTriangles(inches(6)), undefined, quarter)).toBe(9.75);
  });
});

describe('sizes entered as cut', () => {
  it('are never added to, whatever the habit and the step', () => {
    const given = { sizesAre: 'cut', count: 40 } as const;
    for (const side of [5, 5.0625]) {
      for (const atATime of ['two', 'four', 'eight'] as const) {
        const unit: UnitSizes = { unit: 'half-square-triangles', side: inches(side), atATime };
        expect(detailsOf(unit, given).patches.map(({ across, along }) => [across, along])).toEqual([
          [inches(side), inches(side)],
          [inches(side), inches(side)],
        ]);
      }
      const quarters = detailsOf(qst(inches(side)), given);
      expect(quarters.patches[0]!.across).toBe(inches(side));
      expect(quarters.patchList[0]!.width).toBe(inches(side));
    }
  });
});

describe('a star of geese', () => {
  it('has its geese trimmed, not the block, which would lose its points', () => {
    const tip = answerOf(patchSize, patchInput({ unit: 'geese-star', side: inches(8) })).notes.find(
      ({ says }) => says.includes('Trim'),
    );
    expect(tip?.says).toContain('each flying-geese unit');
    expect(tip?.values).toEqual({
      width: expect.objectContaining({ rounded: inches(4.5) }) as unknown,
      length: expect.objectContaining({ rounded: inches(2.5) }) as unknown,
    });
  });
});

describe('units with well-known sizes', () => {
  it('stitch-and-flip geese of 2 by 4 in are cut 2½ by 4½ in with two 2½ in squares (common practice)', () => {
    const unit: UnitSizes = { unit: 'flying-geese', height: inches(2), method: 'stitch-and-flip' };
    expect(cuts(unit)).toEqual([
      ['Rectangle', 2.5, 4.5, 1],
      ['Corner square', 2.5, 2.5, 2],
    ]);
  });

  it('an 8 in star of geese has a center of 4½, corners of 2½ and geese from squares of 5¼ and 2⅞ in (common practice)', () => {
    expect(cuts({ unit: 'geese-star', side: inches(8) })).toEqual([
      ['Center square', 4.5, 4.5, 1],
      ['Corner square', 2.5, 2.5, 4],
      ['Large square', 5.25, 5.25, 1],
      ['Small square', 2.875, 2.875, 4],
    ]);
    expect(cutInches(geese(inches(2)), 'Large square')).toBe(5.25);
  });

  it('a 9 in nine-patch star has squares of 3½ in and triangles from two pairs of 4¼ in squares (common practice)', () => {
    expect(cuts({ unit: 'hourglass-star', side: inches(9) })).toEqual([
      ['Center square', 3.5, 3.5, 1],
      ['Corner square', 3.5, 3.5, 4],
      ['Square for triangles', 4.25, 4.25, 2],
      ['Square to go with it', 4.25, 4.25, 2],
    ]);
  });

  it('half-rectangle triangles twice as long as wide add 11/16 and 1 5/16 in (from memory; exact 0.6545 and 1.3090 in)', () => {
    const unit: UnitSizes = { unit: 'half-rectangle-triangles', width: inches(2), length: inches(4) };
    const [cut] = detailsOf(unit, { cutStep: inches(1 / 16) }).patches;
    expect([cut!.across, cut!.along]).toEqual([inches(2 + 11 / 16), inches(4 + 1 + 5 / 16)]);
    expect(exactInches(unit)).toBeCloseTo(2.6545, 4);
    expect(cut!.alongExact / UNITS_PER_INCH).toBeCloseTo(5.309, 4);
  });

  it('a unit in two rounds finishes at twice its center: a 7 in block has a center cut at 4 in (common practice)', () => {
    // The first round finishes at 3 1/2 in × √2, the second at that × √2 again.
    const center = (side: number) =>
      exactInches({ unit: 'square-in-a-square', side: inches(side) }, 'Center square');
    expect(center(3.5 * Math.SQRT2)).toBeCloseTo(4, 3);
    expect(center(7)).toBeCloseTo(3.5 * Math.SQRT2 + 0.5, 9);
  });

  it('the diamonds of a 6 in star are 1¾ in on the ruler, those of its inner square of 4.2222 in 1¼ (published: COL)', () => {
    const diamond = (block: number) =>
      exactInches({ unit: 'eight-point-star', side: inches(block) }, 'Corner square') - 0.5;
    expect(Math.round(diamond(6) * 8) / 8).toBe(1.75);
    expect(Math.abs(diamond(4.2222) - 1.2367)).toBeLessThan(0.0005);
    expect(Math.round(diamond(4.2222) * 8) / 8).toBe(1.25);
  });

  it('half a hexagon is cut from half its strip plus a seam, and is 2s√3 longer than from point to point (derived)', () => {
    const half: UnitSizes = { unit: 'half-hexagon', side: inches(2) };
    const whole = exactInches({ unit: 'hexagon', side: inches(2) });
    expect(exactInches(half)).toBeCloseTo((whole - 0.5) / 2 + 0.5, 9);
    expect(detailsOf(half).patches[0]!.alongExact / UNITS_PER_INCH).toBeCloseTo(4.866, 4);
  });

  it('3 in kites are cut 3.6830 by 4.2528 in for six around a point, and 2.9494 in wide for eight (derived)', () => {
    const kite = (round: 'six' | 'eight'): UnitSizes => ({ unit: 'kite', longSide: inches(3), round });
    expect(exactInches(kite('six'))).toBeCloseTo(3.683, 4);
    expect(detailsOf(kite('six')).patches[0]!.alongExact / UNITS_PER_INCH).toBeCloseTo(4.2528, 4);
    expect(exactInches(kite('eight'))).toBeCloseTo(2.9494, 4);
  });

  it('a 45° diamond has a cut side 0.7071 in longer than its finished side with quarter-inch seams (derived)', () => {
    const [diamond] = detailsOf({ unit: 'diamond', side: inches(2), angle: '45' }).patches;
    expect(diamond!.alongExact / UNITS_PER_INCH).toBeCloseTo(2.7071, 4);
  });
});

describe('courthouse steps', () => {
  const steps = (more: Partial<Extract<UnitSizes, { unit: 'courthouse-steps' }>>): UnitSizes => ({
    unit: 'courthouse-steps',
    center: inches(2),
    firstStrip: inches(1),
    secondStrip: inches(1),
    rounds: 2,
    ...more,
  });
  const cutSizes = (unit: UnitSizes) =>
    detailsOf(unit, exactly).patches.map(({ count, across, along }) =>
      [count, across / UNITS_PER_INCH, along / UNITS_PER_INCH].join(' × '),
    );

  // By hand: 2, then 4 in high and 4 in wide, then 6 in high and 6 in wide. Top and bottom are as long as the width before
  // them, the sides as the height with top and bottom; each with 1/4 in at every edge.
  it('of 1 in strips around 2 in: two strips of each length, 6 in after two rounds (derived)', () => {
    expect(cutSizes(steps({}))).toEqual([
      '1 × 2.5 × 2.5',
      '2 × 1.5 × 2.5',
      '2 × 1.5 × 4.5',
      '2 × 1.5 × 4.5',
      '2 × 1.5 × 6.5',
    ]);
    const { finishedWidth, finishedLength } = detailsOf(steps({}), exactly);
    expect([finishedWidth, finishedLength]).toEqual([inches(6), inches(6)]);
  });

  it('of strips of two widths are taller than wide, or the other way around (derived)', () => {
    const unit = steps({ firstStrip: inches(2), secondStrip: inches(1), rounds: 1 });
    expect(cutSizes(unit)).toEqual(['1 × 2.5 × 2.5', '2 × 2.5 × 2.5', '2 × 1.5 × 6.5']);
    const { finishedWidth, finishedLength } = detailsOf(unit, exactly);
    expect([finishedWidth, finishedLength]).toEqual([inches(4), inches(6)]);
  });
});

describe('borders and strips', () => {
  const top = { topWidth: inches(70), topLength: inches(86), border: inches(6.5) };

  it('around 70 by 86 in, 6½ in wide, are 338 in long when finished (published: LES)', () => {
    const { patches } = detailsOf({ unit: 'butted-border', ...top, corners: 'butted' }, exactly);
    const run = patches.reduce((sum, { along, count }) => sum + count * (along / UNITS_PER_INCH - 0.5), 0);
    expect(run).toBe(338);
  });

  it('go across the side borders: top and bottom are the width plus two borders plus ½ in (published: ANN)', () => {
    const { patches } = detailsOf({ unit: 'butted-border', ...top, corners: 'butted' }, exactly);
    expect(patches.map(({ along }) => along / UNITS_PER_INCH)).toContain(70 + 2 * 6.5 + 0.5);
  });

  it('mitered need at least 0.7071 in more than the raw side plus two finished widths (derived)', () => {
    const [side] = detailsOf({ unit: 'mitered-border', ...top }, exactly).patches;
    expect(side!.alongExact / UNITS_PER_INCH - (86.5 + 2 * 6.5)).toBeCloseTo(0.7071, 4);
  });

  it('forty strips of 2½ in are 100 in, which is 2⅞ yd when bought (common practice)', () => {
    const strips = {
      fabric: 'Blue',
      name: 'Strip',
      stripWidth: inches(2.5),
      along: { first: inches(42), pitch: inches(42), count: 40 },
      isRectangle: true,
      mayTurn: false,
      mayJoin: false,
    };
    const answer = fabricNeeded([strips], inches(42), inches(1 / 4));
    const length = answer.ok ? answer.value.strips[0]!.length : 0;
    expect(length).toBe(inches(100));
    expect(length / UNITS_PER_YARD).toBeCloseTo(2.78, 2);
    expect(lengthFromExact(length, 'up', inches(4.5))).toBe(inches(36 * 2.875));
  });
});
