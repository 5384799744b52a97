import { describe, expect, it } from 'vitest';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { minutesForSize, type Piece, stagesForSize, TYPICAL_PIECE } from '#core/learned/size-estimate';
import { lengthFromInches as inches } from '#core/units/length';

const round = (across: number, hole: number | null = null, hasSlit = false): Piece => ({
  outline: { shape: 'circle', diameter: inches(across) },
  hole: hole === null ? null : { diameter: inches(hole) },
  hasSlit,
});
const runner: Piece = {
  outline: { shape: 'rectangle', width: inches(16), length: inches(48) },
  hole: null,
  hasSlit: false,
};
const piecing = { kind: 'piecing', estimateMinutes: 600 } as const;

describe('the hours of a stage', () => {
  it('of piecing grow with the area: a 60 in round takes (60/48)² as long, a 16 x 48 in runner 768 of 1,809.6 sq in', () => {
    // 600 * 1.5625 = 937.5; 600 * 768 / 1809.557 = 254.6
    expect(minutesForSize(piecing, TYPICAL_PIECE, round(60, 6, true))).toBe(940);
    expect(minutesForSize(piecing, TYPICAL_PIECE, runner)).toBe(255);
  });

  it('of binding grow with the edge: 128 in around the runner, 150.8 in around the typical round', () => {
    // 150 * 128 / (48 * pi) = 127.3
    const binding = { kind: 'outer-binding', estimateMinutes: 150 } as const;
    expect(minutesForSize(binding, TYPICAL_PIECE, runner)).toBe(130);
  });

  it('of the hole grow with hole and slit', () => {
    // From a hole of 6 in with a slit of 21 in (18.85 + 42 = 60.85 in) to a closed hole of 12 in (37.70 in): 120 * 0.6196 = 74.3
    const inner = { kind: 'inner-binding', estimateMinutes: 120 } as const;
    expect(minutesForSize(inner, TYPICAL_PIECE, round(48, 12))).toBe(75);
  });

  it('of packing for the quilter and of the cut are the same for every size', () => {
    for (const kind of ['longarm', 'center-cut'] as const)
      expect(minutesForSize({ kind, estimateMinutes: 90 }, TYPICAL_PIECE, runner)).toBe(90);
  });

  it('come back when the size comes back, up to their rounding, and are never under a quarter of an hour', () => {
    const there = minutesForSize(piecing, round(48), round(52));
    const back = minutesForSize({ ...piecing, estimateMinutes: there }, round(52), round(48));
    expect(Math.abs(back - 600)).toBeLessThanOrEqual(5);
    expect(minutesForSize(piecing, round(48), round(3))).toBe(15);
  });

  it('of a starting plan are its own for the typical piece', () => {
    for (const { stages } of STARTING_PLANS) expect(stagesForSize(stages, TYPICAL_PIECE)).toEqual(stages);
  });
});
