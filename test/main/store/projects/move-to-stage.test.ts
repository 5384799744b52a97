import { describe, expect, test } from 'vitest';
import { tripWith } from '#core/domain/trip';
import { dumpOf } from '#test/helpers/dump';
import { addProject, NO_SUCH_ID, openWorkshop, TODAY } from '#test/helpers/workshop';

function skirt() {
  const workshop = openWorkshop();
  const { projectId } = addProject(workshop);
  const stages = () => workshop.get('project:open', { projectId }).stages;
  const stage = (kind: string) => stages().find((one) => one.kind === kind)!;
  const states = () => stages().map(({ state }) => state);
  const closeGates = () => {
    for (const { id } of stages().flatMap(({ checklist }) => checklist.filter(({ isGate }) => isGate))) {
      workshop.get('checklist:tick', { checklistItemId: id, ticked: true });
    }
  };
  return { workshop, projectId, stage, states, closeGates };
}

describe('moving a project to a stage', () => {
  test('forward past several stages is one change that finishes those before and leaves the new one planned', () => {
    const { workshop, projectId, stage, states, closeGates } = skirt();
    closeGates();
    workshop.get('project:move-to-stage', { projectId, stageId: stage('outer-binding').id });
    expect(states()).toEqual(['done', 'done', 'planned', 'planned', 'planned', 'planned']);
    expect(workshop.get('change:state', {}).undo).toBe('Moved “Autumn ring” to “Bind the outside”');
    workshop.get('project:move-to-stage', { projectId, stageId: null });
    expect(new Set(states())).toEqual(new Set(['done']));
    workshop.get('change:undo', {});
    workshop.get('change:undo', {});
    expect(new Set(states())).toEqual(new Set(['planned']));
  });

  test('back to a finished stage puts it in progress again and sets later ones to planned', () => {
    const { workshop, projectId, stage, states, closeGates } = skirt();
    closeGates();
    workshop.get('project:move-to-stage', { projectId, stageId: stage('center-cut').id });
    workshop.get('project:move-to-stage', { projectId, stageId: stage('piecing').id });
    expect(states()).toEqual(['in-hand', 'planned', 'planned', 'planned', 'planned', 'planned']);
  });

  test('changes nothing while a gate on the way is shut, while the project is at the quilter, or for a stage of another project', () => {
    const { workshop, projectId, stage, states, closeGates } = skirt();
    const before = dumpOf(workshop);
    expect(
      workshop.fail('project:move-to-stage', { projectId, stageId: stage('inner-binding').id }),
    ).toMatchObject({ code: 'gate-closed' });
    expect(workshop.fail('project:move-to-stage', { projectId, stageId: NO_SUCH_ID as never })).toMatchObject(
      {
        code: 'not-found',
      },
    );
    expect(dumpOf(workshop)).toBe(before);
    closeGates();
    const { id: stageId, name } = stage('longarm');
    workshop.get('trip:send', { stageId, details: { ...tripWith('Pell'), sentOn: TODAY } });
    expect(workshop.fail('project:move-to-stage', { projectId, stageId: stage('outer-binding').id })).toEqual(
      {
        code: 'still-away',
        stage: name,
      },
    );
    expect(states()[1]).toBe('out');
  });

  test('leaves skipped stages skipped', () => {
    const { workshop, projectId, stage, states, closeGates } = skirt();
    closeGates();
    workshop.get('stage:move', { stageId: stage('longarm').id, to: 'skipped' });
    workshop.get('project:move-to-stage', { projectId, stageId: stage('outer-binding').id });
    expect(states().slice(0, 3)).toEqual(['done', 'skipped', 'planned']);
  });
});
