import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import type { NeedAmount } from '#core/domain/need';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import { coverNeeds, type PieceOnShelf } from '#core/stash/shopping/cover-needs';
import {
  cutFrom,
  lengthFor,
  type PatchTurning,
  patchTurning,
  sizeOfNeed,
} from '#core/stash/shopping/fill-rows';
import { holdsOfLine, shoppingLines } from '#core/stash/shopping/shopping-lines';
import type { FabricToBuy } from '#core/stash/shopping/shopping-list';
import { type Length, lengthFromInches } from '#core/units/length';
import type { PrintDirection } from '#core/domain/stash';
import { rulerLength } from '#test/helpers/arbitraries';

const STEP = lengthFromInches(4.5);
const WIDTH = lengthFromInches(42);
const FABRICS = ['f1', 'f2'] as FabricId[];
const PROJECTS = ['p1', 'p2', 'p3'] as ProjectId[];

const DIRECTION: Readonly<Record<string, PrintDirection>> = { f2: 'one-way' };
const yardage = (id: FabricId | null | undefined) => patchTurning(DIRECTION[id ?? ''] ?? 'any', 'along');

const fabrics = new Map(
  FABRICS.map((id): [FabricId, FabricToBuy] => [
    id,
    { id, name: id, supplier: '', swatch: '#aaaaaa', direction: DIRECTION[id] ?? 'any', width: WIDTH },
  ]),
);

const anyPatch = fc.record({
  width: rulerLength(40),
  length: rulerLength(30),
  count: fc.integer({ min: 1, max: 60 }),
  mayTurn: fc.boolean(),
});
const anyAmount: fc.Arbitrary<NeedAmount> = fc.oneof(
  fc
    .array(anyPatch, { minLength: 1, maxLength: 4 })
    .map((patches) => ({ measure: 'patches', patches }) as const),
  fc
    .record({ strip: rulerLength(4), needed: rulerLength(400), cost: rulerLength(4) })
    .map(
      ({ needed, cost, ...rest }) => ({ measure: 'strips', ...rest, cost, needed: needed + cost }) as const,
    ),
);

const anyNeed = fc
  .record({
    amount: anyAmount,
    projectId: fc.constantFrom(...PROJECTS),
    fabricId: fc.constantFrom(...FABRICS),
    extraPercent: fc.constantFrom(0, 5, 12.5),
  })
  .map((some): Omit<FabricNeed, 'source'> => ({
    ...some,
    projectName: some.projectId,
    stageId: 's' as StageId,
    stageName: 'Piecing',
    name: 'Dark',
    kind: 'yardage',
    fabricWidth: WIDTH,
    package: null,
    ignores: [],
  }));
const anyNeeds = fc
  .array(anyNeed, { minLength: 1, maxLength: 5 })
  .map((needs) => needs.map((need, place): FabricNeed => ({ ...need, source: `s/${String(place)}` })));

const anyTurning = fc.constantFrom<PatchTurning>('any', 'along', 'across');
const anyPiece = fc.record({
  fabricId: fc.constantFrom(...FABRICS),
  width: rulerLength(44),
  turning: anyTurning,
  there: rulerLength(120),
  holds: fc.uniqueArray(fc.record({ projectId: fc.constantFrom(...PROJECTS), held: rulerLength(60) }), {
    selector: ({ projectId }) => projectId,
    maxLength: 2,
  }),
});
const anyShelf = fc.array(anyPiece, { maxLength: 5 }).map((pieces) =>
  pieces.map((piece, place): PieceOnShelf => ({
    ...piece,
    isCounted: false,
    id: String(place) as FabricPieceId,
  })),
);

const listOf = (needs: readonly FabricNeed[], shelf: readonly PieceOnShelf[]) =>
  shoppingLines(coverNeeds(needs, shelf, []), fabrics, STEP);

