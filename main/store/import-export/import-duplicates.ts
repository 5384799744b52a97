import type { FabricDetails } from '#core/domain/stash';
import type { PieceToAdd } from '#core/domain/stash-table';
import { FABRICS, fabricOf } from '../stash/fabric-rows';
import { allRows, type ReadableStore } from '../base/handles';
import { numberOf, textOf } from '../base/rows';

/** Finds what an imported table has in common with the stash. */
interface Duplicates {
  /** The `seq` of the same fabric: equal in name, print, colors, shop and width, without regard to case. */
  readonly fabric: (details: FabricDetails) => number | null;
  /** Whether the stash has a piece like this one. Each piece of the stash matches one row only. */
  readonly takePiece: (fabricSeq: number, piece: PieceToAdd) => boolean;
}

export function findDuplicates(store: ReadableStore): Duplicates {
  const fabrics = new Map<string, number>();
  for (const row of allRows(store, `${FABRICS} WHERE deleted_at IS NULL ORDER BY seq DESC`)) {
    fabrics.set(fabricKey(fabricOf(row)), numberOf(row, 'seq'));
  }
  const pieces = new Map<string, number>();
  const there = `SELECT fabric_seq, kind, width, there FROM fabric_piece
    JOIN piece_sum ON piece_sum.piece_seq = fabric_piece.seq WHERE there > 0`;
  for (const row of allRows(store, there)) {
    const key = pieceKey(
      numberOf(row, 'fabric_seq'),
      textOf(row, 'kind'),
      numberOf(row, 'width'),
      numberOf(row, 'there'),
    );
    pieces.set(key, (pieces.get(key) ?? 0) + 1);
  }
  return {
    fabric: (details) => fabrics.get(fabricKey(details)) ?? null,
    takePiece: (seq, { kind, width, length }) => {
      const key = pieceKey(seq, kind, width, length);
      const left = pieces.get(key) ?? 0;
      if (left > 0) pieces.set(key, left - 1);
      return left > 0;
    },
  };
}

function fabricKey({ name, print, colorWords, supplier, width }: FabricDetails): string {
  return [name, print, colorWords, supplier, String(width)].map((text) => text.toLowerCase()).join('\n');
}

function pieceKey(fabricSeq: number, kind: string, width: number, length: number): string {
  return `${String(fabricSeq)} ${kind} ${String(width)} ${String(length)}`;
}
