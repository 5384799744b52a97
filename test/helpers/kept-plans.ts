import type { KeptPlan, CutTree } from '#core/domain/cutting-plan';
import { type CuttingLine, STARTING_TABLE } from '#core/domain/cutting-setup';
import type { FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import { lengthFromInches as inches } from '#core/units/length';

const rest = (width: number, height: number, use: 'leftover' | 'scrap' | 'margin'): CutTree => ({
  kind: 'rest',
  width: inches(width),
  height: inches(height),
  use,
});
const patches = (patch: number, width: number, height: number, count: number): readonly CutTree[] =>
  Array.from({ length: count }, () => ({
    kind: 'patch',
    width: inches(width),
    height: inches(height),
    patch,
    turned: false,
  }));
const along = (height: number, ...parts: readonly CutTree[]): CutTree => ({
  kind: 'split',
  direction: 'along',
  width: inches(42),
  height: inches(height),
  parts,
});

export interface PlanFor {
  /** With two projects, both share the second strip; the others belong to the first. */
  readonly projects: readonly [ProjectId, ...ProjectId[]];
  readonly stageId: StageId;
  readonly fabricId: FabricId;
  readonly pieceId: FabricPieceId;
}

/**
 * A plan for a piece 42 by 72 in: half an inch to straighten, a strip of 12 A (3½ in), a strip of 4 A, 4 B (5 × 3½) and a
 * leftover of 8 × 3½ in, and the uncut end.
 */
export function planOnTwoYards({ projects, stageId, fabricId, pieceId }: PlanFor): KeptPlan {
  const [first, second = first] = projects;
  const line = (id: string, projectId: ProjectId, width: number, count: number): CuttingLine => ({
    id,
    projectId,
    source: { stageId, calculator: 'top' },
    fabric: 'Rust',
    width: inches(width),
    length: inches(3.5),
    count,
    mayTurn: false,
  });
  const parts: readonly CutTree[] = [
    rest(42, 0.5, 'margin'),
    along(3.5, ...patches(0, 3.5, 3.5, 12)),
    along(3.5, ...patches(0, 3.5, 3.5, 4), ...patches(1, 5, 3.5, 4), rest(8, 3.5, 'leftover')),
    rest(42, 64.5, 'leftover'),
  ];
  return {
    setup: {
      projects,
      taken: [],
      lines: [line('a', first, 3.5, 16), line('b', second, 5, 4)],
      fabricChoices: [{ projectId: first, fabric: 'Rust', fabricId }],
      leftOut: [],
      table: STARTING_TABLE,
    },
    rule: '2-stage',
    pieces: [
      {
        pieceId,
        fabric: fabricId,
        tree: { kind: 'split', direction: 'across', width: inches(42), height: inches(72), parts },
      },
    ],
    purchases: [],
    unplaced: [],
    plannedWith: [{ pieceId, width: inches(42), length: inches(72) }],
  };
}
