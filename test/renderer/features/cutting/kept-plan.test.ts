import { type KeptWithTicks, planOfKept, stepsOfPiece } from '#core/cutting/tree/kept-plan';
import { stepWords } from '#renderer/text/cut-words';
import { describe, expect, it } from 'vitest';
import type { TickedStep } from '#core/domain/cutting-plan';
import { fabricPieceId, fabricId, projectId, stageId } from '#core/domain/ids';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches as inches } from '#core/units/length';
import { jobOfSetup, type Shelf } from '#renderer/features/cutting/planning/job-of-setup';
import { keepable, locksOf, NO_LOCKS } from '#renderer/features/cutting/table/locked-cuts';
import type { PatchSource } from '#renderer/features/cutting/desk/patch-sources';
import { changesSince } from '#renderer/features/cutting/planning/plan-age';
import { withLine, withPiece } from '#renderer/features/cutting/desk/setup-changes';
import { plansAfter } from '#test/helpers/cutting-jobs';
import { planOnTwoYards } from '#test/helpers/kept-plans';

const id = (end: number) => `00000000-0000-4000-8000-${String(end).padStart(12, '0')}`;
const [ring, blue] = [projectId.parse(id(1)), fabricId.parse(id(5))];
const [bolt, leftover] = [fabricPieceId.parse(id(6)), fabricPieceId.parse(id(7))];
const stage = stageId.parse(id(3));
const plan = planOnTwoYards({ projects: [ring], stageId: stage, fabricId: blue, pieceId: bolt });

const tick = (place: number, changes: Partial<TickedStep> = {}): TickedStep => ({
  ...{ pieceId: bolt, place, parts: place === 0 ? 2 : 1, isBooked: true, on: calendarDate('2027-02-28') },
  ...{ leftovers: [], ...changes },
});
const kept = (...ticked: readonly TickedStep[]): KeptWithTicks => ({ plan, ticked });

const fabric: Fabric = {
  ...{ id: blue, name: 'Rust', print: '', colorWords: '', fiber: '', direction: 'one-way' },
  ...{ width: inches(42), isWashed: true, supplier: '', place: '', swatch: '#2f5d8a', notes: '' },
  ...{ photoId: null, createdAt: 1 },
};
const piece = (there: number, changes: Partial<FabricPiece> = {}): FabricPiece => ({
  ...{ id: bolt, fabricId: blue, kind: 'yardage', width: inches(42), there: inches(there) },
  ...{
    kindId: null,
    unitLength: null,
    place: '',
    printRuns: 'along',
    held: inches(0),
    valueMinor: 0,
    ...changes,
  },
});
const scrap = piece(3.5, { id: leftover, kind: 'leftover', width: inches(8) });
const shelf = (...pieces: readonly FabricPiece[]): Shelf => ({
  ...{ fabrics: new Map([[blue, { fabric, pieces, price: null }]]), ownHolds: new Map() },
  ...{ usualWidth: inches(42), lengthStep: inches(4.5) },
});

