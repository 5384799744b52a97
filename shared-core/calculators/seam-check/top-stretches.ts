import { assertNever } from '#core/assert-never';
import type { Length } from '#core/units/length';
import { planUnit } from '../patches/patch-units';
import { findBlock } from '../top/assembly';
import { type BlockKind, type Layout, type Round, type TopInput, topInput } from '../top/input';
import { workOutTop } from '../top/work';

/**
 * What lies side by side between two cut edges, finished, with the number of patches it has; a block or unit of unknown make
 * counts as one patch. In 1/320 mm.
 */
export interface Stretch {
  readonly width: number;
  readonly patches: number;
}

export interface TopStretches {
  /** The first of the widest rows, or the center. */
  readonly row: readonly Stretch[];
  /** What each round adds on either side, from the inside out. */
  readonly rounds: readonly Stretch[];
  readonly seam: Length;
}

/** What lies side by side across a top as it was planned; null if the stored input no longer reads, or has no answer. */
export function topStretches(stored: unknown): TopStretches | null {
  const read = topInput.safeParse(stored);
  if (!read.success || !workOutTop(read.data).ok) return null;
  const { layout, blocks, seamAllowance: seam } = read.data;
  return { ...layoutStretches(layout, blocks, seam), seam };
}

type Known = readonly BlockKind[];

function layoutStretches(layout: Layout, blocks: Known, seam: number): Omit<TopStretches, 'seam'> {
  switch (layout.layout) {
    case 'rows':
      return { row: widestRow(layout, blocks, seam), rounds: roundStretches(layout.rounds, blocks, seam) };
    case 'center':
      return {
        row: blockStretch(blocks, layout.block, seam),
        rounds: roundStretches(layout.rounds, blocks, seam),
      };
    case 'rings':
      return {
        row: [{ width: layout.centerAcross, patches: 1 }],
        rounds: layout.rings.map(({ width }) => ({ width, patches: 1 })),
      };
    default:
      return assertNever(layout);
  }
}

type Rows = Extract<TopInput['layout'], { layout: 'rows' }>;

function widestRow({ rows, sashing }: Rows, known: Known, seam: number): readonly Stretch[] {
  const widthOf = (row: readonly Stretch[]) => row.reduce((sum, { width }) => sum + width, 0);
  const made = rows.map(({ blocks }) => {
    const beside = blocks.flatMap(({ block, times }) =>
      Array.from({ length: times }, () => blockStretch(known, block, seam)).flat(),
    );
    const strip = sashing === null ? [] : [{ width: sashing.width, patches: 1 }];
    return beside.flatMap((block, at) => (at === 0 ? [block] : [...strip, block]));
  });
  const widest = Math.max(...made.map(widthOf));
  return made.find((row) => widthOf(row) === widest) ?? [];
}

function roundStretches(rounds: readonly Round[], blocks: Known, seam: number): readonly Stretch[] {
  return rounds.flatMap((round) =>
    round.round === 'border'
      ? [{ width: round.width, patches: 1 }]
      : blockStretch(blocks, round.block, seam, 'turned'),
  );
}

/** A block of equal squares or square units has as many patches across as fit; any other counts as one patch. */
function blockStretch(
  blocks: Known,
  name: string,
  seam: number,
  laid: 'straight' | 'turned' = 'straight',
): readonly Stretch[] {
  const block = findBlock(blocks, name);
  if (block === undefined) return [];
  const width = laid === 'straight' ? block.width : block.length;
  return [{ width, patches: patchesAcross(block, width, seam) }];
}

function patchesAcross({ units, width, length }: BlockKind, across: number, seam: number): number {
  const plans = units.map(({ unit }) => planUnit(unit, seam));
  const side = plans[0]?.width ?? 0;
  const isGrid =
    side > 0 &&
    plans.every((plan) => plan.width === side && plan.length === side) &&
    width % side === 0 &&
    length % side === 0;
  return isGrid ? across / side : 1;
}
