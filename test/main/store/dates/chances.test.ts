import { describe, expect, test } from 'vitest';
import { tripWith } from '#core/domain/trip';
import { addDays, daysBetween } from '#core/units/calendar-date';
import {
  addProject,
  openWorkshop,
  planNamed,
  projectDetails,
  type TestWorkshop,
  TODAY,
} from '#test/helpers/workshop';

const NO_MOVES = { dues: [], promises: [] };
const in_ = (days: number) => addDays(TODAY, days);
const chances = (workshop: TestWorkshop) => workshop.get('dates:chances', { on: TODAY, moves: NO_MOVES });

/** Trips of a project each, all to the same quilter and back. */
function pastTrips(workshop: TestWorkshop, days: readonly number[]): void {
  for (const took of days) {
    const { projectId, stages } = addProject(workshop, { name: `Back after ${String(took)}` });
    const stage = stages.find(({ kind }) => kind === 'longarm')!;
    const details = { ...tripWith('Tansy Quill'), sentOn: in_(-100), backOn: in_(took - 100) };
    workshop.get('trip:add', { stageId: stage.id, details });
    workshop.get('project:archive', { projectId, archived: true });
  }
}

/** A top that was sent out ten days ago. */
function awayTop(workshop: TestWorkshop, dueIn: number) {
  const { projectId, stages } = addProject(workshop, { name: 'Frost round', dueOn: in_(dueIn) });
  const stageId = stages.find(({ kind }) => kind === 'longarm')!.id;
  workshop.get('stage:move', { stageId: stages[0]!.id, to: 'done' });
  workshop.get('stage:move', { stageId, to: 'out', passGateWhy: 'Measured by eye' });
  workshop.get('trip:add', { stageId, details: { ...tripWith('Tansy Quill'), sentOn: in_(-10) } });
  return { projectId, stageId };
}

describe('how sure a date is', () => {
  test('stands for every open project, and surely in time is surer than hardly', () => {
    const workshop = openWorkshop();
    const [far, near] = [in_(400), in_(31)].map((dueOn) => addProject(workshop, { dueOn }).projectId);
    addProject(workshop, { name: 'Someday', dueOn: null });
    const all = chances(workshop);
    const of = (id: string | undefined) => all.find((one) => one.id === id)!;
    expect(all).toHaveLength(3);
    expect(of(far).inTime).toBe(1);
    expect(of(near).inTime).toBeLessThan(0.2);
    expect(all.some(({ inTime }) => inTime === null)).toBe(true);
  });

  test('is of the maker’s own trips from three on, and a quilter who varies more makes a date less sure', () => {
    const sure = (days: readonly number[]) => {
      const workshop = openWorkshop();
      pastTrips(workshop, days);
      const { projectId, stageId } = awayTop(workshop, 60);
      const chance = chances(workshop).find(({ id }) => id === projectId)!;
      return { ...chance, stageId };
    };
    const steady = sure([20, 21, 22]);
    const wild = sure([10, 21, 60]);
    expect(steady.nearlySureBy! < wild.nearlySureBy!).toBe(true);
    expect(wild.doubtfulStage).toBe(wild.stageId);
    // The hours after it go by what is usual, so neither is called learned.
    expect([steady.isLearned, wild.isLearned]).toEqual([false, false]);
  });

  test('knows that an overdue top is not back today', () => {
    const workshop = openWorkshop();
    pastTrips(workshop, [5, 6, 7]);
    const { projectId } = awayTop(workshop, 200);
    const chance = chances(workshop).find(({ id }) => id === projectId)!;
    const plan = workshop.get('dates:plan', { on: TODAY, moves: NO_MOVES }).plan.projects[0]!;
    expect(daysBetween(plan.finishOn!, chance.nearlySureBy!)).toBeGreaterThan(0);
  });

  test('is told of a project before it is started, with the stage that the doubt comes from', () => {
    const workshop = openWorkshop();
    const asked = {
      on: TODAY,
      details: projectDetails({ hole: null, hasSlit: false, dueOn: in_(90) }),
      stagePlanId: planNamed('Throw').id,
    };
    const { chance, doubtfulStageName } = workshop.get('dates:try-project', asked);
    expect(chance.inTime).toBeGreaterThan(0);
    expect(planNamed('Throw').stages.map(({ name }) => name)).toContain(doubtfulStageName);
  });
});