describe('a kept plan', () => {
  it('tells what it told when it was made, with what is cut of it', () => {
    const told = planOfKept(kept(tick(0)));
    expect(told.pieces[0]).toMatchObject({ piece: bolt, stages: 2 });
    expect(told.pieces[0]?.placed).toHaveLength(20);
    expect(told.pieces[0]?.cuts.filter(({ isDone, stage: of }) => isDone && of === 1)).toHaveLength(2);
    expect(told.totals.usedArea).toBe(inches(42) * inches(7.5) - inches(8) * inches(3.5));
  });

  it('says its steps in words, the strip first', () => {
    const display = { system: 'inch', inchStep: 8 } as const;
    const words = stepsOfPiece(plan.pieces[0]!, []).map((step) => stepWords(step, display));
    expect(words.map((lines) => lines.map((line) => line.words))).toEqual([
      ['Cut ½ in off, so that the end is straight.', 'Cut a strip of 3½ in.', 'Cut it into 12 of 3½ in: A.'],
      [
        'Cut a strip of 3½ in.',
        'Cut it into 4 of 3½ in: A.',
        'Cut it into 4 of 5 in: B.',
        'Keep what is over, 8 × 3½ in.',
      ],
    ]);
  });

  it('is planned on behind what is cut, whose patches are not asked for again', () => {
    const begun = kept(tick(0));
    const locks = locksOf(begun, plan.setup.lines);
    expect(locks.get(bolt)?.length).toBe(inches(4));
    const job = jobOfSetup(plan.setup, shelf(piece(68)), locks);
    expect(job.fabrics[0]?.pieces[0]).toMatchObject({ length: inches(72) });
    const answer = plansAfter(job, 200).simplestCuts;
    expect(answer.pieces[0]?.placed.filter(({ y }) => y < inches(4))).toHaveLength(12);
    expect(answer.pieces[0]?.placed).toHaveLength(20);
    const again = keepable(plan.setup, job, answer);
    expect(stepsOfPiece(again.pieces[0]!, begun.ticked)[0]?.length).toBe(inches(4));
  });

  it('keeps its begun piece even when nothing more may be cut of it, and forgets patches no longer asked for', () => {
    const begun = kept(tick(0));
    const setup = withPiece(withLine(plan.setup, { ...plan.setup.lines[0]!, width: inches(4) }), bolt, false);
    const locks = locksOf(begun, setup.lines);
    const [asked] = jobOfSetup(setup, shelf(piece(68)), locks).fabrics;
    expect(asked?.pieces).toMatchObject([{ id: bolt, length: inches(4) }]);
    expect(JSON.stringify(asked?.pieces[0]?.lockedParts)).not.toContain('"patch"');
  });

  it('locks nothing where nothing is cut or all was taken back', () => {
    expect(locksOf(null, [])).toBe(NO_LOCKS);
    expect(locksOf(kept(), plan.setup.lines).size).toBe(0);
    expect(locksOf(kept(tick(0, { isBooked: false })), plan.setup.lines).size).toBe(0);
  });
});

describe('a kept plan is out of date', () => {
  const now = (on: Shelf, sources: readonly PatchSource[] = []) => ({
    setup: plan.setup,
    shelf: on,
    sources,
  });

  it('not by its own cuts and their leftovers', () => {
    expect(changesSince(kept(), now(shelf(piece(72))))).toEqual([]);
    expect(changesSince(kept(tick(0)), now(shelf(piece(68))))).toEqual([]);
    const both = kept(tick(0), tick(1, { leftovers: [leftover] }));
    expect(changesSince(both, now(shelf(piece(64.5), scrap)))).toEqual([]);
  });

  it('when a piece is shorter, gone, new, or spoken for by another', () => {
    for (const other of [
      shelf(piece(70)),
      shelf(),
      shelf(piece(72), scrap),
      shelf(piece(72, { held: inches(10) })),
    ])
      expect(changesSince(kept(), now(other))).toEqual(['stash']);
  });

  it('when a list it took was kept anew, or its new fabric has come into the stash', () => {
    const source: PatchSource = {
      ...{ stageId: stage, calculator: 'top', projectId: ring, stageName: 'Piecing', title: 'The whole top' },
      ...{ patches: [], keptAt: 7, isOld: false },
    };
    const took = {
      plan: {
        ...plan,
        setup: { ...plan.setup, taken: [{ source: { stageId: stage, calculator: 'top' }, keptAt: 7 }] },
      },
      ticked: [],
    };
    const at = shelf(piece(72));
    expect(changesSince(took, now(at, [source]))).toEqual([]);
    expect(changesSince(took, now(at, [{ ...source, keptAt: 8 }]))).toEqual(['lists']);
    expect(changesSince(took, now(at))).toEqual(['lists']);
    const named = {
      ...plan.setup,
      fabricChoices: [...plan.setup.fabricChoices, { projectId: ring, fabric: 'Sky', fabricId: blue }],
    };
    expect(changesSince(kept(), { ...now(at), setup: named })).toEqual(['fabric-found']);
  });
});
