import { UNITS_PER_INCH, UNITS_PER_METER, UNITS_PER_MILLIMETER, UNITS_PER_YARD } from './length';

export type LengthUnit = 'in' | 'yd' | 'ft' | 'mm' | 'cm' | 'm';

/** Base units in one of each; all are whole, so a yard and a meter are both exact. */
export const UNITS_PER: Readonly<Record<LengthUnit, number>> = {
  in: UNITS_PER_INCH,
  ft: 12 * UNITS_PER_INCH,
  yd: UNITS_PER_YARD,
  mm: UNITS_PER_MILLIMETER,
  cm: 10 * UNITS_PER_MILLIMETER,
  m: UNITS_PER_METER,
};

const SPELLINGS: Readonly<Record<LengthUnit, readonly string[]>> = {
  in: ['"', "''", 'in', 'ins', 'inch', 'inches'],
  ft: ["'", 'ft', 'foot', 'feet'],
  yd: ['yd', 'yds', 'yard', 'yards'],
  mm: ['mm', 'millimeter', 'millimeters', 'millimeter', 'millimeters'],
  cm: ['cm', 'centimeter', 'centimeters', 'centimeter', 'centimeters'],
  m: ['m', 'meter', 'meters', 'meter', 'meters'],
};

const UNIT_BY_SPELLING: ReadonlyMap<string, LengthUnit> = new Map(
  (Object.keys(SPELLINGS) as LengthUnit[]).flatMap((unit) =>
    SPELLINGS[unit].map((spelling) => [spelling, unit] as const),
  ),
);

/** The unit a lower-case word or mark stands for (a full stop after it is allowed), or undefined. */
export function lengthUnitFromText(text: string): LengthUnit | undefined {
  return UNIT_BY_SPELLING.get(text.replace(/\.$/, ''));
}
