import { z } from 'zod';
import { pieceKindSchema, printDirectionSchema, printRunsSchema } from '#core/domain/stash';
import type { StashColumn } from '#core/domain/stash-table';
import type { CurrencyCode } from '#core/units/money';
import { costText, exactLength, type StashItem } from './write-rows';

const short = z.string().max(120);
const length = z
  .string()
  .max(80)
  .meta({ description: 'A length with its unit, such as "1066.8 mm", "42 in" or "1.25 m".' });

const piece = z
  .object({
    kind: z.enum(pieceKindSchema.options),
    kindName: z.string().max(60).describe('The name of the kind in the list of kinds; empty for none.'),
    width: length.describe('Across, from selvage to selvage.'),
    length: length.describe('Along the selvage: the length in the stash.'),
    unitLength: length
      .nullable()
      .describe(
        'The length of one item, for fabric counted in items such as strips; null for fabric measured by length.',
      ),
    place: short.describe('Where it is stored, if not with the rest of its fabric.'),
    printRuns: z.enum(printRunsSchema.options).describe('Whether its print runs along it or across it.'),
    cost: z
      .string()
      .max(80)
      .nullable()
      .describe(
        'What is left of its cost, in the currency of the file, such as "12.50"; null if it is not known.',
      ),
    boughtOn: z
      .string()
      .regex(/^\d{4}(-\d\d(-\d\d)?)?$/)
      .nullable()
      .describe(
        'The day, month or year it was bought: "2027-03-05", "2027-03" or "2027"; null if it is not known.',
      ),
  })
  .strict();

const fabric = z
  .object({
    name: z.string().min(1).max(120),
    print: short,
    colorWords: short,
    fiber: short,
    direction: z.enum(printDirectionSchema.options),
    width: length.describe('Usable width, between the selvages.'),
    washed: z.boolean(),
    supplier: short,
    place: short,
    swatch: z.string().regex(/^#[0-9a-f]{6}$/),
    notes: z.string().max(5_000),
    pieces: z.array(piece).max(10_000),
  })
  .strict();

/** The stash as a JSON file. `stash-file.schema.json` is its JSON Schema. */
export const stashFile = z
  .object({
    format: z.literal('ringbound-stash'),
    /** 1 always had a cost and a day. */
    version: z.literal([1, 2]),
    currency: z.string().regex(/^[A-Z]{3}$/),
    fabrics: z.array(fabric).max(100_000),
  })
  .strict();
export type StashFile = z.infer<typeof stashFile>;

export function toStashFile(items: readonly StashItem[], currency: CurrencyCode): StashFile {
  return {
    format: 'ringbound-stash',
    version: 2,
    currency,
    fabrics: items.map(({ details, pieces }) => {
      const { isWashed, width, ...rest } = details;
      return {
        ...rest,
        width: exactLength(width),
        washed: isWashed,
        pieces: pieces.map((one) => ({
          kind: one.kind,
          kindName: one.kindName,
          width: exactLength(one.width),
          length: exactLength(one.length),
          unitLength: one.unitLength === null ? null : exactLength(one.unitLength),
          place: one.place,
          printRuns: one.printRuns,
          cost: costText(one.costMinor, currency),
          boughtOn: one.on,
        })),
      };
    }),
  };
}

/** The pieces of a stash file as lines of a table, so both formats are read by the same rules. `at` is the place in the file. */
export function* stashFileLines(
  file: StashFile,
): Generator<{ readonly at: string; readonly cells: ReadonlyMap<StashColumn, string> }> {
  for (const [index, { pieces, ...fabricPart }] of file.fabrics.entries()) {
    const shared: readonly (readonly [StashColumn, string])[] = [
      ['fabric-number', String(index + 1)],
      ['name', fabricPart.name],
      ['print', fabricPart.print],
      ['color-words', fabricPart.colorWords],
      ['fiber', fabricPart.fiber],
      ['direction', fabricPart.direction],
      ['fabric-width', fabricPart.width],
      ['washed', fabricPart.washed ? 'yes' : 'no'],
      ['supplier', fabricPart.supplier],
      ['place', fabricPart.place],
      ['swatch', fabricPart.swatch],
      ['notes', fabricPart.notes],
    ];
    const at = `fabrics[${String(index)}]`;
    if (pieces.length === 0) yield { at, cells: new Map(shared) };
    for (const [order, one] of pieces.entries()) {
      const cells = new Map<StashColumn, string>([
        ...shared,
        ['piece-number', `${String(index + 1)}.${String(order + 1)}`],
        ['kind', one.kind],
        ['kind-name', one.kindName],
        ['piece-width', one.width],
        ['piece-length', one.length],
        ['unit-length', one.unitLength ?? ''],
        ['piece-place', one.place],
        ['piece-print', one.printRuns],
        ['cost', one.cost ?? ''],
        ['bought-on', one.boughtOn ?? ''],
      ]);
      yield { at: `${at}.pieces[${String(order)}]`, cells };
    }
  }
}
