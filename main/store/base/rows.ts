import type { z } from 'zod';
import type { Problem } from '#core/contract/problem';
import { type CalendarDate, calendarDateFromText } from '#core/units/calendar-date';
import { type Length, lengthFromUnits } from '#core/units/length';
import { type PartialDate, partialDateFromText } from '#core/units/partial-date';
import type { Row } from './handles';

/** A row that breaks its table's promises: the file is damaged, or something else wrote it. */
export class UnreadableRow extends Error {
  readonly problem: Problem;

  constructor(where: string, why: string) {
    super(`${where}: ${why}`);
    this.name = 'UnreadableRow';
    this.problem = { code: 'file-unreadable', detail: this.message };
  }
}

/** Reads a value by its schema. Throws UnreadableRow, which names the row. */
export function readBy<Output>(schema: z.ZodType<Output>, value: unknown, where: string): Output {
  const read = schema.safeParse(value);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  throw new UnreadableRow(where, `${issue?.path.map(String).join('.') ?? ''} ${issue?.message ?? ''}`.trim());
}

export function textOf(row: Row, column: string): string {
  const value = row[column];
  if (typeof value === 'string') return value;
  throw new UnreadableRow(column, 'not text');
}

export function textOrNullOf(row: Row, column: string): string | null {
  return row[column] === null ? null : textOf(row, column);
}

/** An identifier of its own brand: `idOf<StageId>(row, 'stage_id')`. What the table holds was checked when it was written. */
// oxlint-disable-next-line typescript/no-unnecessary-type-parameters -- the caller names the brand
export function idOf<Id extends string>(row: Row, column: string): Id {
  return textOf(row, column) as Id;
}

// oxlint-disable-next-line typescript/no-unnecessary-type-parameters -- the caller names the brand
export function idOrNullOf<Id extends string>(row: Row, column: string): Id | null {
  return row[column] === null ? null : idOf<Id>(row, column);
}

export function numberOf(row: Row, column: string): number {
  const value = row[column];
  if (typeof value === 'number') return value;
  throw new UnreadableRow(column, 'not a number');
}

export function numberOrNullOf(row: Row, column: string): number | null {
  return row[column] === null ? null : numberOf(row, column);
}

export function flagOf(row: Row, column: string): boolean {
  return numberOf(row, column) === 1;
}

/** One of a closed list of values, the same as in the table's CHECK. */
export function choiceOf<Choice extends string>(
  row: Row,
  column: string,
  choices: readonly Choice[],
): Choice {
  const value = row[column];
  const choice = choices.find((one) => one === value);
  if (choice === undefined) throw new UnreadableRow(column, 'not one of its choices');
  return choice;
}

export function dateOf(row: Row, column: string): CalendarDate {
  const date = calendarDateFromText(textOf(row, column));
  if (!date.ok) throw new UnreadableRow(column, 'not a date');
  return date.value;
}

export function dateOrNullOf(row: Row, column: string): CalendarDate | null {
  return row[column] === null ? null : dateOf(row, column);
}

export function partialDateOrNullOf(row: Row, column: string): PartialDate | null {
  const text = textOrNullOf(row, column);
  const date = text === null ? null : partialDateFromText(text);
  if (date !== null && !date.ok) throw new UnreadableRow(column, 'not a date');
  return date?.value ?? null;
}

export function lengthOf(row: Row, column: string): Length {
  return lengthFromUnits(numberOf(row, column));
}

export function lengthOrNullOf(row: Row, column: string): Length | null {
  return row[column] === null ? null : lengthOf(row, column);
}

/** The JSON value in a column; its shape is not checked yet. */
export function jsonOf(row: Row, column: string): unknown {
  try {
    return JSON.parse(textOf(row, column)) as unknown;
  } catch (error) {
    if (error instanceof UnreadableRow) throw error;
    throw new UnreadableRow(column, 'not JSON');
  }
}

/** The rows grouped by the value of a column, in their order. */
export function groupRows(rows: readonly Row[], column: string): ReadonlyMap<unknown, readonly Row[]> {
  const groups = new Map<unknown, Row[]>();
  for (const row of rows) {
    const group = groups.get(row[column]);
    if (group === undefined) groups.set(row[column], [row]);
    else group.push(row);
  }
  return groups;
}
