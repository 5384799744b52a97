import { describe, expect, it } from 'vitest';
import type { StageKind, StageState } from '#core/domain/stage';
import { boardOf, placeBeside, placeInColumn } from '#renderer/features/board/view-model';
import { glance } from '#test/helpers/glances';

function piece(name: string, plan: readonly (readonly [StageKind, StageState])[]) {
  const made = glance({ name, stages: plan.map(([, state]) => state) });
  return { ...made, stages: made.stages.map((stage, at) => ({ ...stage, kind: plan[at]![0] })) };
}

const ring = piece('Ring', [
  ['piecing', 'done'],
  ['longarm', 'skipped'],
  ['outer-binding', 'in-hand'],
  ['outer-binding', 'planned'],
  ['hand-finish', 'planned'],
]);
const mat = piece('Mat', [['piecing', 'done']]);

describe('the board', () => {
  it('has a column for each kind of stage that is needed, in the order of the shop, and one for what is finished', () => {
    expect(boardOf([mat, ring]).map(({ name, glances }) => [name, glances.length])).toEqual([
      ['piecing', 0],
      ['outer-binding', 1],
      ['hand-finish', 0],
      ['finished', 1],
    ]);
  });

  it('moves a piece one place on or back, past what is skipped, and no further than its ends', () => {
    expect(placeBeside(ring, 1)?.stage?.id).toBe(ring.stages[3]!.id);
    expect(placeBeside(ring, -1)?.stage?.id).toBe(ring.stages[0]!.id);
    expect(placeBeside(mat, -1)?.stage?.id).toBe(mat.stages[0]!.id);
    expect(placeBeside(mat, 1)).toBeUndefined();
  });

  it('finds the place of a column in a piece’s own plan, and none where the plan has no such stage', () => {
    expect(placeInColumn(ring, 'hand-finish')?.stage?.id).toBe(ring.stages[4]!.id);
    expect(placeInColumn(ring, 'piecing')?.stage?.id).toBe(ring.stages[0]!.id);
    expect(placeInColumn(ring, 'finished')).toEqual({ stage: null });
    expect(placeInColumn(ring, 'longarm')).toBeUndefined();
    expect(placeInColumn(ring, 'center-cut')).toBeUndefined();
  });
});
