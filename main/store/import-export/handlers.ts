import type { Handlers } from '../base/handlers';
import { importTable, previewTable } from './stash-import';
import type { ImportContext } from './import-context';

export const tableHandlers = {
  'table:preview': (context, input) => previewTable(context, input),
  'table:import': (context, input) => importTable(context, input),
} satisfies Handlers<'table', ImportContext>;
