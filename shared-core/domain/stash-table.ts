import { z } from 'zod';
import type { Length } from '#core/units/length';
import type { LengthProblem } from '#core/units/length-problem';
import type { MoneyProblem } from '#core/units/parse-money';
import type { PartialDate } from '#core/units/partial-date';
import type { PieceKind, FabricDetails, PrintRuns } from './stash';

/** What a column of a table can describe: a fabric, or one piece of it. */
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

/** What each column of the table means; null: ignored. */
const tableMappingSchema = z.array(stashColumnSchema.nullable()).max(200).readonly();
export type TableMapping = z.infer<typeof tableMappingSchema>;

const tableEncodingSchema = z.enum(['utf-8', 'utf-16le', 'utf-16be', 'windows-1252']);
export type TableEncoding = z.infer<typeof tableEncodingSchema>;

/** One line of a table after reading: a fabric and, if it has one, a piece of it. */
export interface StashRow {
  readonly details: FabricDetails;
  readonly piece: PieceToAdd | null;
  /** Rows that share it are one fabric. */
  readonly fabricKey: string;
}

export interface PieceToAdd {
  readonly kind: PieceKind;
  /** The maker's own name for the kind; empty for none. */
  readonly kindName: string;
  readonly width: Length;
  readonly length: Length;
  /** For items counted by number: the length of one, and its own place, as for a piece in the stash. */
  readonly unitLength: Length | null;
  readonly place: string;
  readonly printRuns: PrintRuns;
  /** What it cost and when it was bought; null if that is not known. */
  readonly costMinor: number | null;
  readonly on: PartialDate | null;
}

/** Why a cell cannot be read. */
export type CellProblem =
  | { readonly kind: 'length'; readonly problem: LengthProblem }
  | { readonly kind: 'money'; readonly problem: MoneyProblem }
  | { readonly kind: 'negative'; readonly read: string }
  | { readonly kind: 'unknown'; readonly read: string; readonly expected: readonly string[] }
  | { readonly kind: 'date'; readonly read: string }
  | { readonly kind: 'out-of-range'; readonly read: string }
  | { readonly kind: 'too-long'; readonly most: number }
  | { readonly kind: 'missing' };

/** A cell that cannot be read: its line as a text editor counts it and its column, both from 1; in a data file, its place. */
export interface CellFault {
  readonly line: number;
  readonly column: number;
  readonly at: string | null;
  readonly field: StashColumn;
  /** What stands in the cell. */
  readonly text: string;
  readonly problem: CellProblem;
}

/** Why the rest of a table cannot be read. Lines and columns count from 1. */
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
  | { readonly why: 'not-a-stash-file'; readonly at: string }
  | { readonly why: 'other-currency'; readonly found: string; readonly expected: string };

const source = z.union([
  z.object({ kind: z.literal('text'), text: z.string().max(4_000_000) }),
  z.object({ kind: z.literal('file'), token: z.uuid() }),
]);

/** A table to import, and how to read it. */
export const tableToReadSchema = z
  .object({
    source,
    encoding: tableEncodingSchema,
    /** Guessed from the first line when absent. */
    hasTitles: z.boolean().nullable(),
    mapping: tableMappingSchema.nullable(),
    /** Cells that the maker wrote anew, by line and column as a fault names them. */
    mends: z
      .array(
        z.object({ line: z.int().min(1), column: z.int().min(1), text: z.string().max(5_000) }).readonly(),
      )
      .max(2_000)
      .readonly()
      .default([])
      .readonly(),
    /** Whether rows with the same name and color words are one fabric, whatever else differs. */
    sameNames: z.enum(['apart', 'one-fabric']).default('apart'),
    /** Whether rows that are already in the stash, or twice in the table, are skipped or added. */
    repeats: z.enum(['leave-out', 'add']),
  })
  .readonly();
export type TableToRead = z.infer<typeof tableToReadSchema>;

/** A preview of an import. Rows with a cell that cannot be read are left out. */
export interface TableReading {
  readonly columns: readonly { readonly title: string; readonly samples: readonly string[] }[];
  readonly hasTitles: boolean;
  readonly mapping: TableMapping;
  readonly lines: number;
  /** The first rows as they were read. */
  readonly preview: readonly StashRow[];
  readonly faults: readonly CellFault[];
  /** The number of all of them, including those not listed, and of the rows they are in. */
  readonly faultCount: number;
  readonly faultyRows: number;
  /** Rows that share name and color words with an earlier one, but differ in something else about the fabric. */
  readonly sameNameCount: number;
  /** The first repeated lines of the table, and how many there are. */
  readonly repeats: readonly { readonly line: number; readonly sameAs: number }[];
  readonly repeatCount: number;
  readonly alreadyHere: number;
  /** `unpriced` counts the pieces without a cost; `costMinor` is the sum of the others. */
  readonly adds: {
    readonly fabrics: number;
    readonly pieces: number;
    readonly costMinor: number;
    readonly unpriced: number;
  };
}
