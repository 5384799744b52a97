import type { Booking } from '#core/contract/stash';
import type { PieceKind, EntryKind } from '#core/domain/stash';
import { type Length, lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';
import { bookedAmount, pieceInWords, pieceSize } from '#renderer/features/stash/fabric-words';
import { andList } from '#renderer/text/field-problems';

/** What a booking did, in words that go around the name of its project. */
export interface BookingWords {
  readonly before: string;
  /** Follows the project and its stage; may be empty. */
  readonly after: string;
  /** The booking reverses another one. */
  readonly isUndo: boolean;
}

interface EntryStep {
  readonly kind: EntryKind;
  readonly pieceKind: PieceKind;
  readonly width: Length;
  readonly unitLength: Length | null;
  readonly lengthChange: number;
  readonly heldChange: number;
  readonly costChange: number | null;
}

/** `Cut 10 in for` … `kept 1 leftover, 12 × 10 in`. An undo is described by the booking it reverses. */
export function bookingWords(
  booking: Booking,
  ledger: readonly Booking[],
  display: LengthDisplay,
): BookingWords {
  const isUndo = booking.entries.some(({ kind }) => kind === 'taken-back');
  const steps = isUndo ? originalSteps(booking, ledger) : booking.entries.map(stepOf);
  const { before, after } = stepWords(steps, booking.projectName !== null, display);
  return { before: isUndo ? `Undone: ${lowered(before)}` : before, after, isUndo };
}

function originalSteps(booking: Booking, ledger: readonly Booking[]): readonly EntryStep[] {
  const reversed = new Set(booking.entries.map(({ reverses }) => reverses));
  return ledger.flatMap(({ entries }) => entries.filter(({ id }) => reversed.has(id)).map(stepOf));
}

function stepOf(entry: Booking['entries'][number]): EntryStep {
  const { kind, pieceKind, lengthChange, heldChange, costChange, pieceWidth, unitLength } = entry;
  return {
    kind,
    pieceKind,
    lengthChange,
    heldChange,
    costChange,
    width: lengthFromUnits(pieceWidth),
    unitLength: unitLength === null ? null : lengthFromUnits(unitLength),
  };
}

function stepWords(
  steps: readonly EntryStep[],
  hasProject: boolean,
  display: LengthDisplay,
): Pick<BookingWords, 'before' | 'after'> {
  const first = steps.find(({ kind }) => kind !== 'leftover');
  if (first === undefined) return { before: 'A booking', after: '' };
  const { lengthChange, heldChange, costChange, width, unitLength, pieceKind } = first;
  const text = (units: number) => {
    const length = lengthFromUnits(Math.abs(units));
    return bookedAmount({ kind: pieceKind, length, unitLength }, display);
  };
  switch (first.kind) {
    case 'bought': {
      const piece = { kind: pieceKind, width, unitLength, length: lengthFromUnits(lengthChange) };
      const words = pieceInWords(piece, display);
      const verb = costChange !== null && costChange > 0 ? 'Bought' : 'Added';
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
      return { before: `Threw out ${text(lengthChange)}`, after: '' };
    case 'counted':
      return { before: countedWords(lengthChange, text), after: '' };
    case 'leftover':
    case 'taken-back':
      return { before: 'A booking', after: '' };
  }
}

function keptWords(steps: readonly EntryStep[], display: LengthDisplay): string {
  const kept = steps.filter(({ kind }) => kind === 'leftover');
  if (kept.length === 0) return '';
  const sizes = kept.map(({ width, lengthChange }) =>
    pieceSize({ width, length: lengthFromUnits(lengthChange) }, display),
  );
  return `kept ${String(kept.length)} ${kept.length === 1 ? 'leftover' : 'leftovers'}, ${andList(sizes)}`;
}

function countedWords(change: number, text: (units: number) => string): string {
  if (change === 0) return 'Counted: as recorded';
  return `Counted: ${text(change)} ${change > 0 ? 'more' : 'less'} than recorded`;
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
