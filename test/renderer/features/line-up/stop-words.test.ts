import { describe, expect, it } from 'vitest';
import { stopsOf } from '#renderer/features/line-up/stage-line';
import { needleWords, stopName } from '#renderer/features/line-up/stop-words';
import { projectStatus } from '#renderer/text/project-status';
import { calendarDate } from '#core/units/calendar-date';
import { glance, trip } from '#test/helpers/glances';

const on = calendarDate('2027-10-10');
type Sketch = Parameters<typeof glance>[0];

function words(sketch: Sketch, stop: number): string {
  const project = glance(sketch);
  return needleWords(stopsOf(project), stop, projectStatus(project, on), { locale: 'en-US', on });
}

describe('a needle for a screen reader', () => {
  it('says which stage it is at and how that stage is doing', () => {
    expect(words({ stages: ['done', 'in-hand', 'planned'] }, 1)).toBe('Stage 2 of 3, Stage 2, in progress');
    expect(words({ stages: ['planned'], heldUpBy: 'the batting' }, 0)).toBe(
      'Stage 1 of 1, Stage 1, waiting: the batting',
    );
  });

  it('says who has the project', () => {
    expect(words({ stages: ['out', 'planned'], trip: trip({ promisedOn: '2027-11-01' }) }, 0)).toBe(
      'Stage 1 of 2, Stage 1, at Tansy Quill',
    );
  });

  it('says only the stage while the needle is on its way there', () => {
    expect(words({ stages: ['done', 'in-hand', 'planned'] }, 2)).toBe('Stage 3 of 3, Stage 3');
  });

  it('says when everything is done, and when there is nothing to do', () => {
    expect(words({ stages: ['done', 'done'] }, 2)).toBe('Finished, 2 of 2 stages');
    expect(words({ stages: [] }, 0)).toBe('No stages');
    expect(stopName(null)).toBe('Finished');
  });
});
