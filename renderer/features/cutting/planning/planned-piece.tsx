import type { CutStep } from '#core/cutting/tree/cut-steps';
import type { PiecePlan } from '#core/cutting/tree/cutting-job';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import { choiceWords } from '#renderer/text/choice-words';
import { counted, patchLabel, pieceSizeWords } from '#renderer/text/cut-words';
import { sizeWords } from '#renderer/text/size-words';
import type { LayoutPatch } from '#renderer/ui/drawings/cut-layout-frame';
import { useDisplay } from '#renderer/ui/base/display';
import { PieceLayout } from '#renderer/ui/drawings/piece-layout';
import { type PlanStash } from './job-of-setup';
import { nameOfFabric } from '../desk/to-buy';

interface PlannedPieceProps {
  readonly piece: PiecePlan;
  readonly setup: CuttingSetup;
  readonly stash: PlanStash;
  /** What the patches of a line are for. */
  readonly goesTo: (line: CuttingLine) => string;
  /** Length already cut, from the near end, 1/320 mm. */
  readonly done: number;
  readonly steps?: readonly CutStep[];
  readonly spotlight?: string | null;
  readonly onSpotlight?: (key: string | null) => void;
  readonly maxWidth?: number;
}

/** Draws a piece of fabric with its cuts and patches, in the color of the fabric. */
export function PlannedPiece({ piece, setup, stash, goesTo, ...rest }: PlannedPieceProps) {
  const { length } = useDisplay();
  const { name, kind, size } = usePlannedPieceWords(piece, setup, stash);
  const found = findPiece(piece, stash);
  const fabric = found?.fabric ?? fabricOfKey(piece.fabric, stash);
  const patchAt = (index: number): LayoutPatch => {
    const line = setup.lines[index];
    return line === undefined
      ? { key: '', label: '', size: '', goesTo: '' }
      : {
          key: line.id,
          label: patchLabel(index),
          size: sizeWords(line, length),
          goesTo: goesTo(line),
        };
  };
  return (
    <PieceLayout
      title={`${name}, ${kind}, ${size}: ${counted(piece.placed.length, 'patch', 'patches')}`}
      piece={piece}
      patchAt={patchAt}
      swatch={fabric?.swatch ?? null}
      print={fabric?.direction ?? 'any'}
      printRuns={found?.piece.printRuns ?? 'along'}
      {...rest}
    />
  );
}

/** The words for a piece: its fabric, its kind and its size. */
export function usePlannedPieceWords(
  piece: PiecePlan,
  setup: CuttingSetup,
  stash: PlanStash,
): { readonly name: string; readonly kind: string; readonly size: string } {
  const { length } = useDisplay();
  const found = findPiece(piece, stash);
  return {
    name: nameOfFabric(piece.fabric, setup, stash),
    kind: kindWords(piece, found?.piece),
    size: pieceSizeWords(piece, length),
  };
}

/** A piece that is not in the stash is still to buy, or was used up by the plan. */
function kindWords({ piece: id }: PiecePlan, found: FabricPiece | undefined): string {
  if (found !== undefined) return choiceWords(found.kind).toLowerCase();
  return id === undefined ? 'to buy' : 'cut up';
}

export function findPiece(
  { piece: id }: PiecePlan,
  stash: PlanStash,
): { readonly piece: FabricPiece; readonly fabric: Fabric } | null {
  for (const { fabric, pieces } of stash.fabrics.values()) {
    const piece = pieces.find((one) => one.id === id);
    if (piece !== undefined) return { piece, fabric };
  }
  return null;
}

function fabricOfKey(key: string, stash: PlanStash): Fabric | undefined {
  return [...stash.fabrics.values()].find(({ fabric }) => fabric.id === key)?.fabric;
}
