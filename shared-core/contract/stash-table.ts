import { z } from 'zod';
import { type TableReading, tableToRead } from '#core/domain/stash-table';
import { reads, writes } from './channel';
import type { Changed } from './projects';

export const stashTableChannels = {
  /** Reads a table of fabrics as it would be brought in, and changes nothing. */
  'table:read': reads<TableReading>()(z.object({ table: tableToRead })),
  /** Brings all of it in, in one change, or nothing: a table with any fault is refused. */
  'table:bring-in': writes<Changed & TableReading['adds']>()(z.object({ table: tableToRead })),
};
