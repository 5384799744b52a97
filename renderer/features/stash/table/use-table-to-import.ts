import { useDeferredValue, useEffect, useState } from 'react';
import type { StashColumn, TableMapping, TableToRead } from '#core/domain/stash-table';
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

function isSameMapping(one: TableMapping, other: TableMapping | undefined): boolean {
  return one.every((column, index) => column === other?.[index]);
}

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
  const { value: reading, problem } = useRead('table:preview', { table: previewed, rows }, { isOn: isGiven });
  const show = (next: TableToRead, fileName: string | null) => {
    const isKept = next.source.kind === 'text' && next.source.text.length <= MOST_KEPT;
    setChosen(isKept ? null : { table: next, fileName });
    if (isKept) setPasted(next);
  };
  const change = (part: Partial<TableToRead>) => show({ ...table, ...part }, chosen?.fileName ?? null);
  // The preview is a moment behind the table, so the table itself must still be without chosen columns.
  const isGuessed = table.mapping === null && previewed === table;
  const remembered = reading === undefined || !isGuessed ? null : rememberedMapping(reading);
  useEffect(() => {
    if (remembered !== null && !isSameMapping(remembered, reading?.mapping)) change({ mapping: remembered });
  });
  const setSource = (source: TableToRead['source'], name: string | null) =>
    show({ ...table, source, hasTitles: null, mapping: null, mends: [] }, name);
  return {
    table,
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
