import { type KeptWithTicks, planOfKept, stepsOfPiece } from '#core/cutting/tree/kept-plan';
import { stepWords } from '#renderer/text/cut-words';
import { describe, expect, it } from 'vitest';
import type { TickedStep } from '#core/domain/cutting-plan';
import { fabricPieceIdSchema, fabricIdSchema, projectIdSchema, stageIdSchema } from '#core/domain/ids';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches as inches } from '#core/units/length';
import { jobOfSetup, type PlanStash } from '#renderer/features/cutting/planning/job-of-setup';
import { planToSave, locksOf, NO_LOCKS } from '#renderer/features/cutting/table/locked-cuts';
import type { PatchSource } from '#renderer/features/cutting/desk/patch-sources';
import { changesSince } from '#renderer/features/cutting/planning/plan-age';
import { withLine, withPiece } from '#renderer/features/cutting/desk/setup-changes';
import { plansAfter } from '#test/helpers/cutting-jobs';
import { planOnTwoYards } from '#test/helpers/kept-plans';

const id = (end: number) => `00000000-0000-4000-8000-${String(end).padStart(12, '0')}`;
const [ring, blue] = [projectIdSchema.parse(id(1)), fabricIdSchema.parse(id(5))];
const [bolt, leftover] = [fabricPieceIdSchema.parse(id(6)), fabricPieceIdSchema.parse(id(7))];
const stage = stageIdSchema.parse(id(3));
const plan = planOnTwoYards({ projects: [ring], stageId: stage, fabricId: blue, pieceId: bolt });

const tick = (place: number, changes: Partial<TickedStep> = {}): TickedStep => ({
  pieceId: bolt,
  place,
  parts: place === 0 ? 2 : 1,
  isBooked: true,
  on: calendarDate('2027-02-28'),
  leftovers: [],
  ...changes,
});
const kept = (...ticked: readonly TickedStep[]): KeptWithTicks => ({ plan, ticked });

const fabric: Fabric = {
  id: blue,
  name: 'Rust',
  print: '',
  colorWords: '',
  fiber: '',
  direction: 'one-way',
  width: inches(42),
  isWashed: true,
  supplier: '',
  place: '',
  swatch: '#2f5d8a',
  notes: '',
  photoId: null,
  createdAt: 1,
};
const piece = (there: number, changes: Partial<FabricPiece> = {}): FabricPiece => ({
  id: bolt,
  fabricId: blue,
  kind: 'yardage',
  width: inches(42),
  there: inches(there),
  kindId: null,
  unitLength: null,
  place: '',
  printRuns: 'along',
  held: inches(0),
  valueMinor: 0,
  ...changes,
});
const scrap = piece(3.5, { id: leftover, kind: 'leftover', width: inches(8) });
const stash = (...pieces: readonly FabricPiece[]): PlanStash => ({
  fabrics: new Map([[blue, { fabric, pieces, price: null }]]),
  ownHolds: new Map(),
  usualWidth: inches(42),
  lengthStep: inches(4.5),
});

