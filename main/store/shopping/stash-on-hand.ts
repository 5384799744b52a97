import type { FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import { type PrintDirection, printDirection, printRuns } from '#core/domain/stash';
import type { FabricUsed, PieceOnShelf } from '#core/stash/shopping/cover-needs';
import type { FabricToBuy } from '#core/stash/shopping/shopping-list';
import { patchesLie } from '#core/stash/shopping/fill-rows';
import { allRows, type ReadableStore, type Row } from '../base/handles';
import { choiceOf, flagOf, groupRows, idOf, idOrNullOf, lengthOf, numberOf, textOf } from '../base/rows';

/** What the stash has of some fabrics, and what projects have used of them. */
export interface ShelfOfNeeds {
  readonly fabrics: ReadonlyMap<FabricId, FabricToBuy>;
  readonly pieces: readonly PieceOnShelf[];
  readonly used: readonly FabricUsed[];
}

const THOSE = 'fabric.id IN (SELECT value FROM json_each(?)) AND fabric.deleted_at IS NULL';

const PIECES = `SELECT fabric_piece.seq, fabric_piece.id, fabric.id AS fabric_id, fabric_piece.width, direction,
    coalesce((SELECT runs FROM piece_print WHERE piece_print.id = fabric_piece.id), 'along') AS print_runs, unit_length IS NOT NULL AS is_counted, there
  FROM fabric JOIN fabric_piece ON fabric_piece.fabric_seq = fabric.seq JOIN piece_sum ON piece_seq = fabric_piece.seq
  WHERE ${THOSE} AND there > 0 ORDER BY fabric_piece.seq`;

const HOLDS = `SELECT piece_seq, project.id AS project_id, held FROM fabric
    JOIN fabric_piece ON fabric_piece.fabric_seq = fabric.seq JOIN piece_hold ON piece_seq = fabric_piece.seq
    JOIN project ON project.seq = project_seq
  WHERE ${THOSE} AND held > 0`;

const USED = `SELECT project.id AS project_id, booking.stage_id, fabric.id AS fabric_id, fabric_piece.id AS piece_id,
    -sum(length_change * fabric_piece.width) AS area
  FROM fabric JOIN booking ON booking.fabric_seq = fabric.seq JOIN project ON project.seq = booking.project_seq
    JOIN ledger_entry ON booking_seq = booking.seq JOIN fabric_piece ON fabric_piece.seq = piece_seq
  WHERE ${THOSE} GROUP BY project.seq, booking.stage_id, fabric_piece.seq`;

export function shelfOfNeeds(store: ReadableStore, fabricIds: readonly FabricId[]): ShelfOfNeeds {
  const those = JSON.stringify([...new Set(fabricIds)]);
  const holds = groupRows(allRows(store, HOLDS, those), 'piece_seq');
  return {
    fabrics: new Map(
      allRows(
        store,
        `SELECT id, name, supplier, swatch, direction, width FROM fabric WHERE ${THOSE}`,
        those,
      ).map((row) => {
        const id = idOf<FabricId>(row, 'id');
        const [name, supplier, swatch] = [
          textOf(row, 'name'),
          textOf(row, 'supplier'),
          textOf(row, 'swatch'),
        ];
        return [
          id,
          { id, name, supplier, swatch, direction: directionOf(row), width: lengthOf(row, 'width') },
        ];
      }),
    ),
    pieces: allRows(store, PIECES, those).map((row) => ({
      id: idOf<FabricPieceId>(row, 'id'),
      fabricId: idOf<FabricId>(row, 'fabric_id'),
      width: numberOf(row, 'width'),
      lies: patchesLie(directionOf(row), choiceOf(row, 'print_runs', printRuns.options)),
      isCounted: flagOf(row, 'is_counted'),
      there: numberOf(row, 'there'),
      holds: (holds.get(row['seq']) ?? []).map((hold) => ({
        projectId: idOf<ProjectId>(hold, 'project_id'),
        held: numberOf(hold, 'held'),
      })),
    })),
    used: allRows(store, USED, those).map((row) => ({
      projectId: idOf<ProjectId>(row, 'project_id'),
      stageId: idOrNullOf<StageId>(row, 'stage_id'),
      fabricId: idOf<FabricId>(row, 'fabric_id'),
      pieceId: idOf<FabricPieceId>(row, 'piece_id'),
      area: numberOf(row, 'area'),
    })),
  };
}

function directionOf(row: Row): PrintDirection {
  return choiceOf(row, 'direction', printDirection.options);
}
