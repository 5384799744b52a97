import type { CuttingTable, JobPiece, PieceToBuy } from '#core/cutting/tree/cutting-job';
import type { ScreenColor } from '#core/units/screen-color';

/** Patches of one size, as cut, in 1/320 mm: `width` across the print, `length` along it. */
interface RolePatch {
  readonly width: number;
  readonly length: number;
  readonly copies: number;
  readonly mayTurn: boolean;
}

/** One place for a fabric in the drawing of a top: “ground”, “star”. Each takes a fabric of its own. */
export interface FabricRole {
  readonly name: string;
  readonly patches: readonly RolePatch[];
}

/** Two roles that meet in seams of this length in all; by index. */
export interface RoleBorder {
  readonly roles: readonly [number, number];
  readonly length: number;
}

/** A fabric that may be chosen: its color, what of it is free, and how it could be bought. */
export interface FabricOnShelf {
  readonly id: string;
  readonly color: ScreenColor;
  /** A print with a top and a bottom: no patch may turn. */
  readonly isDirectional: boolean;
  readonly pieces: readonly (JobPiece & { readonly isLeftover: boolean })[];
  /** Undefined when it cannot be bought again. */
  readonly toBuy: PieceToBuy | undefined;
  /** In minor units for an area in (1/320 mm)²; null when no price is known. */
  readonly price: { readonly minor: number; readonly area: number } | null;
}

/** What the maker asks for. */
export interface ChoiceWishes {
  /** These fabrics, by id, are all in every suggestion. */
  readonly contains: readonly string[];
  readonly warmth: 'any' | 'warm' | 'cool';
  readonly prefersLeftovers: boolean;
  readonly buysNothing: boolean;
  /** Minor units; null for any amount. With a limit, fabric without a known price is not bought. */
  readonly mostMoney: number | null;
  /** Roles that meet differ in lightness (L*, 0 to 100) by at least this. */
  readonly leastContrast: number;
}

export interface ChoiceProblem {
  readonly roles: readonly FabricRole[];
  readonly borders: readonly RoleBorder[];
  readonly fabrics: readonly FabricOnShelf[];
  readonly wishes: ChoiceWishes;
  readonly table: CuttingTable;
}

/** A fabric for every role, by index into the problem's fabrics. */
export type Choice = readonly number[];

/** One way to make the top out of what is on the shelf. */
export interface Suggestion {
  readonly choice: Choice;
  /** 0 to the sum of the weights; more is better. */
  readonly score: number;
  /** The least difference in lightness of two roles that meet; 100 when none do. */
  readonly leastContrast: number;
  /** Of all patches, by area: how much comes from leftovers, from 0 to 1. */
  readonly fromLeftovers: number;
  /** Roles whose fabric is not enough, with what to buy; lengths in 1/320 mm, minor units, null without a price. */
  readonly toBuy: readonly {
    readonly role: number;
    readonly length: number;
    readonly minor: number | null;
  }[];
}
