import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { FabricFit, FitsOfNeed } from '#core/contract/shopping';
import type { FabricGlance } from '#core/contract/stash';
import { isMetByItem } from '#core/domain/need';
import { freeOf, type PieceKind, pieceKindSchema } from '#core/domain/stash';
import { type Result, success } from '#core/result';
import { type FabricNeed, needKey } from '#core/stash/shopping/fabric-need';
import { lengthFor, patchTurning } from '#core/stash/shopping/fill-rows';
import { type NeedFit, compareFits, fitNeed } from '#core/stash/shopping/fit-need';
import { lengthFromExact } from '#core/units/length';
import { recordChange } from '../history/changes';
import { filterConditions } from '../stash/fabric-filter';
import { FABRICS, glancesOf } from '../stash/fabric-rows';
import { HAS_KIND, kindBits } from '../stash/piece-kind-bits';
import { searchQuery, WITH_WORDS } from '../stash/fabric-search';
import { settingsInUse } from '../workshop/settings-in-use';
import { allRows, type ReadableStore, type Row } from '../base/handles';
import { shortOfFabric } from '../fabric-use/ledger';
import { appendBooking, setAsideEntry } from '../ledger/ledger-append';
import { findFabric, findPiece, findProject, heldBy, notFound, type PieceRef } from '../base/lookups';
import { numberOf } from '../base/rows';
import { saveChoice } from './shopping';
import { needsOfProjects } from './needs';
import { likelyWords } from '../stash/spelling';

/** Tries at most this many fabrics that suffice, and as many that do not. */
const TRIED = 60;
const SHOWN = 40;

/** The fabrics of the stash that serve a need, the best fit first. */
export function fitsOfNeed(
  store: ReadableStore,
  { search, ...named }: ChannelInput<'shopping:fits'>,
): Result<FitsOfNeed, Problem> {
  const project = findProject(store, named.projectId);
  if (!project.ok) return project;
  const { needs, leftOut } = needsOfProjects(store, settingsInUse(store).fabricWidth);
  const need = [...needs, ...leftOut].find((one) => needKey(one) === needKey(named));
  if (need === undefined) return notFound('need');
  const holds = ownHolds(store, project.value.seq);
  const tried = glancesOf(store, candidates(store, need, search, project.value.seq)).map((glance) =>
    tryFabric(need, glance, holds),
  );
  const shown = tried.filter(({ takes, isChosen }) => takes.length > 0 || isChosen).toSorted(compareFits);
  return success({ need, fits: shown.slice(0, SHOWN).map(({ short: _, ...fit }) => fit) });
}

function tryFabric(
  need: FabricNeed,
  { fabric, pieces: all }: FabricGlance,
  holds: ReadonlyMap<unknown, number>,
): FabricFit & Pick<NeedFit, 'short'> {
  const pieces = all.filter(({ kind }) => kindsFor(need.kind).includes(kind));
  const toTry = pieces
    .filter(({ unitLength }) => unitLength === null || isMetByItem(need.amount))
    .map(({ id, width, printRuns, there, held }) => {
      const ownHold = holds.get(id) ?? 0;
      // Where more is set aside than there is, each project still counts on what is set aside for it.
      const free = Math.min(there, freeOf({ there, held }) + ownHold);
      return { id, width, turning: patchTurning(fabric.direction, printRuns), free, ownHold };
    });
  const { verdict, takes, leftOver, short } = fitNeed(need.amount, toTry);
  const shortBy = lengthFor(short, { width: fabric.width, turning: patchTurning(fabric.direction, 'along') });
  return {
    fabric,
    pieces,
    verdict,
    takes,
    leftOver,
    short,
    shortBy: shortBy === null ? null : lengthFromExact(shortBy, 'up'),
    isHeld: takes.some(({ pieceId }) => (holds.get(pieceId) ?? 0) > 0),
    isChosen: fabric.id === need.fabricId,
  };
}

/** The kinds of piece that may serve a need. Fabric of any kind can be a backing; batting cannot. */
function kindsFor(kind: PieceKind): readonly PieceKind[] {
  if (kind === 'thread' || kind === 'notions') return [kind];
  if (kind === 'batting' || kind === 'batting-package') return ['batting', 'batting-package'];
  const notFabric: readonly PieceKind[] = [
    'batting',
    'batting-package',
    'thread',
    'needles',
    'notions',
    'bias-made-up',
  ];
  return pieceKindSchema.options.filter((one) => !notFabric.includes(one));
}

