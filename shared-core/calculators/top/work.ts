import { assertNever } from '#core/assert-never';
import { polygonPerimeter } from '#core/geometry/polygon';
import { failure, type Result, success } from '#core/result';
import { MAX_LENGTH_UNITS } from '#core/units/length';
import type { Refusal } from '../calculator';
import { fabricNeeded, type FabricNeeded, type PatchDemand } from '../patches/fabric-needed';
import { rectangleAt } from '../patches/cut-shapes';
import { type SizedPatch, sizedPatch } from '../patches/cut-sizes';
import { fabricRefusal, cutsOf, isFromFabric } from '../patches/patch-size/work';
import type { CutPatch } from '../patches/patch-unit';
import { planUnit } from '../patches/patch-units';
import { addRounds } from './add-rounds';
import { type Assembly, findBlock, lengthTerm, tooLarge, unknownBlock, WIDEST_TOP } from './assembly';
import { type BlockMake, makeOfBlock } from './block-seams';
import { layRings } from './lay-rings';
import { layRows } from './lay-rows';
import type { BlockKind, TopInput } from './input';

/** What every part of the answer is drawn from. */
export interface TopWork {
  readonly input: TopInput;
  readonly assembly: Assembly;
  readonly counted: readonly CountedBlock[];
  readonly needed: FabricNeeded;
  /** Rotary cuts through one layer. */
  readonly cuts: number;
  /** Every seam joins two parts into one, so there is one less than there are patches. */
  readonly seams: number;
  /** Finished length: half of what all patches have more in edges than the top has. */
  readonly seamLength: number;
  /** Finished, in 1/320 mm. Half, since all edges of a large top of small patches are longer than a length may be. */
  readonly halfPatchEdges: number;
  readonly topEdge: number;
}

export interface CountedBlock {
  readonly block: BlockKind;
  readonly count: number;
  readonly make: BlockMake;
}

export function workOutTop(input: TopInput): Result<TopWork, Refusal> {
  const laid = assemble(input);
  if (!laid.ok) return laid;
  const assembly = laid.value;
  if (Math.max(assembly.width, assembly.length) > WIDEST_TOP) return failure(tooLarge());
  const counted = countBlocks(input, assembly);
  const demands = [...blockDemands(input, counted), ...pieceDemands(input, assembly)];
  const needed = fabricNeeded(
    demands.map(({ demand }) => demand),
    input.fabricWidth,
    input.seamAllowance,
  );
  if (!needed.ok)
    return failure({ ...fabricRefusal(needed.error, input.fabricWidth), field: ['fabricWidth'] });
  const edges = assembly.pieces.reduce((sum, piece) => sum + polygonPerimeter(piece.polygon), 0);
  const inBlocks = counted.reduce((sum, { count, make }) => sum + count * make.edges, 0);
  const patches = counted.reduce(
    (sum, { count, make }) => sum + count * make.patches,
    assembly.pieces.length,
  );
  const halfPatchEdges = (edges + inBlocks) / 2;
  if (halfPatchEdges > MAX_LENGTH_UNITS) return failure(tooLarge());
  const topEdge = polygonPerimeter(assembly.outline);
  const seamLength = Math.max(0, halfPatchEdges - topEdge / 2);
  return success({
    input,
    assembly,
    counted,
    needed: needed.value,
    cuts: cutsOf(
      demands.map(({ sized }) => sized),
      needed.value,
    ),
    seams: patches - 1,
    seamLength,
    halfPatchEdges,
    topEdge,
  });
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

function alone(block: BlockKind): Assembly {
  const { width, length } = block;
  return {
    blocks: [{ block, x: 0, y: 0 }],
    pieces: [],
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
  };
}

/** By name, since a round turns blocks on their side without making them another kind. */
function countBlocks(input: TopInput, assembly: Assembly): readonly CountedBlock[] {
  const counts = new Map<string, number>();
  for (const { block } of assembly.blocks) counts.set(block.name, (counts.get(block.name) ?? 0) + 1);
  return input.blocks
    .filter((block, index) => findBlock(input.blocks.slice(0, index), block.name) === undefined)
    .map((block) => ({
      block,
      count: counts.get(block.name) ?? 0,
      make: makeOfBlock(block, input.seamAllowance),
    }))
    .filter(({ count }) => count > 0);
}

/** A patch in all its number, and what it asks of the fabric. */
interface SizedDemand {
  readonly sized: SizedPatch;
  readonly demand: PatchDemand;
}

function blockDemands(input: TopInput, counted: readonly CountedBlock[]): readonly SizedDemand[] {
  return counted
    .flatMap(({ block, count }) =>
      block.parts.flatMap(({ unit, times, fabrics }) =>
        planUnit(unit, input.seamAllowance).patches.map((patch) => {
          const place = { first: 0, second: 1, third: 2 }[patch.role];
          const fabric = fabrics[place] ?? fabrics.at(-1) ?? '';
          return demandOf(input, patch, fabric, count * times);
        }),
      ),
    )
    .filter(({ sized }) => isFromFabric(sized));
}

function pieceDemands(input: TopInput, assembly: Assembly): readonly SizedDemand[] {
  const alike = new Map<string, { readonly fabric: string; readonly patch: CutPatch; count: number }>();
  for (const { fabric, patch } of assembly.pieces) {
    const key = JSON.stringify([fabric, patch.name, patch.across.exact, patch.along.exact, patch.standsUp]);
    const known = alike.get(key);
    if (known === undefined) alike.set(key, { fabric, patch, count: 1 });
    else known.count += 1;
  }
  return [...alike.values()].map(({ fabric, patch, count }) => demandOf(input, patch, fabric, count));
}

/** A print that stands upright fixes which side of a rectangle lies across the fabric. */
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
