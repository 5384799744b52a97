import { assertNever } from '#core/assert-never';
import { growPolygon } from '#core/geometry/offset-polygon';
import { type Polygon, polygonPerimeter } from '#core/geometry/polygon';
import { failure, type Result, success } from '#core/result';
import { KILOMETER_UNITS } from '#core/units/length';
import type { Refusal } from '../calculator';
import {
  type FabricLength,
  fabricNeeded,
  type FabricNeeded,
  lengthPerFabric,
  type PatchDemand,
} from '../patches/fabric-needed';
import { rectangleAt } from '../patches/cut-shapes';
import { type SizedPatch, sizedPatch } from '../patches/cut-sizes';
import { fabricRefusal, cutsOf, isFromFabric } from '../patches/patch-size/work';
import type { CutPatch } from '../patches/patch-unit';
import { planUnit } from '../patches/patch-units';
import { addRounds } from './add-rounds';
import { type Assembly, findBlock, lengthTerm, tooLarge, unknownBlock, WIDEST_TOP } from './assembly';
import { type BlockTotals, blockTotals } from './block-seams';
import { layRings } from './lay-rings';
import { layRows } from './lay-rows';
import type { BlockKind, TopInput } from './input';

/** The values behind the figures, tables, steps, notes and drawing. */
export interface TopWork {
  readonly input: TopInput;
  readonly assembly: Assembly;
  readonly counted: readonly CountedBlock[];
  readonly needed: FabricNeeded;
  readonly fabrics: readonly FabricToBuy[];
  /** Rotary cuts through one layer. */
  readonly cuts: number;
  /** One fewer than there are patches, since every seam joins two parts into one. */
  readonly seams: number;
  /** Finished length: half of what the edges of all patches are longer than the edge of the top. */
  readonly seamLength: number;
  /** Finished, in 1/320 mm. Only half, because all edges of a large top of small patches may be longer than a length can be. */
  readonly halfPatchEdges: number;
  readonly topEdge: number;
  /** With the seam allowance along every outer edge. At the points of a polygon it reaches further than along a side. */
  readonly sewn: { readonly width: number; readonly length: number };
}

interface FabricToBuy extends FabricLength {
  /** With the safety extra, not rounded. */
  readonly withExtra: number;
}

export interface CountedBlock {
  readonly block: BlockKind;
  readonly count: number;
  readonly totals: BlockTotals;
}

export function workOutTop(input: TopInput): Result<TopWork, Refusal> {
  const laid = assemble(input);
  if (!laid.ok) return laid;
  const assembly = laid.value;
  if (Math.max(assembly.width, assembly.length) > WIDEST_TOP) return failure(tooLarge());
  const counted = countBlocks(input, assembly);
  const demands = [...blockDemands(input, counted), ...placedDemands(input, assembly)];
  const needed = fabricNeeded(
    demands.map(({ demand }) => demand),
    input.fabricWidth,
    input.seamAllowance,
  );
  if (!needed.ok)
    return failure({ ...fabricRefusal(needed.error, input.fabricWidth), field: ['fabricWidth'] });
  const edges = assembly.patches.reduce((sum, { polygon }) => sum + polygonPerimeter(polygon), 0);
  const inBlocks = counted.reduce((sum, { count, totals }) => sum + count * totals.edges, 0);
  const patches = counted.reduce(
    (sum, { count, totals }) => sum + count * totals.patches,
    assembly.patches.length,
  );
  const halfPatchEdges = (edges + inBlocks) / 2;
  if (halfPatchEdges > KILOMETER_UNITS) return failure(tooLarge());
  const topEdge = polygonPerimeter(assembly.outline);
  const seamLength = Math.max(0, halfPatchEdges - topEdge / 2);
  return success({
    input,
    assembly,
    counted,
    needed: needed.value,
    fabrics: fabricsToBuy(needed.value, input),
    cuts: cutsOf(
      demands.map(({ sized }) => sized),
      needed.value,
    ),
    seams: patches - 1,
    seamLength,
    halfPatchEdges,
    topEdge,
    sewn: boundsOf(growPolygon(assembly.outline, input.seamAllowance)),
  });
}

function boundsOf(polygon: Polygon): TopWork['sewn'] {
  const [xs, ys] = [polygon.map(({ x }) => x), polygon.map(({ y }) => y)];
  return { width: Math.max(...xs) - Math.min(...xs), length: Math.max(...ys) - Math.min(...ys) };
}