/** Fabrics of which one piece is enough, the least free first; those with most free; and those set aside for the project. */
function candidates(
  store: ReadableStore,
  need: FabricNeed,
  search: string,
  projectSeq: number,
): readonly Row[] {
  const bits = kindBits(kindsFor(need.kind));
  const words = searchQuery(search, '', (word) => likelyWords(store, word));
  const matched = {
    sql: words === null ? '' : `AND +shelf.fabric_seq IN (${WITH_WORDS})`,
    values: words === null ? [] : [words],
  };
  const fits = need.amount.measure === 'patches' ? filterConditions({ fits: patchesOf(need) }) : [];
  const enough = allRows(
    store,
    `SELECT fabric_seq FROM shelf WHERE ${HAS_KIND} ${fits.map(({ sql }) => `AND ${sql}`).join(' ')} ${matched.sql}
    ORDER BY area_free LIMIT ${String(TRIED)}`,
    bits,
    ...fits.flatMap(({ values }) => values),
    ...matched.values,
  );
  const most = allRows(
    store,
    `SELECT fabric_seq FROM shelf WHERE ${HAS_KIND} ${matched.sql} ORDER BY area_free DESC LIMIT ${String(TRIED)}`,
    bits,
    ...matched.values,
  );
  const held = allRows(
    store,
    `SELECT DISTINCT shelf.fabric_seq FROM piece_hold JOIN fabric_piece ON fabric_piece.seq = piece_seq
      JOIN shelf ON shelf.fabric_seq = fabric_piece.fabric_seq
    WHERE project_seq = ? AND held > 0 AND ${HAS_KIND} ${matched.sql}`,
    projectSeq,
    bits,
    ...matched.values,
  );
  const seqs = [...enough, ...most, ...held].map((row) => numberOf(row, 'fabric_seq'));
  return allRows(store, `${FABRICS} WHERE seq IN (SELECT value FROM json_each(?))`, JSON.stringify(seqs));
}

/** The patches of a need as the stash filter takes them; a patch that may turn is asked for as it is listed. */
function patchesOf({ amount }: FabricNeed): Parameters<typeof filterConditions>[0]['fits'] {
  if (amount.measure !== 'patches' || amount.patches.length === 0) return undefined;
  return amount.patches.map(({ width, length, count }) => ({
    width: lengthFromExact(width, 'up'),
    length: lengthFromExact(length, 'up'),
    count,
  }));
}

function ownHolds(store: ReadableStore, projectSeq: number): ReadonlyMap<unknown, number> {
  const sql = `SELECT fabric_piece.id, held FROM piece_hold JOIN fabric_piece ON fabric_piece.seq = piece_seq
    WHERE project_seq = ? AND held > 0`;
  return new Map(allRows(store, sql, projectSeq).map((row) => [row['id'], numberOf(row, 'held')]));
}

/** Chooses a fabric for a need and sets aside what will be cut from its pieces, as one change. */
export function setAsideForNeed(
  store: ReadableStore,
  { fabricId, takes, on, ...need }: ChannelInput<'shopping:set-aside'>,
): Result<Changed, Problem> {
  const [project, fabric] = [findProject(store, need.projectId), findFabric(store, fabricId)];
  if (!project.ok) return project;
  if (!fabric.ok) return fabric;
  const pieces: { readonly piece: PieceRef; readonly length: number }[] = [];
  for (const { pieceId, length } of takes) {
    const piece = findPiece(store, pieceId);
    if (!piece.ok) return piece;
    if (piece.value.fabric.id !== fabricId) return notFound('piece');
    if (length > freeOf(piece.value)) {
      return shortOfFabric(piece.value, heldBy(store, piece.value.seq, project.value.seq), length);
    }
    pieces.push({ piece: piece.value, length });
  }
  const words = `Set “${fabric.value.name}” aside for “${need.name}” of “${project.value.name}”`;
  return recordChange(store, words, (writable) => {
    const booking = {
      fabricSeq: fabric.value.seq,
      projectSeq: project.value.seq,
      stage: null,
      note: need.name,
      on,
    };
    for (const { piece, length } of pieces) {
      appendBooking(writable, booking, [setAsideEntry(piece.seq, length)]);
    }
    saveChoice(writable, need, { kind: 'fabric', fabricId });
    return success({});
  });
}
