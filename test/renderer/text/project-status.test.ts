import { describe, expect, it } from 'vitest';
import { calendarDate } from '#core/units/calendar-date';
import { nowWords, pressingDay, statusLines, projectStatus } from '#renderer/text/project-status';
import { glance, trip } from '#test/helpers/glances';

const on = calendarDate('2027-09-12');
const linesOf = (project: ReturnType<typeof glance>) =>
  statusLines(project, projectStatus(project, on), on, 'en-GB').map(
    (line) => `${line.isAlert ? '! ' : ''}${line.text}`,
  );

describe('how a project is doing', () => {
  it('is late when it is overdue back', () => {
    const project = glance({ stages: ['done', 'out', 'planned'], trip: trip({ promisedOn: '2027-09-03' }) });
    expect(projectStatus(project, on).situation).toBe('late');
    expect(linesOf(project)).toEqual(['! With Tansy Quill, promised 3 Sept: 9 days late']);
  });

  it('is away, not late, on the day it was promised back', () => {
    const project = glance({ stages: ['out'], trip: trip({ promisedOn: '2027-09-12' }) });
    expect(projectStatus(project, on).situation).toBe('away');
    expect(linesOf(project)).toEqual(['With Tansy Quill, back 12 Sept (today)']);
  });

  it('is late once its due date is past, and says so first', () => {
    const project = glance({ stages: ['in-hand'], dueOn: '2027-09-11', heldUpBy: 'Thread on order' });
    expect(projectStatus(project, on).situation).toBe('late');
    expect(linesOf(project)).toEqual(['! Was due 11 Sept: 1 day late', 'Waiting: Thread on order']);
  });

  it('waits for a reason, whatever its state at home', () => {
    expect(projectStatus(glance({ stages: ['in-hand'], heldUpBy: 'No thread' }), on).situation).toBe(
      'waiting',
    );
    expect(projectStatus(glance({ stages: ['planned'], heldUpBy: 'No thread' }), on).situation).toBe(
      'waiting',
    );
  });

  it('is next before it is started, in progress after that, and finished when nothing is left to do', () => {
    expect(projectStatus(glance({ stages: ['done', 'skipped', 'planned'] }), on).situation).toBe('next');
    expect(projectStatus(glance({ stages: ['done', 'in-hand', 'planned'] }), on).situation).toBe('in-hand');
    expect(projectStatus(glance({ stages: ['done', 'skipped'], dueOn: '2027-09-01' }), on).situation).toBe(
      'finished',
    );
  });

  it('says when no trip was recorded for it', () => {
    expect(linesOf(glance({ stages: ['out'] }))).toEqual(['Sent out, no trip recorded']);
  });

  it('ignores a trip that has ended', () => {
    const project = glance({
      stages: ['done', 'in-hand'],
      trip: trip({ promisedOn: '2027-09-03', backOn: '2027-09-05' }),
    });
    expect(projectStatus(project, on)).toMatchObject({ situation: 'in-hand', trip: null });
  });

  it('names the stage and its state', () => {
    const project = glance({ stages: ['done', 'planned'] });
    expect(nowWords(projectStatus(project, on), project.stages)).toBe('Stage 2 · next');
  });

  it('is ordered by the earlier of its due date and the day it was promised back', () => {
    const project = glance({
      stages: ['out'],
      dueOn: '2027-10-01',
      trip: trip({ promisedOn: '2027-09-20' }),
    });
    expect(pressingDay(project, projectStatus(project, on))).toBe('2027-09-20');
    const undated = glance({ stages: ['planned'] });
    expect(pressingDay(undated, projectStatus(undated, on)) > '2999').toBe(true);
  });
});
