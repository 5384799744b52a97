import fs from 'node:fs';
import path from 'node:path';
import type { TableToRead } from '#core/domain/stash-table';
import { answerMainProcessCall } from '#main/store/thread/main-process-calls';
import { temporaryFolder, type TestWorkshop } from './workshop';

const BY_DEFAULT = {
  encoding: 'utf-8',
  hasTitles: null,
  mapping: null,
  mends: [],
  sameNames: 'apart',
  repeats: 'leave-out',
} as const;

/** A table that was pasted. */
export function pasted(text: string, changes: Partial<TableToRead> = {}): { readonly table: TableToRead } {
  return { table: { source: { kind: 'text', text }, ...BY_DEFAULT, ...changes } };
}

/** A file that the maker chose, with this content. */
export function chosenFile(
  workshop: TestWorkshop,
  content: string | Uint8Array,
  changes: Partial<TableToRead> = {},
): { readonly table: TableToRead } {
  const file = path.join(temporaryFolder(), 'table');
  fs.writeFileSync(file, content);
  return offered(workshop, file, changes);
}

export function offered(
  { context }: TestWorkshop,
  file: string,
  changes: Partial<TableToRead> = {},
): { readonly table: TableToRead } {
  const answer = answerMainProcessCall(context, 'main:offer-table', { file });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  const { token } = answer.value as { token: string };
  return { table: { source: { kind: 'file', token }, ...BY_DEFAULT, ...changes } };
}

/** The whole stash as it is exported. */
export function exported({ context }: TestWorkshop, as: 'csv' | 'json'): string {
  const answer = answerMainProcessCall(context, 'main:export-stash', { as });
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value as string;
}
