/** The tables whose rows undo puts back, parents first. The ledger is not among them: it books the opposite instead. */
export const UNDOABLE_TABLES = [
  'workshop',
  'project',
  'stage',
  'checklist_item',
  'stage_event',
  'contact',
  'trip',
  'trip_event',
  'work',
  'calculation',
  'photo',
  'stage_plan',
  'stash_kind',
  'place',
  'fabric',
  'cutting_plan',
  'cut_step',
  'fabric_price',
  'piece_place',
  'stash_search',
  'piece_print',
  'need_choice',
  'shopping_line',
] as const;

export type UndoableTable = (typeof UNDOABLE_TABLES)[number];

/** Bookings name rows of these tables, so a row that was booked on is marked as deleted rather than removed. */
export const BOOKED_TABLES: Partial<Record<UndoableTable, string>> = {
  project: 'project_seq',
  fabric: 'fabric_seq',
};