function assemble({ layout, blocks, seamAllowance }: TopInput): Result<Assembly, Refusal> {
  switch (layout.layout) {
    case 'rows': {
      const rows = layRows(layout, blocks, seamAllowance);
      return rows.ok ? addRounds(rows.value, layout.rounds, blocks, seamAllowance) : rows;
    }
    case 'center': {
      const block = findBlock(blocks, layout.block);
      if (block === undefined) return failure(unknownBlock(layout.block, ['layout', 'block']));
      return addRounds(alone(block), layout.rounds, blocks, seamAllowance);
    }
    case 'rings':
      return success(layRings(layout, seamAllowance));
    default:
      return assertNever(layout);
  }
}

function fabricsToBuy({ strips }: FabricNeeded, { safetyExtraPercent }: TopInput): readonly FabricToBuy[] {
  return lengthPerFabric(strips).map(({ fabric, length }) => {
    return { fabric, length, withExtra: length * (1 + safetyExtraPercent / 100) };
  });
}

/** A top of one block. */
function alone(block: BlockKind): Assembly {
  const { width, length } = block;
  return {
    blocks: [{ block, x: 0, y: 0 }],
    patches: [],
    steps: [
      {
        label: 'Center',
        width,
        length,
        formula: 'W',
        terms: [lengthTerm('W', 'width of the center', width)],
      },
    ],
    misfits: [],
    x: 0,
    y: 0,
    width,
    length,
    outline: rectangleAt(0, 0, width, length),
    rings: [],
  };
}

/** Counted by name, because a round turns blocks by a quarter without making them another kind. */
function countBlocks(input: TopInput, assembly: Assembly): readonly CountedBlock[] {
  const counts = new Map<string, number>();
  for (const { block } of assembly.blocks) counts.set(block.name, (counts.get(block.name) ?? 0) + 1);
  return input.blocks
    .filter((block, index) => findBlock(input.blocks.slice(0, index), block.name) === undefined)
    .map((block) => ({
      block,
      count: counts.get(block.name) ?? 0,
      totals: blockTotals(block, input.seamAllowance),
    }))
    .filter(({ count }) => count > 0);
}

/** A patch with its count, and what it needs of the fabric. */
interface SizedDemand {
  readonly sized: SizedPatch;
  readonly demand: PatchDemand;
}

function blockDemands(input: TopInput, counted: readonly CountedBlock[]): readonly SizedDemand[] {
  return counted
    .flatMap(({ block, count }) =>
      block.units.flatMap(({ unit, times, fabrics }) =>
        planUnit(unit, input.seamAllowance).patches.map((patch) => {
          const index = { first: 0, second: 1, third: 2 }[patch.role];
          const fabric = fabrics[index] ?? fabrics.at(-1) ?? '';
          return demandOf(input, patch, fabric, count * times);
        }),
      ),
    )
    .filter(({ sized }) => isFromFabric(sized));
}

function placedDemands(input: TopInput, assembly: Assembly): readonly SizedDemand[] {
  const alike = new Map<string, { readonly fabric: string; readonly patch: CutPatch; count: number }>();
  for (const { fabric, patch } of assembly.patches) {
    const key = JSON.stringify([fabric, patch.name, patch.across.exact, patch.along.exact, patch.standsUp]);
    const group = alike.get(key);
    if (group === undefined) alike.set(key, { fabric, patch, count: 1 });
    else group.count += 1;
  }
  return [...alike.values()].map(({ fabric, patch, count }) => demandOf(input, patch, fabric, count));
}

/** A directional print decides which side of a rectangle is across the fabric. */
function demandOf(input: TopInput, patch: CutPatch, fabric: string, units: number): SizedDemand {
  const sized = sizedPatch(patch, units, input);
  const { across, along, strip } = sized;
  const mayTurn = !input.fabrics.some((one) => one.label === fabric && one.isDirectional);
  const demand: PatchDemand = {
    fabric,
    name: patch.name,
    stripWidth: across.rounded,
    along: strip,
    isRectangle: patch.shape.isRectangle,
    mayTurn,
    mayJoin: patch.source === 'fabric-joined',
  };
  if (mayTurn || !demand.isRectangle || patch.standsUp !== true) return { sized, demand };
  const turned = { first: across.rounded, pitch: across.rounded, count: strip.count };
  return { sized, demand: { ...demand, stripWidth: along.rounded, along: turned } };
}
