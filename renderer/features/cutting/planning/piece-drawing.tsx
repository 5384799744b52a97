import type { CutStep } from '#core/cutting/tree/cut-steps';
import type { PiecePlan } from '#core/cutting/tree/cutting-job';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import { choiceWords } from '#renderer/text/choice-words';
import { counted, patchLabel, pieceSizeWords, sizeWords } from '#renderer/text/cut-words';
import type { LayoutPatch } from '#renderer/ui/drawings/cut-layout-frame';
import { useDisplay } from '#renderer/ui/base/display';
import { PieceLayout } from '#renderer/ui/drawings/piece-layout';
import { type Shelf } from './job-of-setup';
import { nameOfFabric } from '../desk/to-buy';

interface PieceDrawingProps {
  readonly piece: PiecePlan;
  readonly setup: CuttingSetup;
  readonly shelf: Shelf;
  /** What a line's patches are for. */
  readonly goesTo: (line: CuttingLine) => string;
  /** Length from the near end that is cut already, 1/320 mm. */
  readonly done: number;
  readonly steps?: readonly CutStep[];
  readonly spotlight?: string | null;
  readonly onSpotlight?: (key: string | null) => void;
  readonly maxWidth?: number;
}

/** A piece of fabric with its cuts and patches, in the color of its fabric. */
export function PieceDrawing({ piece, setup, shelf, goesTo, ...rest }: PieceDrawingProps) {
  const { length } = useDisplay();
  const { name, kind, size } = usePieceWords(piece, setup, shelf);
  const found = findPiece(piece, shelf);
  const fabric = found?.fabric ?? fabricOfKey(piece.fabric, shelf);
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

/** What a piece is called: its fabric, what kind of piece, and its size. */
export function usePieceWords(
  piece: PiecePlan,
  setup: CuttingSetup,
  shelf: Shelf,
): { readonly name: string; readonly kind: string; readonly size: string } {
  const { length } = useDisplay();
  const found = findPiece(piece, shelf);
  return {
    name: nameOfFabric(piece.fabric, setup, shelf),
    kind: kindWords(piece, found?.piece),
    size: pieceSizeWords(piece, length),
  };
}

/** A piece that is not on the shelf has to be bought, or was cut up by the plan. */
function kindWords({ piece: id }: PiecePlan, found: FabricPiece | undefined): string {
  if (found !== undefined) return choiceWords(found.kind).toLowerCase();
  return id === undefined ? 'to buy' : 'cut up';
}

export function findPiece(
  { piece: id }: PiecePlan,
  shelf: Shelf,
): { readonly piece: FabricPiece; readonly fabric: Fabric } | null {
  for (const { fabric, pieces } of shelf.fabrics.values()) {
    const piece = pieces.find((one) => one.id === id);
    if (piece !== undefined) return { piece, fabric };
  }
  return null;
}

function fabricOfKey(key: string, shelf: Shelf): Fabric | undefined {
  return [...shelf.fabrics.values()].find(({ fabric }) => fabric.id === key)?.fabric;
}
