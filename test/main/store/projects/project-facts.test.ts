import { describe, expect, test } from 'vitest';
import type { StageKind } from '#core/domain/stage-kinds';
import {
  addProject,
  inches,
  NO_SUCH_ID,
  openWorkshop,
  planNamed,
  projectDetails,
  type TestWorkshop,
} from '#test/helpers/workshop';

const SIX = { diameter: inches(6) };
const FOURTEEN = { diameter: inches(14) };

/** A round project with a hole of 6 in, and the function that saves an answer with its stage of a kind. */
function ringProject(workshop: TestWorkshop) {
  const { projectId, stages } = addProject(workshop, { hole: SIX });
  const stageOf = (kind: StageKind) => {
    const stage = stages.find((one) => one.kind === kind);
    if (stage === undefined) throw new Error(`The project has no stage ${kind}`);
    return stage.id;
  };
  const save = (kind: StageKind, calculator: string, ownInput: object) =>
    workshop.get('calculation:save', { stageId: stageOf(kind), calculator, ownInput });
  const unsettled = () => workshop.get('project:unsettled', { projectId });
  const project = () => workshop.get('project:open', { projectId }).project;
  const answers = (kind: StageKind) => workshop.get('calculation:list', { stageId: stageOf(kind) });
  return { projectId, save, unsettled, project, answers };
}

describe('a fact on which an answer and its project disagree', () => {
  test('is the hole that was worked out, until the project has it', () => {
    const workshop = openWorkshop();
    const { projectId, save, unsettled, project } = ringProject(workshop);
    save('center-cut', 'hole-size', { from: 'wish', measure: inches(14) });
    expect(unsettled()).toMatchObject([
      { calculator: 'hole-size', fact: 'hole', answer: { hole: FOURTEEN } },
    ]);
    const { changeId } = workshop.get('project:decide', { projectId, decided: { hole: FOURTEEN } });
    const [newest] = workshop.get('change:list', {}).done;
    expect(newest?.says).toMatch(/^Decided for “[^”]+”: hole$/);
    expect(project().hole).toEqual(FOURTEEN);
    expect(unsettled()).toEqual([]);
    workshop.get('change:undo', { changeId });
    expect(project().hole).toEqual(SIX);
    expect(unsettled()).toHaveLength(1);
  });

  test('is the outline that washes to the size wanted, and the shrinkage of a sample, until the project has them', () => {
    const workshop = openWorkshop();
    const { projectId, save, unsettled, project } = ringProject(workshop);
    const wish = { shape: 'round', width: inches(48), length: inches(48) };
    const sample = { marked: inches(20), across: inches(19), along: inches(19) };
    save('piecing', 'washing', { wish, sample });
    // Derived: 19 of 20 in is 5%; 48 ÷ 0.95 is 50.53 in, up to an eighth.
    const decided = { outline: { shape: 'circle', diameter: inches(50.625) } } as const;
    expect(unsettled()).toMatchObject([
      { calculator: 'washing', fact: 'outline', answer: decided },
      { fact: 'washAcrossPercent', answer: { washAcrossPercent: 5 } },
      { fact: 'washAlongPercent', answer: { washAlongPercent: 5 } },
    ]);
    for (const { answer } of unsettled()) workshop.get('project:decide', { projectId, decided: answer });
    expect(project()).toMatchObject({
      ...decided,
      settingChanges: { washAcrossPercent: 5, washAlongPercent: 5 },
    });
    expect(unsettled()).toEqual([]);
  });

  test('goes with the answer when the maker keeps the hole of the project', () => {
    const workshop = openWorkshop();
    const { save, unsettled, project, answers } = ringProject(workshop);
    const { calculationId } = save('center-cut', 'hole-size', { from: 'wish', measure: inches(14) });
    const { changeId } = workshop.get('calculation:follow-project', { calculationId });
    expect(unsettled()).toEqual([]);
    expect(project().hole).toEqual(SIX);
    expect(answers('center-cut')).toEqual([]);
    workshop.get('change:undo', { changeId });
    expect(answers('center-cut')).toHaveLength(1);
  });

  test('is a seam that was only tried, and the answer can follow the project again', () => {
    const workshop = openWorkshop();
    const { save, unsettled, answers } = ringProject(workshop);
    const own = { seamAllowance: inches(3 / 8), backCover: inches(1 / 16) };
    const { calculationId } = save('outer-binding', 'outer-binding', own);
    expect(unsettled().map(({ fact }) => fact)).toEqual(['seamAllowance', 'backCover']);
    workshop.get('calculation:follow-project', { calculationId });
    expect(unsettled()).toEqual([]);
    const [answer] = answers('outer-binding');
    expect(answer).toMatchObject({ ownInput: {}, input: { seamAllowance: inches(1 / 4) } });
  });

  test('is settled for one project only', () => {
    const workshop = openWorkshop();
    const { projectId, project } = ringProject(workshop);
    const other = ringProject(workshop);
    workshop.get('project:decide', { projectId, decided: { seamAllowance: inches(3 / 8) } });
    expect(project().settingChanges).toEqual({ seamAllowance: inches(3 / 8) });
    expect(other.project().settingChanges).toEqual({});
  });

  test('cannot be asked or decided for what is not there', () => {
    const workshop = openWorkshop();
    expect(workshop.fail('project:unsettled', { projectId: NO_SUCH_ID as never })).toMatchObject({
      code: 'not-found',
    });
    expect(
      workshop.fail('project:decide', { projectId: NO_SUCH_ID as never, decided: { hole: null } }),
    ).toMatchObject({ code: 'not-found' });
    expect(workshop.fail('calculation:follow-project', { calculationId: NO_SUCH_ID as never })).toMatchObject(
      { code: 'not-found', kind: 'saved-answer' },
    );
  });
});

describe('how a slit is bound', () => {
  const boundWith = (plan: string) => {
    const workshop = openWorkshop();
    const details = projectDetails({ hole: SIX, hasSlit: true });
    const { projectId } = workshop.get('project:create', { details, stagePlanId: planNamed(plan).id });
    const { stages } = workshop.get('project:open', { projectId });
    const stageId = stages.find(({ kind }) => kind === 'outer-binding')!.id;
    workshop.get('calculation:save', { stageId, calculator: 'outer-binding', ownInput: {} });
    return workshop.get('calculation:list', { stageId })[0]?.input;
  };

  test('follows the stages of the project', () => {
    expect(boundWith('Tree skirt')).toMatchObject({ slitBoundWith: 'outside-and-hole' });
    expect(boundWith('Tree skirt, bound before the cut')).toMatchObject({ slitBoundWith: 'hole' });
  });
});
