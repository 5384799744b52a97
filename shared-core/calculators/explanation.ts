import type { Length } from '#core/units/length';
import type { RoundingDirection } from '#core/units/rounding';

/** A number with its kind. `exact` is not rounded; `rounded` is the value that the maker uses, where the two may differ. */
export type Quantity =
  /**
   * Exact and rounded in 1/320 mm. `use` says how it is written: a size in the reader's step, a fine length (an error, or a
   * mark for a cut that cannot be undone) to 1/64 in or 0.1 mm, or fabric bought by the yard or meter.
   */
  | {
      readonly kind: 'length';
      readonly exact: number;
      readonly rounded: Length;
      readonly rounding: RoundingDirection | 'none';
      readonly use: 'size' | 'fine' | 'yardage';
      /** What `rounded` is a whole multiple of, in 1/320 mm, where the maker chose a step of their own. */
      readonly step?: number;
    }
  /** A cut or finished rectangle: width by length. */
  | { readonly kind: 'size'; readonly width: LengthQuantity; readonly length: LengthQuantity }
  /** A count; `exact` may be a fraction before rounding. `of` holds the singular and the plural: ['strip', 'strips']. */
  | {
      readonly kind: 'count';
      readonly exact: number;
      readonly rounded: number;
      readonly of: readonly [string, string];
    }
  /** (1/320 mm)². */
  | { readonly kind: 'area'; readonly exact: number }
  /** 5 means 5%. */
  | { readonly kind: 'percent'; readonly exact: number }
  /** Minor units of the workshop's currency; `rounded` is whole. */
  | { readonly kind: 'money'; readonly exact: number; readonly rounded: number }
  /** Whole minutes. */
  | { readonly kind: 'minutes'; readonly exact: number; readonly rounded: number }
  /** Grams; written in the reader's ounces or grams, rounded in the given direction. */
  | { readonly kind: 'weight'; readonly exact: number; readonly rounding: RoundingDirection }
  | { readonly kind: 'degrees'; readonly exact: number }
  /** A plain number, a factor or ratio. */
  | { readonly kind: 'number'; readonly exact: number }
  /** Words, such as the verdict "comfortable". */
  | { readonly kind: 'words'; readonly text: string };

export type LengthQuantity = Extract<Quantity, { kind: 'length' }>;

/** One main result of an answer. */
export interface Figure {
  readonly label: string;
  readonly quantity: Quantity;
}

/** derived: follows from geometry or arithmetic; published: from a named source; common practice: what makers do. */
export interface Rule {
  readonly kind: 'derived' | 'published' | 'common practice';
  readonly says: string;
}

/** A symbol of a formula and its value. */
export interface Term {
  readonly symbol: string;
  readonly means: string;
  readonly quantity: Quantity;
}

/** One step of the working: what is calculated, the formula in symbols, the values of the symbols, and the result. */
export interface Step {
  readonly label: string;
  readonly formula: string;
  readonly terms: readonly Term[];
  readonly result: Quantity;
  readonly rule: Rule;
}

export type Explanation = readonly Step[];

/** A plain sentence in which each `{name}` is replaced by the quantity of that name, in the reader's units. */
export interface Sentence {
  readonly says: string;
  readonly values: Readonly<Record<string, Quantity>>;
}

/** Something to know before cutting. caution: a person may be hurt; warning: the project may be; tip: good to know. */
export interface Note extends Sentence {
  readonly kind: 'caution' | 'warning' | 'tip';
}

export interface Table {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Quantity[])[];
}
