import { describe, expect, it } from 'vitest';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { STARTING_PACKING } from '#core/domain/trip';

// Common practice, as teachers and longarm quilters describe it.
describe('the starting plans', () => {
  it('wait only for a stage that comes earlier in the same plan', () => {
    for (const { name, stages } of STARTING_PLANS) {
      stages.forEach((stage, index) => {
        const earlier = stages.slice(0, index).map(({ kind }) => kind);
        for (const { text, closedBy } of stage.checklist) {
          if (closedBy !== null) expect(earlier, `${name}: ${text}`).toContain(closedBy);
        }
      });
    }
  });

  it.each([
    ['Tree skirt', ['center-cut', 'outer-binding']],
    ['Tree skirt, bound before the cut', ['inner-binding', 'center-cut', 'outer-binding']],
    ['Tree skirt, closed ring', ['outer-binding', 'center-cut', 'inner-binding']],
    ['Table topper with a hole', ['outer-binding', 'center-cut', 'inner-binding']],
  ])('%s follows its own order (common practice)', (name, order) => {
    const kinds = STARTING_PLANS.find((plan) => plan.name === name)?.stages.map(({ kind }) => kind) ?? [];
    expect(kinds.filter((kind) => kind === 'center-cut' || kind.endsWith('binding'))).toEqual(order);
  });

  it('cut no slit through a finished outer binding (common practice)', () => {
    const slit = STARTING_PLANS.filter(({ stages }) => /slit/i.test(stages.map(({ name }) => name).join()));
    expect(slit.map(({ name }) => name)).toEqual(['Tree skirt', 'Tree skirt, bound before the cut']);
    for (const { name, stages } of slit) {
      const kinds = stages.map(({ kind }) => kind);
      expect(kinds.indexOf('center-cut'), name).toBeLessThan(kinds.indexOf('outer-binding'));
    }
  });

  it('have lists that are short enough to be read', () => {
    const stages = STARTING_PLANS.flatMap((plan) => plan.stages);
    const tooLong = stages.filter(({ checklist }) => checklist.length > 12).map(({ name }) => name);
    expect(tooLong).toEqual([]);
    for (const { name, checklist } of stages) {
      expect(new Set(checklist.map(({ text }) => text)).size, name).toBe(checklist.length);
    }
  });

  it('take marks out before the iron (common practice)', () => {
    for (const { stages } of STARTING_PLANS) {
      const lines = stages.at(-1)?.checklist.map(({ text }) => text) ?? [];
      const marks = lines.findIndex((text) => text.startsWith('Marks taken out'));
      expect(marks).toBeGreaterThanOrEqual(0);
      expect(marks).toBeLessThan(lines.findIndex((text) => text.startsWith('Pressed')));
    }
  });

  it('mark the upper edge with something that is no straight pin (common practice)', () => {
    expect(STARTING_PACKING[0]?.text).toContain('safety pin or note');
  });
});
