import type { Problem, RecordKind } from '#core/contract/problem';
import type { FabricId, ProjectId, StageId } from '#core/domain/ids';
import { type PrintRuns, printRunsSchema } from '#core/domain/stash';
import { failure, type Result, success } from '#core/result';
import { oneRow, type ReadableStore } from './handles';
import { choiceOf, flagOf, idOf, numberOf, numberOrNullOf, textOf } from './rows';

export function notFound(kind: RecordKind): { readonly ok: false; readonly error: Problem } {
  return failure<Problem>({ code: 'not-found', kind });
}

export interface ProjectRef {
  readonly seq: number;
  readonly id: string;
  readonly name: string;
}

export function findProject(store: ReadableStore, id: string): Result<ProjectRef, Problem> {
  const row = oneRow(store, 'SELECT seq, name FROM project WHERE id = ? AND deleted_at IS NULL', id);
  return row === undefined
    ? notFound('project')
    : success({ seq: numberOf(row, 'seq'), id, name: textOf(row, 'name') });
}

export interface FabricRef {
  readonly seq: number;
  readonly id: FabricId;
  readonly name: string;
}

export function findFabric(store: ReadableStore, id: string): Result<FabricRef, Problem> {
  const row = oneRow(store, 'SELECT seq, name FROM fabric WHERE id = ? AND deleted_at IS NULL', id);
  return row === undefined
    ? notFound('fabric')
    : success({ seq: numberOf(row, 'seq'), id: id as FabricId, name: textOf(row, 'name') });
}

export interface StageRef {
  readonly id: StageId;
  readonly projectId: ProjectId;
  readonly name: string;
  readonly position: number;
}

export function findStage(store: ReadableStore, id: string): Result<StageRef, Problem> {
  const row = oneRow(store, 'SELECT project_id, name, position FROM stage WHERE id = ?', id);
  if (row === undefined) return notFound('stage');
  return success({
    id: id as StageId,
    projectId: idOf<ProjectId>(row, 'project_id'),
    name: textOf(row, 'name'),
    position: numberOf(row, 'position'),
  });
}

/** A piece of fabric with the sums of its ledger: lengths in 1/320 mm, value in minor units, null if it is not known what it cost. */
export interface PieceRef {
  readonly seq: number;
  readonly fabric: FabricRef;
  readonly printRuns: PrintRuns;
  readonly width: number;
  readonly there: number;
  readonly held: number;
  readonly valueMinor: number | null;
}

export function findPiece(store: ReadableStore, id: string): Result<PieceRef, Problem> {
  const sql = `SELECT fabric_piece.seq, fabric_piece.width, there, held, value_minor,
      coalesce((SELECT runs FROM piece_print WHERE piece_print.id = fabric_piece.id), 'along') AS print_runs,
      fabric.seq AS fabric_seq, fabric.id AS fabric_id, fabric.name, fabric.deleted_at IS NOT NULL AS is_deleted
    FROM fabric_piece JOIN piece_sum ON piece_sum.piece_seq = fabric_piece.seq JOIN fabric ON fabric.seq = fabric_seq
    WHERE fabric_piece.id = ?`;
  const row = oneRow(store, sql, id);
  if (row === undefined || flagOf(row, 'is_deleted')) return notFound('piece');
  return success({
    seq: numberOf(row, 'seq'),
    fabric: {
      seq: numberOf(row, 'fabric_seq'),
      id: idOf<FabricId>(row, 'fabric_id'),
      name: textOf(row, 'name'),
    },
    printRuns: choiceOf(row, 'print_runs', printRunsSchema.options),
    width: numberOf(row, 'width'),
    there: numberOf(row, 'there'),
    held: numberOf(row, 'held'),
    valueMinor: numberOrNullOf(row, 'value_minor'),
  });
}

/** The length of a piece that is set aside for one project, in 1/320 mm. */
export function heldBy(store: ReadableStore, pieceSeq: number, projectSeq: number): number {
  const sql = 'SELECT held FROM piece_hold WHERE project_seq = ? AND piece_seq = ?';
  const row = oneRow(store, sql, projectSeq, pieceSeq);
  return row === undefined ? 0 : numberOf(row, 'held');
}
