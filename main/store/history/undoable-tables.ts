/** The tables whose rows undo puts back, parents first. A test asks every other table why it is left out. */
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
  'pattern',
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

/** Bookings refer to rows of these tables, so a row with bookings is marked as deleted, not removed. */
export const BOOKED_TABLES: Partial<Record<UndoableTable, string>> = {
  project: 'project_seq',
  fabric: 'fabric_seq',
};
