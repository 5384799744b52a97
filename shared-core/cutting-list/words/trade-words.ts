/** Words of the trade, in the forms in which lists use them. All lower case. */

function setOf(words: string): ReadonlySet<string> {
  return new Set(words.split(/\s+/u));
}

export const SHAPES: ReadonlyMap<string, 'square' | 'rectangle' | 'strip' | 'any'> = new Map([
  ...[...setOf('square squares sq sqs')].map((word) => [word, 'square'] as const),
  ...[...setOf('rectangle rectangles rect rects')].map((word) => [word, 'rectangle'] as const),
  ...[...setOf('strip strips')].map((word) => [word, 'strip'] as const),
  ...[...setOf('piece pieces pc pcs patch patches segment segments length lengths')].map(
    (word) => [word, 'any'] as const,
  ),
]);

export const TRIANGLES = setOf('triangle triangles hst hsts qst qsts');

/** Small numbers written out, where a count stands. */
export const NUMBER_WORDS: ReadonlyMap<string, number> = new Map(
  'one two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .map((word, index) => [word, index + 1] as const),
);

/** By a color or one of these words, a name is known to be that of a fabric. */
export const FABRIC_WORDS = setOf(
  `fabric fabrics print prints solid background dot dots stripe stripes floral batik plaid check gingham tonal blender
  linen cotton chambray texture accent color colour focus`,
);
export const COLORS = setOf(
  `red blue green yellow orange purple violet pink white black gray grey brown cream ivory tan beige navy teal aqua
  turquoise gold rust coral mustard charcoal lavender lilac plum peach mint sage olive indigo burgundy maroon silver
  light dark medium bright pale deep multi lights darks mediums ecru rose sand slate`,
);

/** Parts of a quilt. A heading of these alone names what the patches are for. */
export const SECTION_WORDS = setOf(
  `border borders inner outer middle sashing sashings sashes cornerstone cornerstones setting side corner corners
  triangle triangles block blocks center centers centre centres row rows binding backing frame frames posts top bottom
  left right star stars points`,
);

/** Headings that name no fabric: `Fabric requirements`, `Cutting`, `You will need`. */
export const PLAIN_HEADING_WORDS = setOf(
  `materials material fabric fabrics requirements required supplies cutting instructions list directions you will need
  what yardage cut the following to chart guide from for is are all pieces everything`,
);

/** Columns of a table, by the words of their heading. */
export const COLUMNS: ReadonlyMap<
  string,
  'role' | 'count' | 'width' | 'length' | 'size' | 'shape' | 'purpose'
> = new Map([
  ...'fabric|color|colour|print|material'.split('|').map((word) => [word, 'role'] as const),
  ...'qty|quantity|count|how many|number|no.|no|cut|pieces|pcs|#'
    .split('|')
    .map((word) => [word, 'count'] as const),
  ...'width|w|wide|across'.split('|').map((word) => [word, 'width'] as const),
  ...'length|l|height|h|long|along'.split('|').map((word) => [word, 'length'] as const),
  ...'size|cut size|dimensions|measurement|measurements'.split('|').map((word) => [word, 'size'] as const),
  ...'shape|patch|what|kind'.split('|').map((word) => [word, 'shape'] as const),
  ...'for|use|used for|where|part|notes'.split('|').map((word) => [word, 'purpose'] as const),
]);

export const CUT_VERBS = setOf('cut cutting');
export const SUBCUT_VERBS = setOf('subcut subcuts recut crosscut');
export const AND_SO_ON = setOf('and then next also now plus please you will need');
export const ARTICLES = setOf('the a an your this these those of');

/** Words that change a count or leave a choice: a name or purpose with one of them is not taken. */
export const RISKY_WORDS = setOf(
  `each every per both or and either another more less extra half remaining remainder leftover leftovers scrap scraps assorted
  various different any same not no except without instead additional total strip strips reserved
  this that these those it them which rest other others yardage fat note tip hint step option optional important remember warning version
  size sizes twin full queen king throw crib lap baby small large day week page assembly template stash`,
);
