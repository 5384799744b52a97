import type { ChannelInput } from '#core/contract/channels';
import type { ProjectId } from '#core/domain/ids';
import type { FabricDetails } from '#core/domain/stash';
import { holdsOfLine } from '#core/stash/shopping/shopping-lines';
import type { ShoppingLine } from '#core/stash/shopping/shopping-list';
import type { CalendarDate } from '#core/units/calendar-date';
import type { Length } from '#core/units/length';
import { boughtPiece, emptyPiece, type PieceDraft } from '#renderer/features/stash/fabric-draft';
import { nameToBuy, type ShopEntry } from '#renderer/text/shopping-words';

interface EntryPurchase {
  readonly entry: ShopEntry;
  readonly piece: PieceDraft;
  /** The details of a new fabric; not used if the entry names a fabric of the stash. */
  readonly fabric: FabricDetails;
  /** Whether the projects' shares are set aside. */
  readonly isHeld: boolean;
}

/** The purchase of an entry of the shopping list; null while its size or number is missing. */
export function purchaseOfEntry(purchase: EntryPurchase): ChannelInput<'shopping:buy'> | null {
  const { entry, piece, fabric, isHeld } = purchase;
  const bought = boughtPiece(piece);
  if (bought === null) return null;
  const line = entry.kind === 'needed' ? entry.line : null;
  const fabricToBuy = line?.fabric ?? null;
  return {
    ...bought,
    lineId: entry.kind === 'own' ? entry.line.id : null,
    needs: (line?.shares ?? []).map(({ need: { projectId, source, name } }) => ({ projectId, source, name })),
    fabric:
      fabricToBuy === null ? { details: { ...fabric, place: piece.place } } : { fabricId: fabricToBuy.id },
    // A new fabric is stored where its only piece is.
    place: fabricToBuy === null ? '' : bought.place,
    holds: isHeld ? holdsOf(entry, bought.size.length) : [],
  };
}

/** The piece as the list asks for it; the maker changes it to what was bought. */
export function pieceToBuy(line: ShoppingLine | null, today: CalendarDate): PieceDraft {
  const empty = emptyPiece(today);
  if (line === null) return empty;
  const { kind, width, length, count } = line;
  if (kind === 'thread') return { ...empty, kind, count };
  // A length of cord is one item; the stash counts notions and does not measure them.
  if (kind === 'notions') return { ...empty, kind, count: 1 };
  return { ...empty, kind, size: { width, length } };
}

/** A name and shop for a fabric that is not in the stash yet. */
export function newFabric(entry: ShopEntry, usual: FabricDetails): FabricDetails {
  if (entry.kind === 'own') return { ...usual, name: entry.line.words, supplier: entry.line.supplier };
  const [share] = entry.line.shares;
  return share === undefined
    ? usual
    : { ...usual, name: `${nameToBuy(entry.line)} for ${share.need.projectName}` };
}

/** The names of the projects that an entry is for; empty for none. */
export function projectNames(entry: ShopEntry): string {
  if (entry.kind === 'own') return entry.line.projectName ?? '';
  return [...new Set(entry.line.shares.map(({ need }) => need.projectName))].join(', ');
}

/** A package or spool is set aside for its project whole; a length is divided by the projects' shares. */
function holdsOf(entry: ShopEntry, bought: Length) {
  if (entry.kind === 'needed' && entry.line.count === null) return holdsOfLine(entry.line.shares, bought);
  const projectId: ProjectId | null =
    entry.kind === 'own' ? entry.line.projectId : (entry.line.shares[0]?.need.projectId ?? null);
  return projectId === null ? [] : [{ projectId, length: bought }];
}
