import { describe, expect, it } from 'vitest';
import { calendarDate } from '#core/units/calendar-date';
import { nowWords, pressingDay, statusLines, projectStatus } from '#renderer/text/project-status';
import { glance, trip } from '#test/helpers/glances';

const on = calendarDate('2027-09-12');
const linesOf = (piece: ReturnType<typeof glance>) =>
  statusLines(piece, projectStatus(piece, on), on, 'en-GB').map(
    (line) => `${line.isAlert ? '! ' : ''}${line.text}`,
  );

describe('where a piece stands', () => {
  it('is late when it should be back and is not, whoever has it', () => {
    const piece = glance({ stages: ['done', 'out', 'planned'], trip: trip({ promisedOn: '2027-09-03' }) });
    expect(projectStatus(piece, on).situation).toBe('late');
    expect(linesOf(piece)).toEqual(['! With Tansy Quill, promised 3 Sept: 9 days late']);
  });

  it('is away, not late, on the very day it was promised for', () => {
    const piece = glance({ stages: ['out'], trip: trip({ promisedOn: '2027-09-12' }) });
    expect(projectStatus(piece, on).situation).toBe('away');
    expect(linesOf(piece)).toEqual(['With Tansy Quill, back 12 Sept (today)']);
  });

  it('is late once its own day is past, and says so first', () => {
    const piece = glance({ stages: ['in-hand'], dueOn: '2027-09-11', heldUpBy: 'Thread on order' });
    expect(projectStatus(piece, on).situation).toBe('late');
    expect(linesOf(piece)).toEqual(['! Was due 11 Sept: 1 day late', 'Held up: Thread on order']);
  });

  it('is held up by a reason whatever its state at home', () => {
    expect(projectStatus(glance({ stages: ['in-hand'], heldUpBy: 'No thread' }), on).situation).toBe('held');
    expect(projectStatus(glance({ stages: ['planned'], heldUpBy: 'No thread' }), on).situation).toBe('held');
  });

  it('is next before it is begun, in hand after, and finished when nothing is left to do', () => {
    expect(projectStatus(glance({ stages: ['done', 'skipped', 'planned'] }), on).situation).toBe('next');
    expect(projectStatus(glance({ stages: ['done', 'in-hand', 'planned'] }), on).situation).toBe('in-hand');
    expect(projectStatus(glance({ stages: ['done', 'skipped'], dueOn: '2027-09-01' }), on).situation).toBe(
      'finished',
    );
  });

  it('says when nobody wrote down where a piece went', () => {
    expect(linesOf(glance({ stages: ['out'] }))).toEqual(['Away; no word of where or until when']);
  });

  it('counts a journey that is over no longer', () => {
    const piece = glance({
      stages: ['done', 'in-hand'],
      trip: trip({ promisedOn: '2027-09-03', backOn: '2027-09-05' }),
    });
    expect(projectStatus(piece, on)).toMatchObject({ situation: 'in-hand', trip: null });
  });

  it('names the stage and its state', () => {
    const piece = glance({ stages: ['done', 'planned'] });
    expect(nowWords(projectStatus(piece, on), piece.stages)).toBe('Stage 2 · next');
  });

  it('is pressed by the earlier of its own day and the day it was promised back', () => {
    const piece = glance({ stages: ['out'], dueOn: '2027-10-01', trip: trip({ promisedOn: '2027-09-20' }) });
    expect(pressingDay(piece, projectStatus(piece, on))).toBe('2027-09-20');
    const undated = glance({ stages: ['planned'] });
    expect(pressingDay(undated, projectStatus(undated, on)) > '2999').toBe(true);
  });
});
