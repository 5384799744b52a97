import { describe, expect, it } from 'vitest';
import { type KeptWithTicks, planOfKept, stepsOfPiece } from '#core/cutting/tree/kept-plan';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import { STARTING_TABLE } from '#core/domain/cutting-setup';
import { fabricPieceIdSchema, fabricIdSchema, projectIdSchema } from '#core/domain/ids';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import { ONE_THING } from '#core/domain/stash-kind';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches as inches, lengthFromUnits } from '#core/units/length';
import { cuttablePieces, jobOfSetup, type PlanStash } from '#renderer/features/cutting/planning/job-of-setup';
import { planToSave, locksOf } from '#renderer/features/cutting/table/locked-cuts';
import { changesSince } from '#renderer/features/cutting/planning/plan-age';
import { pieceSizeWords, stepWords } from '#renderer/text/cut-words';
import { plansAfter } from '#test/helpers/cutting-jobs';

const id = (end: number) => `00000000-0000-4000-8000-${String(end).padStart(12, '0')}`;
const [ring, mixed] = [projectIdSchema.parse(id(1)), fabricIdSchema.parse(id(5))];
const display = { system: 'inch', inchStep: 8 } as const;

const fabric: Fabric = {
  id: mixed,
  name: 'Meadow mix',
  print: '',
  colorWords: '',
  fiber: '',
  direction: 'any',
  width: inches(42),
  isWashed: false,
  supplier: '',
  place: '',
  swatch: '#2f5d8a',
  notes: '',
  photoId: null,
  createdAt: 1,
};
const strips = (sheets: number, changes: Partial<FabricPiece> = {}): FabricPiece => ({
  id: fabricPieceIdSchema.parse(id(6)),
  fabricId: mixed,
  kind: 'precut-strips',
  kindId: null,
  place: '',
  width: inches(42),
  unitLength: inches(2.5),
  there: inches(2.5 * sheets),
  held: inches(0),
  printRuns: 'along',
  valueMinor: 0,
  ...changes,
});
const stash = (...pieces: readonly FabricPiece[]): PlanStash => ({
  fabrics: new Map([[mixed, { fabric, pieces, price: null }]]),
  ownHolds: new Map(),
  usualWidth: inches(42),
  lengthStep: inches(4.5),
});
const setup: CuttingSetup = {
  projects: [ring],
  taken: [],
  leftOut: [],
  table: { ...STARTING_TABLE, selvage: inches(0.5) },
  fabricChoices: [{ projectId: ring, fabric: 'Mix', fabricId: mixed }],
  lines: [
    {
      id: 'a',
      projectId: ring,
      source: null,
      fabric: 'Mix',
      mayTurn: true,
      width: inches(2.5),
      length: inches(6),
      count: 39,
    },
  ],
};
const keptFrom = (on: PlanStash, kept: KeptWithTicks | null = null) => {
  const job = jobOfSetup(setup, on, locksOf(kept, setup.lines));
  return planToSave(setup, job, plansAfter(job, 200).simplestCuts);
};

describe('a pack counted in sheets', () => {
  it('goes to the planner as whole sheets that need no straightening and have no selvage', () => {
    const [asked] = jobOfSetup(setup, stash(strips(7.5))).fabrics;
    expect(asked?.pieces).toMatchObject([
      {
        width: inches(42),
        length: inches(17.5),
        sheetLength: inches(2.5),
        margins: { leftSelvage: 0, rightSelvage: 0, straighten: 0 },
      },
    ]);
    expect(cuttablePieces({ fabric, pieces: [strips(0.5)], price: null }, new Map())).toEqual([]);
  });

  it('is not cut when it is thread, needles or notions', () => {
    const things = (['thread', 'needles', 'notions'] as const).map((kind) =>
      strips(1, { kind, width: ONE_THING, unitLength: ONE_THING, there: lengthFromUnits(960) }),
    );
    expect(cuttablePieces({ fabric, pieces: things, price: null }, new Map())).toEqual([]);
  });

  it('is cut in stacks, put in words', () => {
    const plan = keptFrom(stash(strips(10)));
    const [piece] = planOfKept({ plan, ticked: [] }).pieces;
    expect(pieceSizeWords(piece!, display)).toBe('6 of 42 × 2½ in');
    const words = stepsOfPiece(plan.pieces[0]!, []).map((step) => stepWords(step, display));
    expect(words.map((lines) => lines.map((line) => line.words))).toEqual([
      ['Take 4 from the pack and stack them.', 'Cut each into 7 of 6 in: A.'],
      ['Take one from the pack.', 'Cut it into 7 of 6 in: A.'],
      ['Take one from the pack.', 'Cut it into 4 of 6 in: A.', 'Throw out the 18 in left over.'],
    ]);
  });

  it('is planned again behind the sheets that are cut, and is out of date when others are gone', () => {
    const plan = keptFrom(stash(strips(10)));
    const kept: KeptWithTicks = {
      plan,
      ticked: [
        {
          pieceId: strips(10).id,
          place: 0,
          parts: 4,
          isBooked: true,
          leftovers: [],
          on: calendarDate('2027-02-28'),
        },
      ],
    };
    const now = (on: PlanStash) => ({ setup, stash: on, sources: [] });
    expect(changesSince(kept, now(stash(strips(6))))).toEqual([]);
    expect(changesSince(kept, now(stash(strips(5))))).toEqual(['stash']);
    const again = keptFrom(stash(strips(6)), kept);
    expect(again.pieces[0]?.tree).toMatchObject({ kind: 'sheets', parts: { length: 6 } });
    expect(again.plannedWith).toEqual(plan.plannedWith);
  });
});
