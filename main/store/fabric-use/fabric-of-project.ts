import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { ProjectFabric } from '#core/contract/stash';
import { type Result, success } from '#core/result';
import { bookingsOfProject } from '../ledger/bookings';
import { costOfProject } from '../ledger/cost-basis';
import { FABRICS, fabricOf, pieceOf, PIECES_OF_FABRIC } from '../stash/fabric-rows';
import { allRows, oneRow, type ReadableStore } from '../base/handles';
import { findProject } from '../base/lookups';
import { groupRows, lengthOf, numberOf } from '../base/rows';

/** What a project has used and what is set aside for it, from the sums of the ledger. */
export function fabricOfProject(
  store: ReadableStore,
  { projectId }: ChannelInput<'ledger:of-project'>,
): Result<ProjectFabric, Problem> {
  const project = findProject(store, projectId);
  if (!project.ok) return project;
  const use = oneRow(
    store,
    `SELECT coalesce(sum(area), 0) AS area, coalesce(sum(cost_minor), 0) AS cost_minor,
      coalesce(sum(unpriced_area), 0) AS unpriced_area
    FROM project_use WHERE project_seq = ?`,
    project.value.seq,
  );
  return success({
    bookings: bookingsOfProject(store, project.value.seq),
    held: heldPieces(store, project.value.seq),
    usedArea: numberOf(use ?? {}, 'area'),
    paid: { minor: numberOf(use ?? {}, 'cost_minor'), unpricedArea: numberOf(use ?? {}, 'unpriced_area') },
    cost: costOfProject(store, project.value.seq),
  });
}

function heldPieces(store: ReadableStore, projectSeq: number): ProjectFabric['held'] {
  const holds = allRows(
    store,
    'SELECT piece_seq, held AS own_hold FROM piece_hold WHERE project_seq = ? AND held > 0',
    projectSeq,
  );
  const seqs = JSON.stringify(holds.map((row) => numberOf(row, 'piece_seq')));
  const listed = 'IN (SELECT value FROM json_each(?))';
  const pieces = groupRows(
    allRows(store, `${PIECES_OF_FABRIC} WHERE fabric_piece.seq ${listed}`, seqs),
    'seq',
  );
  const fabricsOf = `${FABRICS} WHERE seq IN (SELECT fabric_seq FROM fabric_piece WHERE seq ${listed})`;
  const fabrics = groupRows(allRows(store, fabricsOf, seqs), 'seq');
  return holds.flatMap((hold) => {
    const [piece] = pieces.get(hold['piece_seq']) ?? [];
    const [fabric] = fabrics.get(piece?.['fabric_seq']) ?? [];
    if (piece === undefined || fabric === undefined) return [];
    return [{ piece: pieceOf(piece), fabric: fabricOf(fabric), held: lengthOf(hold, 'own_hold') }];
  });
}
