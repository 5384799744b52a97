import {
  type StashColumn,
  stashColumnSchema,
  type TableMapping,
  type TableReading,
} from '#core/domain/stash-table';

const KEY = 'import-columns';
/** Tables with other titles than the latest of these are guessed anew. */
const MOST_TABLES = 30;

type Remembered = Readonly<Record<string, TableMapping>>;

/** What the maker last chose for a table with these titles; null if there was none. */
export function rememberedMapping({ columns, hasTitles }: TableReading): TableMapping | null {
  const mapping = hasTitles ? read()[keyOf(columns)] : undefined;
  return mapping?.length === columns.length ? mapping : null;
}

/** Keeps the columns of a table that was imported, for the next one with the same titles. */
export function rememberMapping({ columns, hasTitles, mapping }: TableReading): void {
  if (!hasTitles) return;
  const key = keyOf(columns);
  const others = Object.entries(read()).filter(([other]) => other !== key);
  const kept = [...others, [key, mapping] as const].slice(-MOST_TABLES);
  window.localStorage.setItem(KEY, JSON.stringify(Object.fromEntries(kept)));
}

function keyOf(columns: TableReading['columns']): string {
  return JSON.stringify(columns.map(({ title }) => title.trim().toLowerCase()));
}

/** Nothing that cannot be read is taken: the storage may be of another version. */
function read(): Remembered {
  try {
    const kept: unknown = JSON.parse(window.localStorage.getItem(KEY) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(
      Object.entries(kept).flatMap(([key, mapping]): readonly (readonly [string, TableMapping])[] =>
        Array.isArray(mapping) ? [[key, mapping.map(columnOf)]] : [],
      ),
    );
  } catch {
    return {};
  }
}

function columnOf(column: unknown): StashColumn | null {
  const known = stashColumnSchema.safeParse(column);
  return known.success ? known.data : null;
}