describe('a saved plan', () => {
  it('gives the same plan as when it was made, with what is cut', () => {
    const told = planOfKept(kept(tick(0)));
    expect(told.pieces[0]).toMatchObject({ piece: bolt, stages: 2 });
    expect(told.pieces[0]?.placed).toHaveLength(20);
    expect(told.pieces[0]?.cuts.filter(({ isDone, stage: of }) => isDone && of === 1)).toHaveLength(2);
    expect(told.totals.usedArea).toBe(inches(42) * inches(7.5) - inches(8) * inches(3.5));
  });

  it('puts its steps in words, the strip first', () => {
    const display = { system: 'inch', inchStep: 8 } as const;
    const words = stepsOfPiece(plan.pieces[0]!, []).map((step) => stepWords(step, display));
    expect(words.map((lines) => lines.map((line) => line.words))).toEqual([
      ['Cut ½ in off to straighten the end.', 'Cut a strip of 3½ in.', 'Cut it into 12 of 3½ in: A.'],
      [
        'Cut a strip of 3½ in.',
        'Cut it into 4 of 3½ in: A.',
        'Cut it into 4 of 5 in: B.',
        'Keep what is left, 8 × 3½ in.',
      ],
    ]);
  });

  it('is planned again behind what is cut, without the patches already cut', () => {
    const begun = kept(tick(0));
    const locks = locksOf(begun, plan.setup.lines);
    expect(locks.get(bolt)?.length).toBe(inches(4));
    const job = jobOfSetup(plan.setup, stash(piece(68)), locks);
    expect(job.fabrics[0]?.pieces[0]).toMatchObject({ length: inches(72) });
    const answer = plansAfter(job, 200).simplestCuts;
    expect(answer.pieces[0]?.placed.filter(({ y }) => y < inches(4))).toHaveLength(12);
    expect(answer.pieces[0]?.placed).toHaveLength(20);
    const again = planToSave(plan.setup, job, answer);
    expect(stepsOfPiece(again.pieces[0]!, begun.ticked)[0]?.length).toBe(inches(4));
  });

  it('keeps a piece with cuts even if nothing more may be cut from it, and treats patches no longer asked for as margin', () => {
    const begun = kept(tick(0));
    const setup = withPiece(withLine(plan.setup, { ...plan.setup.lines[0]!, width: inches(4) }), bolt, false);
    const locks = locksOf(begun, setup.lines);
    const [asked] = jobOfSetup(setup, stash(piece(68)), locks).fabrics;
    expect(asked?.pieces).toMatchObject([{ id: bolt, length: inches(4) }]);
    expect(JSON.stringify(asked?.pieces[0]?.lockedParts)).not.toContain('"patch"');
  });

  it('locks nothing when nothing is cut or all cuts are undone', () => {
    expect(locksOf(null, [])).toBe(NO_LOCKS);
    expect(locksOf(kept(), plan.setup.lines).size).toBe(0);
    expect(locksOf(kept(tick(0, { isBooked: false })), plan.setup.lines).size).toBe(0);
  });
});

describe('a saved plan is out of date', () => {
  const now = (on: PlanStash, sources: readonly PatchSource[] = []) => ({
    setup: plan.setup,
    stash: on,
    sources,
  });

  it('not because of its own cuts and their leftovers', () => {
    expect(changesSince(kept(), now(stash(piece(72))))).toEqual([]);
    expect(changesSince(kept(tick(0)), now(stash(piece(68))))).toEqual([]);
    const both = kept(tick(0), tick(1, { leftovers: [leftover] }));
    expect(changesSince(both, now(stash(piece(64.5), scrap)))).toEqual([]);
  });

  it('when a piece is shorter, gone, new, or set aside for another project', () => {
    for (const other of [
      stash(piece(70)),
      stash(),
      stash(piece(72), scrap),
      stash(piece(72, { held: inches(10) })),
    ])
      expect(changesSince(kept(), now(other))).toEqual(['stash']);
  });

  it('when a list it uses is saved again, or a fabric it planned to buy comes into the stash', () => {
    const source: PatchSource = {
      stageId: stage,
      calculator: 'top',
      projectId: ring,
      stageName: 'Piecing',
      title: 'The whole top',
      patches: [],
      savedAt: 7,
      isOld: false,
    };
    const took = {
      plan: {
        ...plan,
        setup: { ...plan.setup, taken: [{ source: { stageId: stage, calculator: 'top' }, keptAt: 7 }] },
      },
      ticked: [],
    };
    const at = stash(piece(72));
    expect(changesSince(took, now(at, [source]))).toEqual([]);
    expect(changesSince(took, now(at, [{ ...source, savedAt: 8 }]))).toEqual(['lists']);
    expect(changesSince(took, now(at))).toEqual(['lists']);
    const named = {
      ...plan.setup,
      fabricChoices: [...plan.setup.fabricChoices, { projectId: ring, fabric: 'Sky', fabricId: blue }],
    };
    expect(changesSince(kept(), { ...now(at), setup: named })).toEqual(['fabric-found']);
  });
});