function bought(line: ReturnType<typeof listOf>[number], length: Length, place: number): PieceOnShelf {
  return {
    id: `bought ${String(place)}` as FabricPieceId,
    fabricId: line.fabric?.id ?? ('none' as FabricId),
    width: line.width,
    turning: yardage(line.fabric?.id),
    isCounted: false,
    there: length,
    holds: holdsOfLine(line.shares, length).map(({ projectId, length: held }) => ({ projectId, held })),
  };
}

describe('the list of what to buy', () => {
  test('rounds each length up to what shops cut, by less than one step', () => {
    fc.assert(
      fc.property(anyNeeds, anyShelf, (needs, shelf) => {
        for (const { exact, length } of listOf(needs, shelf)) {
          expect(length % STEP).toBe(0);
          expect(length).toBeGreaterThanOrEqual(exact);
          expect(length - exact).toBeLessThan(STEP);
        }
      }),
    );
  });

  test('is empty once everything on it is bought and set aside', () => {
    const clears = (needs: readonly FabricNeed[], shelf: readonly PieceOnShelf[]) => {
      const before = listOf(needs, shelf);
      const after = [...shelf, ...before.map((line, place) => bought(line, line.length, place))];
      expect(listOf(needs, after)).toEqual([]);
    };
    fc.assert(fc.property(anyNeeds, (needs) => clears(needs, [])));
    fc.assert(fc.property(anyNeed, anyShelf, (need, shelf) => clears([{ ...need, source: 's/0' }], shelf)));
  });

  test('is empty too where only the pieces that were there, in the order that left least, make it enough', () => {
    const [projectId, fabricId] = ['p3' as ProjectId, 'f2' as FabricId];
    const small = { width: 1_016, length: 4_064, count: 1, mayTurn: false };
    const large = { width: 114_808, length: 15_240, count: 52, mayTurn: true };
    const need: FabricNeed = {
      projectId,
      projectName: 'p3',
      stageId: 's' as StageId,
      stageName: 'Piecing',
      source: 's/0',
      name: 'Dark',
      kind: 'yardage',
      fabricWidth: WIDTH,
      extraPercent: 0,
      package: null,
      fabricId,
      ignores: [],
      amount: { measure: 'patches', patches: [small, large] },
    };
    const shelf: readonly PieceOnShelf[] = [
      {
        id: '0' as FabricPieceId,
        fabricId,
        width: 45_720,
        turning: 'any',
        there: 574_040,
        holds: [],
        isCounted: false,
      },
      {
        id: '1' as FabricPieceId,
        fabricId,
        width: 1_016,
        turning: 'any',
        there: 4_064,
        holds: [{ projectId, held: 1_016 }],
        isCounted: false,
      },
    ];
    const before = listOf([need], shelf);
    expect(before).toHaveLength(1);
    expect(
      listOf([need], [...shelf, ...before.map((line, place) => bought(line, line.length, place))]),
    ).toEqual([]);
  });

  test('is empty too after a piece on which a patch was only tried turned', () => {
    const [projectId, fabricId] = ['p1' as ProjectId, 'f2' as FabricId];
    const patch = { width: 37_592, length: 1_016, count: 1, mayTurn: true };
    const need: FabricNeed = {
      projectId,
      projectName: 'p1',
      stageId: 's' as StageId,
      stageName: 'Piecing',
      source: 's/0',
      name: 'Dark',
      kind: 'yardage',
      fabricWidth: WIDTH,
      extraPercent: 0,
      package: null,
      fabricId,
      ignores: [],
      amount: { measure: 'patches', patches: [patch] },
    };
    const narrow: PieceOnShelf = {
      id: '0' as FabricPieceId,
      fabricId,
      width: 1_016,
      turning: 'any',
      isCounted: false,
      there: 1_016,
      holds: [{ projectId, held: 1_016 }],
    };
    const [line] = listOf([need], [narrow]);
    expect(listOf([need], [narrow, bought(line!, line!.length, 0)])).toEqual([]);
  });

  test('is never longer because of fabric in the stash', () => {
    fc.assert(
      fc.property(anyNeed, anyShelf, (one, shelf) => {
        const need: FabricNeed = { ...one, source: 's/0' };
        const [withShelf] = listOf([need], shelf);
        const [without] = listOf([need], []);
        expect(withShelf?.length ?? 0).toBeLessThanOrEqual(without?.length ?? 0);
      }),
    );
  });

  test('is empty when one piece is long enough, and not when the piece is one unit too short', () => {
    fc.assert(
      fc.property(anyNeed, (one) => {
        const need: FabricNeed = { ...one, source: 's/0' };
        const turning = yardage(need.fabricId);
        const length = lengthFor(need.amount, { width: WIDTH, turning }) ?? 0;
        const piece = {
          id: 'x' as FabricPieceId,
          fabricId: need.fabricId ?? ('f1' as FabricId),
          width: WIDTH,
          turning: yardage(need.fabricId),
        };
        const shelf = (there: number) => [{ ...piece, isCounted: false, there, holds: [] }];
        expect(listOf([need], shelf(length))).toEqual([]);
        fc.pre(need.amount.measure === 'strips');
        expect(listOf([need], shelf(length - 1))).not.toEqual([]);
      }),
    );
  });

  test('does not count fabric set aside for another project', () => {
    fc.assert(
      fc.property(anyNeed, rulerLength(200), (one, there) => {
        const need: FabricNeed = { ...one, projectId: PROJECTS[0] ?? one.projectId, source: 's/0' };
        const holds = [{ projectId: PROJECTS[1] ?? one.projectId, held: there }];
        const piece = {
          id: 'x' as FabricPieceId,
          fabricId: need.fabricId ?? ('f1' as FabricId),
          width: WIDTH,
          turning: yardage(need.fabricId),
        };
        expect(listOf([need], [{ ...piece, isCounted: false, there, holds }])).toEqual(listOf([need], []));
      }),
    );
  });
});

