import { describe, expect, it } from 'vitest';
import type { StageState } from '#core/domain/stage';
import {
  currentStop,
  FINISH_WIDTH,
  gapDatePosition,
  lineMeasure,
  needlePosition,
  stageInTheWay,
  stopAt,
  stopsOf,
} from '#renderer/features/line-up/stage-line';
import { glance } from '#test/helpers/glances';

const ring = glance({ stages: ['done', 'skipped', 'in-hand', 'planned', 'planned'] });
const mat = glance({ stages: ['done'] });

const withShutGate = (states: readonly StageState[], shut: number) => {
  const made = glance({ stages: states });
  return { ...made, stages: made.stages.map((stage, at) => ({ ...stage, isGateShut: at === shut })) };
};

describe('the stops of a line', () => {
  it('are the stages that are needed, and the finish', () => {
    expect(stopsOf(ring).map((stop) => stop?.name ?? 'finish')).toEqual([
      'Stage 1',
      'Stage 3',
      'Stage 4',
      'Stage 5',
      'finish',
    ]);
    expect(stopsOf(glance({ stages: [] }))).toEqual([null]);
  });

  it('hold the needle at the current stage, and at the finish once every stage is over', () => {
    expect(currentStop(ring)).toBe(1);
    expect(currentStop(mat)).toBe(1);
    expect(currentStop(glance({ stages: ['planned', 'planned'] }))).toBe(0);
  });
});

describe('the stage in the way of a move', () => {
  it('is the first one with an open checklist between here and there', () => {
    const gated = withShutGate(['in-hand', 'planned', 'planned'], 1);
    expect(stageInTheWay(gated, 2)?.name).toBe('Stage 2');
    expect(stageInTheWay(gated, 1)).toBeNull();
    expect(stageInTheWay(gated, 0)).toBeNull();
  });

  it('is a stage at the quilter', () => {
    expect(stageInTheWay(glance({ stages: ['out', 'planned'] }), 1)?.name).toBe('Stage 1');
  });
});

describe('the needle on its line', () => {
  const measure = lineMeasure(400 + FINISH_WIDTH, 4);

  it('is halfway through a stage in progress, at the start of a planned one, and past the last one at the finish', () => {
    const stops = stopsOf(ring);
    expect(needlePosition(measure, stops, 1)).toBe(150);
    expect(needlePosition(measure, stops, 2)).toBe(220);
    expect(needlePosition(measure, stops, 4)).toBe(400 + FINISH_WIDTH / 2);
  });

  it('stops at the stage under it, and at an end when it is dragged past one', () => {
    expect([-50, 0, 99, 100, 399, 400, 5000].map((x) => stopAt(measure, x))).toEqual([0, 0, 0, 1, 3, 4, 4]);
  });

  it('always lies on the part of its own stop', () => {
    const stops = stopsOf(ring);
    for (const [index] of stops.entries()) {
      expect(stopAt(measure, needlePosition(measure, stops, index))).toBe(index);
    }
  });

  it('has a place on a line without width', () => {
    expect(stopAt(lineMeasure(0, 3), 10)).toBe(0);
  });
});

describe('the date in the gap of a stage at the quilter', () => {
  it('is between the needle and the end of the gap, and is left out of a short gap', () => {
    expect(gapDatePosition(lineMeasure(400 + FINISH_WIDTH, 4), 1)).toBe(161);
    expect(gapDatePosition(lineMeasure(240 + FINISH_WIDTH, 4), 1)).toBeNull();
  });
});
