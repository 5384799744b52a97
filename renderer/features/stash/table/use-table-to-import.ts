import { useDeferredValue, useState } from 'react';
import type { StashColumn, TableToRead } from '#core/domain/stash-table';
import { call } from '#renderer/bridge/call';
import { useRead } from '#renderer/bridge/query';

const EMPTY_TABLE: TableToRead = {
  source: { kind: 'text', text: '' },
  encoding: 'utf-8',
  hasTitles: null,
  mapping: null,
  repeats: 'leave-out',
};

export type TableToImport = ReturnType<typeof useTableToImport>;

/** The table of the import page, its preview, and the ways to change it. */
export function useTableToImport() {
  const [table, setTable] = useState(EMPTY_TABLE);
  const [fileName, setFileName] = useState<string | null>(null);
  const previewed = useDeferredValue(table);
  const isGiven = previewed.source.kind === 'file' || previewed.source.text.trim() !== '';
  const { value: reading, problem } = useRead('table:preview', { table: previewed }, { isOn: isGiven });
  const change = (part: Partial<TableToRead>) => setTable({ ...table, ...part });
  const setSource = (source: TableToRead['source'], name: string | null) => {
    change({ source, hasTitles: null, mapping: null });
    setFileName(name);
  };
  return {
    table,
    /** Null while the table is pasted text. */
    fileName,
    isGiven,
    /** Whether the preview shows the table as it is now. */
    isUpToDate: previewed === table,
    reading,
    problem,
    change,
    paste: (text: string) => setSource({ kind: 'text', text }, null),
    chooseFile: async () => {
      const chosen = await call('shell:choose-table', {});
      if (chosen.ok && chosen.value !== null) {
        setSource({ kind: 'file', token: chosen.value.token }, chosen.value.name);
      }
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
