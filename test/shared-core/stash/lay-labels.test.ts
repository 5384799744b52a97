import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelSheetSchema, type LabelSheet, STARTING_LABEL_SHEET } from '#core/domain/label-sheet';
import { PAPERS } from '#core/domain/paper';
import { layLabels } from '#core/stash/lay-labels';
import { lengthFromInches, lengthFromUnits } from '#core/units/length';

const units = (minimum: number, maximum: number) =>
  fc.integer({ min: minimum * 8_128, max: maximum * 8_128 }).map(lengthFromUnits);

const sheet: fc.Arbitrary<LabelSheet> = fc.record({
  across: fc.integer({ min: 1, max: 4 }),
  down: fc.integer({ min: 1, max: 8 }),
  width: units(1.25, 3),
  height: units(0.75, 2),
  gapAcross: units(0, 1),
  gapDown: units(0, 1),
  left: units(0, 1),
  top: units(0, 1),
});
const paper = fc.constantFrom('letter' as const, 'a4' as const);

describe('labels on sheets', () => {
  it('lays every label once, in order, without overlap and on the paper, or reports what is too large', () => {
    fc.assert(
      fc.property(sheet, paper, fc.nat(40), fc.integer({ min: 1, max: 32 }), (layout, on, count, start) => {
        const laid = layLabels(layout, on, count, start);
        const { across, down, width, height } = layout;
        if (!laid.ok) {
          const right = layout.left + across * width + (across - 1) * layout.gapAcross;
          const bottom = layout.top + down * height + (down - 1) * layout.gapDown;
          const isTooLarge = right > PAPERS[on].width || bottom > PAPERS[on].height;
          expect(isTooLarge || start > across * down).toBe(true);
          return;
        }
        expect(laid.value.flat().map(({ index }) => index)).toEqual([...Array(count).keys()]);
        for (const labels of laid.value) {
          for (const [place, { x, y }] of labels.entries()) {
            expect(x >= 0 && x + width <= PAPERS[on].width).toBe(true);
            expect(y >= 0 && y + height <= PAPERS[on].height).toBe(true);
            for (const other of labels.slice(place + 1)) {
              const isClear = Math.abs(other.x - x) >= width || Math.abs(other.y - y) >= height;
              expect(isClear).toBe(true);
            }
          }
        }
      }),
    );
  });

  it('skips the used labels of the first sheet', () => {
    const laid = layLabels(STARTING_LABEL_SHEET, 'letter', 13, 5);
    if (!laid.ok) throw new Error(laid.error.code);
    expect(laid.value.map((labels) => labels.length)).toEqual([11, 2]);
    const { left, top, width, height, gapAcross, gapDown } = STARTING_LABEL_SHEET;
    expect(laid.value[0]?.[0]).toEqual({
      index: 0,
      x: left + width + gapAcross,
      y: top + height + gapDown,
    });
    expect(laid.value[1]?.[0]).toEqual({ index: 11, x: left, y: top });
  });

  it('reports by how much a grid is too large, and how many labels a sheet has', () => {
    const wide = { ...STARTING_LABEL_SHEET, across: 4 };
    expect(layLabels(wide, 'letter', 1, 1)).toEqual({
      ok: false,
      error: { code: 'too-wide', over: lengthFromInches(2.25) },
    });
    const tall = { ...STARTING_LABEL_SHEET, down: 6 };
    expect(layLabels(tall, 'letter', 1, 1)).toEqual({
      ok: false,
      error: { code: 'too-tall', over: lengthFromInches(0.875) },
    });
    expect(layLabels(STARTING_LABEL_SHEET, 'a4', 1, 16)).toEqual({
      ok: false,
      error: { code: 'starts-beyond', onASheet: 15 },
    });
  });

  it('has a starting sheet that fits both papers and the schema', () => {
    expect(labelSheetSchema.safeParse(STARTING_LABEL_SHEET).success).toBe(true);
    expect(layLabels(STARTING_LABEL_SHEET, 'a4', 15, 1).ok).toBe(true);
    expect(layLabels(STARTING_LABEL_SHEET, 'letter', 15, 1).ok).toBe(true);
  });
});