describe('cutting in rows', () => {
  test('uses no more fabric than there is, and gives no more than fits on it', () => {
    fc.assert(
      fc.property(
        anyAmount,
        rulerLength(44),
        anyTurning,
        rulerLength(200),
        (amount, width, turning, length) => {
          const cut = cutFrom(amount, { width, turning, length });
          expect(cut.length).toBeLessThanOrEqual(length);
          const taken = sizeOfNeed(amount) - sizeOfNeed(cut.left);
          const most =
            amount.measure === 'patches' ? width * cut.length : width * (cut.length / stripOf(amount));
          expect(taken).toBeLessThanOrEqual(most);
          expect(taken).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  test('with a print across the piece gives the same as with all patches turned, and what is left keeps its direction', () => {
    fc.assert(
      fc.property(fc.array(anyPatch), rulerLength(44), rulerLength(200), (patches, width, length) => {
        const across = cutFrom({ measure: 'patches', patches }, { width, turning: 'across', length });
        const turned = cutFrom(
          { measure: 'patches', patches: patches.map(turn) },
          { width, turning: 'along', length },
        );
        expect(across.length).toBe(turned.length);
        if (across.left.measure !== 'patches' || turned.left.measure !== 'patches') return;
        expect(across.left.patches.map(turn)).toEqual(turned.left.patches);
      }),
    );
  });

  test('turns no patch of a directional print, even if it would fit turned', () => {
    const wide = { width: 10, length: 5, count: 1, mayTurn: true };
    const cut = (turning: PatchTurning) =>
      cutFrom({ measure: 'patches', patches: [wide] }, { width: 8, turning, length: 20 });
    expect(cut('any')).toMatchObject({ left: { patches: [] }, length: 10 });
    expect(cut('across')).toMatchObject({ left: { patches: [] }, length: 10 });
    expect(cut('along')).toMatchObject({ left: { patches: [wide] }, length: 0 });
  });
});

function turn<Patch extends { readonly width: number; readonly length: number }>(patch: Patch): Patch {
  return { ...patch, width: patch.length, length: patch.width };
}

function stripOf(amount: NeedAmount): number {
  return amount.measure === 'strips' ? amount.strip : 1;
}
