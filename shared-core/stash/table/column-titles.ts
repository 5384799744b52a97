import { type StashColumn, stashColumnSchema, type TableMapping } from '#core/domain/stash-table';

/** The title a column is written with, and others that are read as it. */
const TITLES: Readonly<Record<StashColumn, readonly [string, ...string[]]>> = {
  'fabric-number': ['Fabric no.', 'fabric number'],
  name: ['Name', 'fabric', 'fabric name', 'title', 'item', 'what', 'description'],
  print: ['Print', 'pattern', 'design', 'motif'],
  'color-words': ['Color words', 'color', 'colors', 'colour', 'colours', 'main color', 'main colour'],
  fiber: ['Fiber', 'fibre', 'material', 'content'],
  direction: ['Print direction', 'direction', 'print runs', 'directional'],
  'fabric-width': ['Usable width', 'width of fabric', 'fabric width', 'wof', 'bolt width'],
  washed: ['Washed', 'prewashed', 'pre-washed', 'washed yet', 'is it washed'],
  supplier: [
    'Shop',
    'supplier',
    'store',
    'from',
    'bought at',
    'bought from',
    'got it at',
    'got it from',
    'where bought',
    'where from',
    'source',
  ],
  place: [
    'Stored in',
    'place',
    'shelf',
    'bin',
    'box',
    'drawer',
    'location',
    'where',
    'where is it',
    'kept in',
  ],
  swatch: ['Swatch', 'color code'],
  notes: ['Notes', 'note', 'remarks', 'remark', 'comment', 'comments', 'for', 'meant for', 'plans'],
  'piece-number': ['Piece no.', 'piece number'],
  kind: ['Kind', 'what it is', 'type', 'cut'],
  'kind-name': ['Kind name', 'kind called'],
  size: [
    'Size',
    'amount',
    'amt',
    'quantity',
    'qty',
    'yardage',
    'yards',
    'how much',
    'dimensions',
    'have',
    'left',
    'how much is left',
  ],
  'piece-width': ['Piece width', 'width', 'across'],
  'piece-length': ['Piece length', 'length', 'along'],
  'unit-length': ['Length of one', 'length each'],
  'piece-place': ['Piece stored in', 'piece place', 'piece lies'],
  'piece-print': ['Print of piece', 'print of the piece', 'print lies'],
  cost: [
    'Cost',
    'price',
    'paid',
    'what it cost',
    'what i paid',
    'i paid',
    'total',
    'total paid',
    'total cost',
    'spent',
    'value',
  ],
  'bought-on': [
    'Bought on',
    'date',
    'bought',
    'purchased',
    'date bought',
    'purchase date',
    'date purchased',
    'when',
    'when bought',
    'got it on',
    'year',
  ],
};

export function columnTitle(column: StashColumn): string {
  return TITLES[column][0];
}

const KNOWN = new Map(
  stashColumnSchema.options.flatMap((column) =>
    TITLES[column].map((title) => [normal(title), column] as const),
  ),
);

/** What each title says, by the names we know; the first that says a thing says it, others are left out. */
export function guessMapping(titles: readonly string[]): TableMapping {
  const taken = new Set<StashColumn>();
  return titles.map((title) => {
    const column = KNOWN.get(normal(title)) ?? null;
    if (column === null || taken.has(column)) return null;
    taken.add(column);
    return column;
  });
}

/** Whether a first line reads as titles: at least two of them, or one that is the name, are known. */
export function looksLikeTitles(cells: readonly string[]): boolean {
  const known = guessMapping(cells).filter((column) => column !== null);
  return known.length >= 2 || known.includes('name');
}

function normal(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
