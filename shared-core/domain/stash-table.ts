import { z } from 'zod';
import type { CalendarDate } from '#core/units/calendar-date';
import type { Length } from '#core/units/length';
import type { LengthProblem } from '#core/units/length-problem';
import type { MoneyProblem } from '#core/units/parse-money';
import type { PieceKind, FabricDetails, PrintRuns } from './stash';

/** What a column of a table can say of a fabric and of one piece of it. */
export const stashColumnSchema = z.enum([
  'fabric-number',
  'name',
  'print',
  'color-words',
  'fiber',
  'direction',
  'fabric-width',
  'washed',
  'supplier',
  'place',
  'swatch',
  'notes',
  'piece-number',
  'kind',
  'kind-name',
  'size',
  'piece-width',
  'piece-length',
  'unit-length',
  'piece-place',
  'piece-print',
  'cost',
  'bought-on',
]);
export type StashColumn = z.infer<typeof stashColumnSchema>;

/** For each column of the table what it says; null is left out. */
export const tableMappingSchema = z.array(stashColumnSchema.nullable()).max(200).readonly();
export type TableMapping = z.infer<typeof tableMappingSchema>;

export const tableEncodingSchema = z.enum(['utf-8', 'utf-16le', 'utf-16be', 'windows-1252']);
export type TableEncoding = z.infer<typeof tableEncodingSchema>;

/** One line of a table, read: a fabric and, where it has one, a piece of it. */
export interface StashRow {
  readonly details: FabricDetails;
  readonly piece: PieceToAdd | null;
  /** Rows of one table that share it are one fabric. */
  readonly fabricKey: string;
}

export interface PieceToAdd {
  readonly kind: PieceKind;
  /** The maker's own name of the kind; empty for none. */
  readonly kindName: string;
  readonly width: Length;
  readonly length: Length;
  /** Of one of what is told by number, and the place of its own: as of a piece of fabric in the stash. */
  readonly unitLength: Length | null;
  readonly place: string;
  readonly printRuns: PrintRuns;
  readonly costMinor: number;
  readonly on: CalendarDate;
}

/** Why a cell cannot be taken. */
export type CellProblem =
  | { readonly kind: 'length'; readonly problem: LengthProblem }
  | { readonly kind: 'money'; readonly problem: MoneyProblem }
  | { readonly kind: 'negative'; readonly read: string }
  | { readonly kind: 'unknown'; readonly read: string; readonly expected: readonly string[] }
  | { readonly kind: 'date'; readonly read: string }
  | { readonly kind: 'out-of-range'; readonly read: string }
  | { readonly kind: 'too-long'; readonly most: number }
  | { readonly kind: 'missing' };

/** A cell that cannot be taken: its line as a text editor counts them and its column from 1; in a file of data, its place. */
export interface CellFault {
  readonly line: number;
  readonly column: number;
  readonly at: string | null;
  readonly field: StashColumn;
  readonly problem: CellProblem;
}

/** Why a table is not read any further. Lines and columns count from 1. */
export type TableRefusal =
  | { readonly why: 'gone' }
  | { readonly why: 'empty' }
  | { readonly why: 'too-large'; readonly bytes: number; readonly most: number }
  | { readonly why: 'not-text'; readonly line: number }
  | { readonly why: 'wrong-encoding'; readonly line: number; readonly column: number }
  | { readonly why: 'quote-left-open'; readonly line: number }
  | { readonly why: 'stray-quote'; readonly line: number }
  | { readonly why: 'line-too-long'; readonly line: number; readonly most: number }
  | { readonly why: 'too-many-lines'; readonly most: number }
  | { readonly why: 'too-many-columns'; readonly line: number; readonly most: number }
  | { readonly why: 'not-json'; readonly line: number; readonly column: number }
  | { readonly why: 'not-a-stash-file'; readonly at: string; readonly expected: string }
  | { readonly why: 'other-currency'; readonly found: string; readonly expected: string };

const source = z.union([
  z.object({ kind: z.literal('text'), text: z.string().max(4_000_000) }),
  z.object({ kind: z.literal('file'), token: z.uuid() }),
]);

/** A table to be brought in, and how it is to be read. */
export const tableToReadSchema = z
  .object({
    source,
    encoding: tableEncodingSchema,
    /** Without it, it is guessed from the first line. */
    hasTitles: z.boolean().nullable(),
    mapping: tableMappingSchema.nullable(),
    /** What is in the stash already, or stands twice in the table, is left out, or added all the same. */
    repeats: z.enum(['leave-out', 'add']),
  })
  .readonly();
export type TableToRead = z.infer<typeof tableToReadSchema>;

/** A table as it would be brought in. Nothing is, while there is any fault. */
export interface TableReading {
  readonly columns: readonly { readonly title: string; readonly samples: readonly string[] }[];
  readonly hasTitles: boolean;
  readonly mapping: TableMapping;
  readonly lines: number;
  /** The first of the rows as they were read. */
  readonly preview: readonly StashRow[];
  readonly faults: readonly CellFault[];
  /** All of them, also those beyond the listed ones. */
  readonly faultCount: number;
  /** Lines that stand in the table before, the first of them; and how many there are. */
  readonly repeats: readonly { readonly line: number; readonly sameAs: number }[];
  readonly repeatCount: number;
  readonly alreadyHere: number;
  readonly adds: { readonly fabrics: number; readonly pieces: number; readonly costMinor: number };
}
