import { patchLabel } from '#renderer/text/cut-words';
import { describe, expect, it } from 'vitest';
import type { CuttingLine } from '#core/domain/cutting-setup';
import { fabricPieceIdSchema, fabricIdSchema, projectIdSchema, stageIdSchema } from '#core/domain/ids';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import { lengthFromInches as inches, lengthFromUnits } from '#core/units/length';
import { jobOfSetup, type PlanStash } from '#renderer/features/cutting/planning/job-of-setup';
import { type PatchSource, startingSources } from '#renderer/features/cutting/desk/patch-sources';
import {
  isBehind,
  isSetup,
  startingSetup,
  withFabricChoice,
  withLine,
  withoutLine,
  withoutProject,
  withoutSource,
  withPiece,
  withProject,
  withSource,
} from '#renderer/features/cutting/desk/setup-changes';

const id = (end: number) => `00000000-0000-4000-8000-${String(end).padStart(12, '0')}`;
const [ring, runner] = [projectIdSchema.parse(id(1)), projectIdSchema.parse(id(2))];
const blue = fabricIdSchema.parse(id(5));
const size = { width: inches(3.5), length: inches(4.5) };

const source = (changes: Partial<PatchSource> = {}): PatchSource => ({
  stageId: stageIdSchema.parse(id(3)),
  calculator: 'top',
  projectId: ring,
  stageName: 'Piecing',
  title: 'The whole top',
  savedAt: 7,
  isOld: false,
  patches: [{ fabric: 'Sky', ...size, count: 12, mayTurn: true }],
  ...changes,
});

const fabric: Fabric = {
  id: blue,
  name: 'Kettle blue',
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
const piece = (end: number, changes: Partial<FabricPiece> = {}): FabricPiece => ({
  id: fabricPieceIdSchema.parse(id(end)),
  fabricId: blue,
  kind: 'yardage',
  width: inches(42),
  kindId: null,
  unitLength: null,
  place: '',
  printRuns: 'along' as const,
  there: inches(36),
  held: inches(0),
  valueMinor: 0,
  ...changes,
});
const stash = (pieces: readonly FabricPiece[], ownHolds: PlanStash['ownHolds'] = new Map()): PlanStash => ({
  fabrics: new Map([[blue, { fabric, pieces, price: null }]]),
  ownHolds,
  usualWidth: inches(40),
  lengthStep: inches(4.5),
});
const fromBlue = withFabricChoice(startingSetup(ring, [source()]), {
  projectId: ring,
  fabric: 'Sky',
  fabricId: blue,
});

describe('what is cut', () => {
  it('comes from the whole top if that is saved, and from single patches if it is not', () => {
    const both = [source({ calculator: 'patch-size' }), source()];
    expect(startingSources(both).map(({ calculator }) => calculator)).toEqual(['top']);
    expect(startingSources([source({ calculator: 'patch-size' })])).toHaveLength(1);
  });

  it('is not added by itself for a binding or a back', () => {
    expect(startingSources([source({ calculator: 'backing' })])).toEqual([]);
    expect(startingSources([source({ calculator: 'continuous-bias' })])).toEqual([]);
    expect(startingSources([source({ calculator: 'outer-binding' })])).toEqual([]);
  });

  it('is replaced when the answer is saved again, and deleted with it; lines entered by hand stay', () => {
    const start = startingSetup(ring, [source()]);
    const byHand: CuttingLine = {
      id: 'by-hand/1',
      projectId: ring,
      source: null,
      fabric: 'Sky',
      ...size,
      count: 1,
      mayTurn: true,
    };
    const more = withLine(start, byHand);
    const newer = source({ savedAt: 8, patches: [{ fabric: 'Sky', ...size, count: 20, mayTurn: true }] });
    expect(isBehind(more, source())).toBe(false);
    expect(isBehind(more, newer)).toBe(true);
    const taken = withSource(more, newer);
    expect(isBehind(taken, newer)).toBe(false);
    expect(taken.lines.map(({ count }) => count)).toEqual([1, 20]);
    expect(withoutSource(taken, newer).lines).toEqual([byHand]);
    expect(withoutLine(more, 'by-hand/1')).toEqual(start);
  });

  it('can be for two projects at once; the second can be left out, the first cannot', () => {
    const start = startingSetup(ring, [source()]);
    const other = source({ projectId: runner, stageId: stageIdSchema.parse(id(4)) });
    const two = withProject(start, runner, [other]);
    expect(two.lines.map((line) => line.projectId)).toEqual([ring, runner]);
    expect(withoutProject(two, runner)).toEqual(start);
    expect(withoutProject(two, ring)).toEqual(two);
  });

  it('is read back from storage unchanged', () => {
    expect(isSetup(JSON.parse(JSON.stringify(fromBlue)))).toBe(true);
    expect(isSetup({ ...fromBlue, projects: [] })).toBe(false);
  });

  it('is named by letters, and by two letters after Z', () => {
    expect([0, 25, 26, 51, 52, 701, 702].map(patchLabel)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
  });
});

describe('the job for the planner', () => {
  it('has fabric to buy in the usual width when no fabric of the stash is chosen', () => {
    const [asked] = jobOfSetup(startingSetup(ring, [source()]), stash([])).fabrics;
    expect(asked).toMatchObject({ isDirectional: false, pieces: [], toBuy: { width: inches(40) } });
  });

  it('has the pieces of the chosen fabric, its print, and fabric of its width to buy', () => {
    const [asked] = jobOfSetup(fromBlue, stash([piece(6), piece(7, { kind: 'batting' })])).fabrics;
    expect(asked).toMatchObject({ id: blue, isDirectional: true, toBuy: { width: inches(42) } });
    expect(asked?.pieces).toHaveLength(1);
  });

  it('says which way the print runs on each piece', () => {
    const some = stash([piece(6), piece(7, { printRuns: 'across' })]);
    expect(jobOfSetup(fromBlue, some).fabrics[0]?.pieces.map(({ printRuns }) => printRuns)).toEqual([
      'along',
      'across',
    ]);
  });

  it('counts what is set aside for these projects as free, and not what is set aside for others', () => {
    const held = piece(6, { held: inches(30) });
    const lengths = (own: number) =>
      jobOfSetup(fromBlue, stash([held], new Map([[held.id, inches(own)]]))).fabrics[0]?.pieces.map(
        ({ length }) => length,
      );
    expect(lengths(0)).toEqual([inches(6)]);
    expect(lengths(30)).toEqual([inches(36)]);
    expect(jobOfSetup(fromBlue, stash([piece(6, { held: inches(40) })])).fabrics[0]?.pieces).toEqual([]);
  });

  it('leaves out the pieces the maker wants left alone', () => {
    const some = stash([piece(6), piece(7)]);
    const left = withPiece(fromBlue, piece(6).id, false);
    expect(jobOfSetup(left, some).fabrics[0]?.pieces.map((one) => one.id)).toEqual([id(7)]);
    expect(withPiece(left, piece(6).id, true)).toEqual(fromBlue);
  });

  it('straightens fabric by the yard, but not a leftover that was cut with a ruler', () => {
    const margins = (kind: FabricPiece['kind']) =>
      jobOfSetup(fromBlue, stash([piece(6, { kind })])).fabrics[0]?.pieces[0]?.margins.straighten;
    expect(margins('yardage')).toBe(inches(0.5));
    expect(margins('leftover')).toBe(lengthFromUnits(0));
  });
});
