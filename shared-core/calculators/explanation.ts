import type { Length } from '#core/units/length';
import type { RoundingDirection } from '#core/units/rounding';

/** A number with its kind. `exact` is unrounded; where a rounded value is what the maker uses, it stands beside it. */
export type Quantity =
  /** Exact and rounded in 1/320 mm. `use` says how it is written: a size, or fabric bought by the yard or meter. */
  | {
      readonly kind: 'length';
      readonly exact: number;
      readonly rounded: Length;
      readonly rounding: RoundingDirection | 'none';
      readonly use: 'size' | 'yardage';
    }
  /** A cut or finished rectangle: width by length, each as a length. */
  | { readonly kind: 'size'; readonly width: LengthQuantity; readonly length: LengthQuantity }
  /** Whole things; `exact` may be fractional before rounding. `of` names one and several: ['strip', 'strips']. */
  | {
      readonly kind: 'count';
      readonly exact: number;
      readonly rounded: number;
      readonly of: readonly [string, string];
    }
  /** (1/320 mm)². */
  | { readonly kind: 'area'; readonly exact: number }
  /** 5 is five in a hundred. */
  | { readonly kind: 'percent'; readonly exact: number }
  /** Minor units of the workshop's currency; `rounded` is whole. */
  | { readonly kind: 'money'; readonly exact: number; readonly rounded: number }
  /** Whole minutes. */
  | { readonly kind: 'minutes'; readonly exact: number; readonly rounded: number }
  | { readonly kind: 'degrees'; readonly exact: number }
  /** A plain number, a factor or ratio. */
  | { readonly kind: 'number'; readonly exact: number }
  /** A verdict in words, such as "comfortable". */
  | { readonly kind: 'words'; readonly text: string };

export type LengthQuantity = Extract<Quantity, { kind: 'length' }>;

/** One headline of an answer. */
export interface Figure {
  readonly label: string;
  readonly quantity: Quantity;
}

/** derived: worked out from geometry; published: from a named source; common practice: what makers do. */
export interface Rule {
  readonly kind: 'derived' | 'published' | 'common practice';
  readonly says: string;
}

/** A symbol of a formula with the number put in for it. */
export interface Term {
  readonly symbol: string;
  readonly means: string;
  readonly quantity: Quantity;
}

/** One line of working: what is asked, the formula in symbols, the numbers put in, and what comes out. */
export interface Step {
  readonly label: string;
  readonly formula: string;
  readonly terms: readonly Term[];
  readonly result: Quantity;
  readonly rule: Rule;
}

export type Explanation = readonly Step[];

/** A plain sentence; `{name}` in it stands for the quantity of that name, written in the reader's units. */
export interface Sentence {
  readonly says: string;
  readonly values: Readonly<Record<string, Quantity>>;
}

/** Something to know before cutting. caution: somebody may be hurt; warning: the piece may be; tip: good to know. */
export interface Note extends Sentence {
  readonly kind: 'caution' | 'warning' | 'tip';
}

export interface Table {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Quantity[])[];
}
