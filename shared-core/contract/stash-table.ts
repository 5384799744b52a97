import { z } from 'zod';
import { type TableReading, tableToReadSchema } from '#core/domain/stash-table';
import { reads, writes } from './channel';
import type { Changed } from './projects';

export const stashTableChannels = {
  /** Reads a table of fabrics as it would be imported, and changes nothing. `rows` is how many of them to show. */
  'table:preview': reads<TableReading>()(
    z.object({ table: tableToReadSchema, rows: z.int().min(1).max(100_000).optional() }),
  ),
  /** Imports every row that can be read, as one change. A table without such a row is refused. */
  'table:import': writes<Changed & TableReading['adds']>()(z.object({ table: tableToReadSchema })),
};
