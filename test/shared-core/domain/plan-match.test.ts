import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchPlan, type RunningStage } from '#core/domain/plan-match';
import { type PlannedStage, stageKindSchema, stageStateSchema } from '#core/domain/stage';
import type { StageKind } from '#core/domain/stage-kinds';

const planned = (kind: StageKind, name: string = kind): PlannedStage => ({
  kind,
  name,
  estimateMinutes: 60,
  checklist: [],
});
const running = (kind: StageKind, isRecorded: boolean, name: string = kind): RunningStage => ({
  id: `${name} ${String(isRecorded)}`,
  kind,
  name,
  state: isRecorded ? 'done' : 'planned',
  isRecorded,
});
const order = (match: ReturnType<typeof matchPlan>) =>
  match.steps.map((step) => `${step.how} ${step.how === 'fresh' ? step.planned.name : step.stage.name}`);

describe('a plan laid over a running project', () => {
  it('keeps the stages that match, by name before kind, and adds those that are missing', () => {
    const match = matchPlan(
      [running('outer-binding', false, 'Second border'), running('outer-binding', true, 'First border')],
      [planned('piecing'), planned('outer-binding', 'First border'), planned('outer-binding', 'Facing')],
    );
    expect(order(match)).toEqual(['fresh piecing', 'stays First border', 'stays Second border']);
    expect(match.gone).toEqual([]);
  });

  it('leaves out what the plan does not know, but never a stage of which something is recorded', () => {
    const match = matchPlan(
      [
        running('piecing', true),
        running('longarm', true),
        running('other', false),
        running('hand-finish', false),
      ],
      [planned('piecing'), planned('home-quilting'), planned('hand-finish')],
    );
    expect(order(match)).toEqual([
      'stays piecing',
      'left-over longarm',
      'fresh home-quilting',
      'stays hand-finish',
    ]);
    expect(match.gone.map(({ name }) => name)).toEqual(['other']);
  });

  it('loses no recorded stage and repeats none, whatever stands and whatever is planned', () => {
    const stages = fc.array(
      fc.record({
        kind: fc.constantFrom(...stageKindSchema.options),
        name: fc.constantFrom('A', 'B'),
        state: fc.constantFrom(...stageStateSchema.options),
        isRecorded: fc.boolean(),
      }),
      { maxLength: 8 },
    );
    const plans = fc.array(
      fc.record({ kind: fc.constantFrom(...stageKindSchema.options), name: fc.constantFrom('A', 'B') }),
      {
        maxLength: 8,
      },
    );
    fc.assert(
      fc.property(stages, plans, (now, plan) => {
        const standing = now.map((stage, at) => ({ ...stage, id: String(at) }));
        const match = matchPlan(
          standing,
          plan.map(({ kind, name }) => planned(kind, name)),
        );
        const kept = match.steps.flatMap((step) => (step.how === 'fresh' ? [] : [step.stage.id]));
        expect(new Set(kept).size).toBe(kept.length);
        expect([...kept, ...match.gone.map(({ id }) => id)].toSorted()).toEqual(
          standing.map(({ id }) => id).toSorted(),
        );
        expect(match.gone.every(({ isRecorded }) => !isRecorded)).toBe(true);
        expect(match.steps.filter(({ how }) => how !== 'left-over')).toHaveLength(plan.length);
      }),
    );
  });
});
