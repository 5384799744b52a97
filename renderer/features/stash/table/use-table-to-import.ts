import { useDeferredValue, useState } from 'react';
import type { StashColumn, TableToRead } from '#core/domain/stash-table';
import { call } from '#renderer/bridge/call';
import { useRead } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { rememberedMapping } from './remembered-columns';

const EMPTY_TABLE: TableToRead = {
  source: { kind: 'text', text: '' },
  encoding: 'utf-8',
  hasTitles: null,
  mapping: null,
  mends: [],
  sameNames: 'apart',
  repeats: 'leave-out',
};

const ROWS_AT_A_TIME = 500;

/** Longer text is not kept while the page is left: a window's storage is small. */
const MOST_KEPT = 1_000_000;

/** A table that is not part of the draft: a file, which is on disk anyway, or a very long text. */
interface ChosenTable {
  readonly table: TableToRead;
  readonly fileName: string | null;
}

export type TableToImport = ReturnType<typeof useTableToImport>;

/** The table of the import page, its preview, and the ways to change it. */
export function useTableToImport() {
  const draft = useFormDraft('stash-table');
  const [pasted, setPasted] = useDraftValue(draft, 'table', EMPTY_TABLE);
  const [rows, setRows] = useState(ROWS_AT_A_TIME);
  const [chosen, setChosen] = useState<ChosenTable | null>(null);
  const table = chosen?.table ?? pasted;
  const previewed = useDeferredValue(table);
  const isGiven = previewed.source.kind === 'file' || previewed.source.text.trim() !== '';
  const guess = useRead('table:preview', { table: previewed, rows }, { isOn: isGiven });
  const remembered =
    previewed.mapping === null && guess.value !== undefined ? rememberedMapping(guess.value) : null;
  const asRead = remembered === null ? previewed : { ...previewed, mapping: remembered };
  const { value: reading, problem } = useRead('table:preview', { table: asRead, rows }, { isOn: isGiven });
  const show = (next: TableToRead, fileName: string | null) => {
    const isKept = next.source.kind === 'text' && next.source.text.length <= MOST_KEPT;
    setChosen(isKept ? null : { table: next, fileName });
    if (isKept) setPasted(next);
  };
  const change = (part: Partial<TableToRead>) => show({ ...table, ...part }, chosen?.fileName ?? null);
  const setSource = (source: TableToRead['source'], name: string | null) =>
    show({ ...table, source, hasTitles: null, mapping: null, mends: [] }, name);
  return {
    /** With the columns as they were chosen for a table with the same titles, unless they are chosen for this one. */
    table: { ...table, mapping: table.mapping ?? remembered },
    /** Null while the table is pasted text. */
    fileName: chosen?.fileName ?? null,
    draft,
    isGiven,
    /** Whether the preview shows the table as it is now. */
    isUpToDate: previewed === table,
    reading,
    problem,
    change,
    showMore: () => setRows(rows + ROWS_AT_A_TIME),
    paste: (text: string) => setSource({ kind: 'text', text }, null),
    chooseFile: async () => {
      const chosen = await call('shell:choose-table', {});
      if (chosen.ok && chosen.value !== null) {
        setSource({ kind: 'file', token: chosen.value.token }, chosen.value.name);
      }
    },
    /** Writes a cell anew that could not be read. */
    mend: (line: number, column: number, text: string) => {
      const others = table.mends.filter((mend) => mend.line !== line || mend.column !== column);
      change({ mends: [...others, { line, column, text }] });
    },
    /** Gives a column its meaning; the column that had it before is left out. */
    mapColumn: (index: number, field: StashColumn | null) => {
      if (reading === undefined) return;
      change({
        mapping: reading.mapping.map((before, at) => {
          if (at === index) return field;
          return before === field ? null : before;
        }),
      });
    },
  };
}
