import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type CenterTemplateInput,
  planCenterTemplate,
} from '#core/calculators/center/center-template/center-template';
import type { DiagramPart } from '#core/calculators/diagram';
import {
  lengthFromInches as inches,
  lengthFromMillimeters,
  UNITS_PER_INCH,
  UNITS_PER_MILLIMETER,
} from '#core/units/length';
import { asked, plan } from './asked-template';

const anyInput: fc.Arbitrary<CenterTemplateInput> = fc.record({
  holeDiameter: fc.integer({ min: 4, max: 200 }).map((eighths) => inches(eighths / 8)),
  seamAllowance: fc.constantFrom(inches(1 / 4), inches(3 / 8)),
  part: fc.constantFrom('whole', 'quarter'),
  paper: fc.constantFrom('letter', 'a4'),
});

describe('the template', () => {
  it('has the circle to cut and its seam line in true size around one center', () => {
    const circles = plan().parts.filter((part) => part.part === 'circle');
    expect(circles.map(({ tone, radius }) => [tone, radius])).toEqual([
      ['seam', inches(3.5)],
      ['cut', inches(3.25)],
    ]);
    const arcs = plan({ part: 'quarter' }).parts.filter((part) => part.part === 'arc');
    expect(arcs.map(({ tone, radius }) => [tone, radius])).toEqual([
      ['seam', inches(3.5)],
      ['cut', inches(3.25)],
    ]);
  });

  it('fits on one sheet of either paper for a 6 1/2 in hole', () => {
    expect(plan().pages).toHaveLength(1);
    expect(plan({ paper: 'a4' }).pages).toHaveLength(1);
  });

  it('uses sheets of 8 1/2 by 11 in and of 210 by 297 mm (ISO 216)', () => {
    expect(plan().pages[0]).toMatchObject({ width: 8.5 * UNITS_PER_INCH, height: 11 * UNITS_PER_INCH });
    expect(plan({ paper: 'a4' }).pages[0]).toMatchObject({
      width: 210 * UNITS_PER_MILLIMETER,
      height: 297 * UNITS_PER_MILLIMETER,
    });
  });

  it('is completely inside the windows of its sheets, which overlap', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { width, height, columns, rows, overlap, pages } = plan(input);
        const seen = pages.map(({ window, shift }) => ({
          left: window.x - shift.x,
          top: window.y - shift.y,
          right: window.x - shift.x + window.width,
          bottom: window.y - shift.y + window.height,
        }));
        expect(pages).toHaveLength(columns * rows);
        expect(Math.min(...seen.map(({ left }) => left))).toBeLessThanOrEqual(1e-6);
        expect(Math.min(...seen.map(({ top }) => top))).toBeLessThanOrEqual(1e-6);
        expect(Math.max(...seen.map(({ right }) => right))).toBeGreaterThanOrEqual(width - 1e-6);
        expect(Math.max(...seen.map(({ bottom }) => bottom))).toBeGreaterThanOrEqual(height - 1e-6);
        seen.forEach((sheet, index) => {
          const beside = (index + 1) % columns === 0 ? undefined : seen[index + 1];
          if (beside !== undefined) expect(sheet.right - beside.left).toBeCloseTo(overlap, 6);
          const below = seen[index + columns];
          if (below !== undefined) expect(sheet.bottom - below.top).toBeCloseTo(overlap, 6);
        });
      }),
    );
  });

  it('takes no more sheets than it needs', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const { width, columns, overlap, pages } = plan(input);
        const window = pages[0]!.window.width;
        if (columns > 1) expect((columns - 1) * window - (columns - 2) * overlap).toBeLessThan(width);
      }),
    );
  });

  it('has the marks of an overlap at the same place of the template on both sheets', () => {
    const { pages, columns, rows } = plan({ holeDiameter: inches(14) });
    expect(columns * rows).toBeGreaterThan(1);
    const counts = new Map<string, number>();
    for (const { marks, shift } of pages) {
      for (const part of marks.filter(isLine).filter(({ tone }) => tone === 'mark')) {
        const key = [part.from.x - shift.x, part.from.y - shift.y, part.to.x - shift.x, part.to.y - shift.y]
          .map((value) => Math.round(value))
          .join(' ');
        counts.set(key, (counts.get(key) ?? 0) + 1);
      }
    }
    expect(counts.size).toBeGreaterThan(0);
    expect([...counts.values()].every((count) => count === 2)).toBe(true);
  });

  it('has a 1 in square and a 25 mm square on every sheet, away from the drawing', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        for (const { marks, window, width, height } of plan(input).pages) {
          const squares = marks.filter((part) => part.part === 'polygon').map(({ points }) => points);
          expect(squares.map(([one, other]) => other!.x - one!.x)).toEqual([
            inches(1),
            lengthFromMillimeters(25),
          ]);
          for (const points of squares) {
            for (const { x, y } of points) {
              expect(y).toBeGreaterThan(window.y + window.height);
              expect(y).toBeLessThan(height);
              expect(x).toBeGreaterThan(0);
              expect(x).toBeLessThan(width);
            }
          }
        }
      }),
    );
  });

  it('names its sheets by row and column', () => {
    const { pages, columns } = plan({ holeDiameter: inches(14) });
    expect(pages.map(({ name }) => name).slice(0, 2)).toEqual(['A1', 'A2']);
    expect(pages[columns]?.name).toBe('B1');
  });

  it('is refused if it would take more than 40 sheets', () => {
    expect(planCenterTemplate({ ...asked, holeDiameter: inches(100) })).toMatchObject({
      ok: false,
      error: { code: 'too-many-sheets' },
    });
  });
});

function isLine(part: DiagramPart): part is Extract<DiagramPart, { part: 'line' }> {
  return part.part === 'line';
}
