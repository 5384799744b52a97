import type { Booking } from '#core/contract/stash';
import type { ClothPieceId } from '#core/domain/ids';
import type { ClothKind, EntryKind } from '#core/domain/stash';
import { type Length, lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';
import { andList } from '#renderer/text/field-problems';
import { lengthBooked, pieceInWords, pieceSize } from './cloth-words';

/** What a booking did, as words round the name of the project it was for. */
export interface BookingWords {
  readonly before: string;
  /** Said after the project and its stage; empty where there is nothing more to say. */
  readonly after: string;
  /** A booking that takes back another. */
  readonly isTakingBack: boolean;
}

interface Step {
  readonly kind: EntryKind;
  readonly pieceId: ClothPieceId;
  readonly width: Length;
  readonly lengthChange: number;
  readonly heldChange: number;
  readonly costChange: number;
}

/** What is known of the fabric: its width, and the kinds of its pieces; one that is used up is known by its booking alone. */
export interface KnownCloth {
  readonly ledger: readonly Booking[];
  readonly kinds: ReadonlyMap<ClothPieceId, ClothKind>;
  readonly width: Length;
}

/** `Cut 10 in for` … `kept 1 leftover, 12 × 10 in`. What was taken back is told by what it had been. */
export function bookingWords(booking: Booking, known: KnownCloth, display: LengthDisplay): BookingWords {
  const isTakingBack = booking.entries.some(({ kind }) => kind === 'taken-back');
  const steps = isTakingBack ? originalSteps(booking, known.ledger) : booking.entries.map(stepOf);
  const { before, after } = stepWords(steps, booking.projectName !== null, known, display);
  return { before: isTakingBack ? `Took back: ${lowered(before)}` : before, after, isTakingBack };
}

function originalSteps(booking: Booking, ledger: readonly Booking[]): readonly Step[] {
  const reversed = new Set(booking.entries.map(({ reverses }) => reverses));
  return ledger.flatMap(({ entries }) => entries.filter(({ id }) => reversed.has(id)).map(stepOf));
}

function stepOf(entry: Booking['entries'][number]): Step {
  const { kind, pieceId, lengthChange, heldChange, costChange, pieceWidth } = entry;
  return { kind, pieceId, lengthChange, heldChange, costChange, width: lengthFromUnits(pieceWidth) };
}

function stepWords(
  steps: readonly Step[],
  hasProject: boolean,
  known: KnownCloth,
  display: LengthDisplay,
): Pick<BookingWords, 'before' | 'after'> {
  const first = steps.find(({ kind }) => kind !== 'leftover');
  if (first === undefined) return { before: 'A booking', after: '' };
  const text = (units: number) => lengthBooked(lengthFromUnits(Math.abs(units)), display);
  const { lengthChange, heldChange, costChange, width, pieceId } = first;
  switch (first.kind) {
    case 'bought': {
      const piece = { width, length: lengthFromUnits(lengthChange) };
      const kind = known.kinds.get(pieceId) ?? (width === known.width ? 'yardage' : null);
      const words = kind === null ? pieceSize(piece, display) : pieceInWords({ ...piece, kind }, display);
      const verb = costChange > 0 ? 'Bought' : 'Came in:';
      return { before: `${verb} ${words}`, after: '' };
    }
    case 'set-aside':
      return { before: `Set ${text(heldChange)} aside${hasProject ? ' for' : ''}`, after: '' };
    case 'released':
      return { before: `Released ${text(heldChange)}${hasProject ? ' from' : ''}`, after: '' };
    case 'cut':
      return {
        before: `Cut ${text(lengthChange)}${hasProject ? ' for' : ''}`,
        after: keptWords(steps, display),
      };
    case 'discarded':
      return { before: `Threw away ${text(lengthChange)}`, after: '' };
    case 'counted':
      return { before: countedWords(lengthChange, text), after: '' };
    case 'leftover':
    case 'taken-back':
      return { before: 'A booking', after: '' };
  }
}

function keptWords(steps: readonly Step[], display: LengthDisplay): string {
  const kept = steps.filter(({ kind }) => kind === 'leftover');
  if (kept.length === 0) return '';
  const sizes = kept.map(({ width, lengthChange }) =>
    pieceSize({ width, length: lengthFromUnits(lengthChange) }, display),
  );
  return `kept ${String(kept.length)} ${kept.length === 1 ? 'leftover' : 'leftovers'}, ${andList(sizes)}`;
}

function countedWords(change: number, text: (units: number) => string): string {
  if (change === 0) return 'Counted: as written';
  return `Counted: ${text(change)} ${change > 0 ? 'more' : 'less'} than written`;
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
