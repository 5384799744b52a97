import type { FabricGlance } from '#core/contract/stash';
import type { FabricPieceId, FabricId, PhotoId, PlaceId, StashKindId } from '#core/domain/ids';
import {
  type FabricPiece,
  freeOf,
  pieceKindSchema,
  type Fabric,
  type FabricDetails,
  printDirectionSchema,
  printRunsSchema,
} from '#core/domain/stash';
import { addCosts, costOfArea } from '#core/units/known-cost';
import {
  allRows,
  insertRows,
  nextSeq,
  type ReadableStore,
  type Row,
  type WritableStore,
} from '../base/handles';
import { placeAt } from './places';
import {
  choiceOf,
  flagOf,
  groupRows,
  idOf,
  idOrNullOf,
  lengthOf,
  lengthOrNullOf,
  numberOf,
  numberOrNullOf,
  textOf,
  textOrNullOf,
} from '../base/rows';

/** Fabrics with the path of the place they are stored in; the caller adds the condition. */
export const FABRICS =
  'SELECT fabric.*, place.path AS place FROM fabric LEFT JOIN place ON place.id = fabric.place_id';

/** A row of FABRICS. */
export function fabricOf(row: Row): Fabric {
  return {
    id: idOf<FabricId>(row, 'id'),
    name: textOf(row, 'name'),
    print: textOf(row, 'print'),
    colorWords: textOf(row, 'color_words'),
    fiber: textOf(row, 'fiber'),
    direction: choiceOf(row, 'direction', printDirectionSchema.options),
    width: lengthOf(row, 'width'),
    isWashed: flagOf(row, 'is_washed'),
    supplier: textOf(row, 'supplier'),
    place: textOrNullOf(row, 'place') ?? '',
    swatch: textOf(row, 'swatch'),
    notes: textOf(row, 'notes'),
    photoId: idOrNullOf<PhotoId>(row, 'photo_id'),
    createdAt: numberOf(row, 'created_at'),
  };
}

const DETAIL_COLUMNS = [
  'name',
  'print',
  'color_words',
  'fiber',
  'direction',
  'width',
  'is_washed',
  'supplier',
  'place_id',
  'swatch',
  'notes',
] as const;

/** A fabric's details as columns. */
export function fabricColumns(
  details: FabricDetails,
  placeId: PlaceId | null,
): Readonly<Record<(typeof DETAIL_COLUMNS)[number], string | number | null>> {
  return {
    name: details.name,
    print: details.print,
    color_words: details.colorWords,
    fiber: details.fiber,
    direction: details.direction,
    width: details.width,
    is_washed: details.isWashed ? 1 : 0,
    supplier: details.supplier,
    place_id: placeId,
    swatch: details.swatch,
    notes: details.notes,
  };
}

interface AddedFabric {
  readonly seq: number;
  readonly id: FabricId;
}

/** Adds a fabric that has no piece yet. */
export function addFabric(store: WritableStore, details: FabricDetails): AddedFabric {
  const [added] = addFabrics(store, [details]);
  if (added === undefined) throw new Error('A fabric was not added');
  return added;
}

/** Adds fabrics that have no piece yet, in their order, and the places they name if those are new. */
export function addFabrics(store: WritableStore, fabrics: readonly FabricDetails[]): readonly AddedFabric[] {
  const { newId, now } = store.clockAndIds;
  const paths = new Set(fabrics.map(({ place }) => place));
  const places = new Map([...paths].map((path) => [path, placeAt(store, path)]));
  const first = nextSeq(store, 'fabric');
  const added = fabrics.map((_details, index) => ({ seq: first + index, id: newId() as FabricId }));
  const rows = fabrics.map((details, index) => {
    const columns = fabricColumns(details, places.get(details.place) ?? null);
    return [first + index, added[index]?.id ?? '', now(), ...DETAIL_COLUMNS.map((name) => columns[name])];
  });
  insertRows(store, 'fabric', ['seq', 'id', 'created_at', ...DETAIL_COLUMNS], rows);
  return added;
}

/** The fabrics of these rows with their pieces, in the same order. Pieces that are used up are left out. */
export function glancesOf(store: ReadableStore, rows: readonly Row[]): readonly FabricGlance[] {
  const seqs = JSON.stringify(rows.map((row) => numberOf(row, 'seq')));
  const pieces = allRows(
    store,
    `${PIECES_OF_FABRIC} WHERE fabric_piece.fabric_seq IN (SELECT value FROM json_each(?)) AND (there > 0 OR held > 0)
    ORDER BY fabric_piece.seq`,
    seqs,
  );
  const byFabric = groupRows(pieces, 'fabric_seq');
  return rows.map((row) => toGlance(fabricOf(row), (byFabric.get(numberOf(row, 'seq')) ?? []).map(pieceOf)));
}

/** Pieces with the sums of their ledger; the caller adds the condition. */
export const PIECES_OF_FABRIC = `SELECT fabric_piece.seq, fabric_piece.id, fabric_piece.fabric_seq, fabric.id AS fabric_id,
    fabric_piece.kind, fabric_piece.kind_id, fabric_piece.unit_length, fabric_piece.width, there, held, value_minor,
    (SELECT path FROM piece_place JOIN place ON place.id = place_id WHERE piece_place.id = fabric_piece.id) AS place,
    coalesce((SELECT runs FROM piece_print WHERE piece_print.id = fabric_piece.id), 'along') AS print_runs
  FROM fabric_piece JOIN piece_sum ON piece_sum.piece_seq = fabric_piece.seq
  JOIN fabric ON fabric.seq = fabric_piece.fabric_seq`;

export function pieceOf(row: Row): FabricPiece {
  return {
    id: idOf<FabricPieceId>(row, 'id'),
    fabricId: idOf<FabricId>(row, 'fabric_id'),
    kind: choiceOf(row, 'kind', pieceKindSchema.options),
    kindId: idOrNullOf<StashKindId>(row, 'kind_id'),
    unitLength: lengthOrNullOf(row, 'unit_length'),
    place: textOrNullOf(row, 'place') ?? '',
    printRuns: choiceOf(row, 'print_runs', printRunsSchema.options),
    width: lengthOf(row, 'width'),
    there: lengthOf(row, 'there'),
    held: lengthOf(row, 'held'),
    valueMinor: numberOrNullOf(row, 'value_minor'),
  };
}

function toGlance(fabric: Fabric, pieces: readonly FabricPiece[]): FabricGlance {
  const sum = (of: (piece: FabricPiece) => number): number =>
    pieces.reduce((total, piece) => total + of(piece), 0);
  return {
    fabric,
    pieces,
    areaThere: sum(({ width, there }) => width * there),
    areaFree: sum((piece) => piece.width * freeOf(piece)),
    value: addCosts(pieces.map(({ valueMinor, width, there }) => costOfArea(valueMinor, width * there))),
  };
}
