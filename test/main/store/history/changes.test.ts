import { describe, expect, test } from 'vitest';
import { addProject, NO_SUCH_ID, openWorkshop } from '#test/helpers/workshop';

function skirt() {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const stages = () => workshop.get('project:open', { projectId }).stages;
  const stage = (kind: string) => stages().find((one) => one.kind === kind)!;
  return { workshop, stage };
}

describe('the history', () => {
  test('keeps at least 200 changes, goes back to any of them and forward again, and survives a restart', () => {
    const { workshop, stage } = skirt();
    const stageId = stage('piecing').id;
    const change = (notes: string) =>
      workshop.get('stage:change', {
        stageId,
        name: 'Piece the top',
        estimateMinutes: 5,
        heldUpBy: '',
        notes,
      });
    for (let turn = 0; turn < 220; turn += 1) change(`Turn ${turn}`);
    const again = openWorkshop(workshop.file);
    const { done, undone } = again.get('change:list', {});
    expect([done.length, undone.length]).toEqual([221, 0]);
    expect(done.every(({ says }) => says !== '')).toBe(true);
    expect(again.get('change:go-to', { changeId: done[200]!.id })).toEqual({ steps: 201 });
    const { projectId } = stage('piecing');
    const notes = () =>
      again.get('project:open', { projectId }).stages.find(({ id }) => id === stageId)!.notes;
    expect(notes()).toBe('Turn 18');
    const taken = again.get('change:list', {}).undone;
    expect(taken).toHaveLength(201);
    expect(again.get('change:go-to', { changeId: taken[100]!.id })).toEqual({ steps: 101 });
    expect(notes()).toBe('Turn 119');
    expect(again.fail('change:go-to', { changeId: NO_SUCH_ID as never })).toEqual({
      code: 'nothing-to-undo',
    });
  });
});
