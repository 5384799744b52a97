import type { FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import { type PrintDirection, printDirectionSchema, printRunsSchema } from '#core/domain/stash';
import type { FabricUsed, PieceOnShelf } from '#core/stash/shopping/cover-needs';
import type { FabricToBuy } from '#core/stash/shopping/shopping-list';
import { patchTurning } from '#core/stash/shopping/fill-rows';
import { allRows, type ReadableStore, type Row } from '../base/handles';
import { choiceOf, flagOf, groupRows, idOf, idOrNullOf, lengthOf, numberOf, textOf } from '../base/rows';

/** Some fabrics with their pieces, and what projects have used of them. */
interface StashOnHand {
  readonly fabrics: ReadonlyMap<FabricId, FabricToBuy>;
  readonly pieces: readonly PieceOnShelf[];
  readonly used: readonly FabricUsed[];
}

const LISTED = 'fabric.id IN (SELECT value FROM json_each(?)) AND fabric.deleted_at IS NULL';

const FABRICS_LISTED = `SELECT id, name, supplier, swatch, direction, width FROM fabric WHERE ${LISTED}`;

const PIECES_ON_SHELF = `SELECT fabric_piece.seq, fabric_piece.id, fabric.id AS fabric_id, fabric_piece.width, direction,
    coalesce((SELECT runs FROM piece_print WHERE piece_print.id = fabric_piece.id), 'along') AS print_runs, unit_length IS NOT NULL AS is_counted, there
  FROM fabric JOIN fabric_piece ON fabric_piece.fabric_seq = fabric.seq JOIN piece_sum ON piece_seq = fabric_piece.seq
  WHERE ${LISTED} AND there > 0 ORDER BY fabric_piece.seq`;

const HOLDS = `SELECT piece_seq, project.id AS project_id, held FROM fabric
    JOIN fabric_piece ON fabric_piece.fabric_seq = fabric.seq JOIN piece_hold ON piece_seq = fabric_piece.seq
    JOIN project ON project.seq = project_seq
  WHERE ${LISTED} AND held > 0`;

const USED = `SELECT project.id AS project_id, booking.stage_id, fabric.id AS fabric_id, fabric_piece.id AS piece_id,
    -sum(length_change * fabric_piece.width) AS area
  FROM fabric JOIN booking ON booking.fabric_seq = fabric.seq JOIN project ON project.seq = booking.project_seq
    JOIN ledger_entry ON booking_seq = booking.seq JOIN fabric_piece ON fabric_piece.seq = piece_seq
  WHERE ${LISTED} GROUP BY project.seq, booking.stage_id, fabric_piece.seq`;

export function stashOnHand(store: ReadableStore, fabricIds: readonly FabricId[]): StashOnHand {
  const ids = JSON.stringify([...new Set(fabricIds)]);
  const holds = groupRows(allRows(store, HOLDS, ids), 'piece_seq');
  return {
    fabrics: new Map(
      allRows(store, FABRICS_LISTED, ids).map((row): [FabricId, FabricToBuy] => [
        idOf<FabricId>(row, 'id'),
        fabricToBuy(row),
      ]),
    ),
    pieces: allRows(store, PIECES_ON_SHELF, ids).map((row) => ({
      id: idOf<FabricPieceId>(row, 'id'),
      fabricId: idOf<FabricId>(row, 'fabric_id'),
      width: numberOf(row, 'width'),
      turning: patchTurning(directionOf(row), choiceOf(row, 'print_runs', printRunsSchema.options)),
      isCounted: flagOf(row, 'is_counted'),
      there: numberOf(row, 'there'),
      holds: (holds.get(row['seq']) ?? []).map((hold) => ({
        projectId: idOf<ProjectId>(hold, 'project_id'),
        held: numberOf(hold, 'held'),
      })),
    })),
    used: allRows(store, USED, ids).map((row) => ({
      projectId: idOf<ProjectId>(row, 'project_id'),
      stageId: idOrNullOf<StageId>(row, 'stage_id'),
      fabricId: idOf<FabricId>(row, 'fabric_id'),
      pieceId: idOf<FabricPieceId>(row, 'piece_id'),
      area: numberOf(row, 'area'),
    })),
  };
}

function fabricToBuy(row: Row): FabricToBuy {
  return {
    id: idOf<FabricId>(row, 'id'),
    name: textOf(row, 'name'),
    supplier: textOf(row, 'supplier'),
    swatch: textOf(row, 'swatch'),
    direction: directionOf(row),
    width: lengthOf(row, 'width'),
  };
}

function directionOf(row: Row): PrintDirection {
  return choiceOf(row, 'direction', printDirectionSchema.options);
}
