import type { FabricPieceId, FabricId, ProjectId, StageId } from '#core/domain/ids';
import type { PieceKind } from '#core/domain/stash';
import type { Length } from '#core/units/length';

/** Rectangles of one size: `width` across the fabric, `length` along it; a patch that may turn can lie the other way. */
export interface NeededPatch {
  readonly width: number;
  readonly length: number;
  readonly count: number;
  readonly mayTurn: boolean;
}

/**
 * How much is needed. patches: rectangles, each of which must come from one piece. strips: strips as wide as `strip`, cut
 * across fabric of any width and joined until `needed` is reached, each join costing `cost`. thread: a length; a spool is
 * enough.
 */
export type NeedAmount =
  | { readonly measure: 'patches'; readonly patches: readonly NeededPatch[] }
  | { readonly measure: 'strips'; readonly strip: number; readonly needed: number; readonly cost: number }
  | { readonly measure: 'thread'; readonly length: number };

/** What one answer, or one cutting plan, asks of one fabric. Lengths in 1/320 mm. */
export interface FabricNeed {
  readonly projectId: ProjectId;
  readonly projectName: string;
  /** Null where a cutting plan of the whole project says it. */
  readonly stageId: StageId | null;
  readonly stageName: string | null;
  /** The calculator or `cutting-plan`, after the stage where there is one: with the name it tells a project's needs apart. */
  readonly source: string;
  /** What the maker's answer calls the fabric, such as `Backing` or `Dark`. */
  readonly name: string;
  /** What would be bought. */
  readonly kind: PieceKind;
  readonly amount: NeedAmount;
  /** The width of fabric it was worked out for. */
  readonly fabricWidth: Length;
  /** Safety extra on what is bought; 5 is five in a hundred. */
  readonly extraPercent: number;
  /** A package that is enough, where it is sold in packages. */
  readonly package: { readonly name: string; readonly width: Length; readonly length: Length } | null;
  /** The fabric of the stash that is to be used; null while none is. */
  readonly fabricId: FabricId | null;
  /** Pieces that a plan has counted already. */
  readonly ignores: readonly FabricPieceId[];
}

/** Tells the needs of all projects apart. */
export function needKey({
  projectId,
  source,
  name,
}: Pick<FabricNeed, 'projectId' | 'source' | 'name'>): string {
  return JSON.stringify([projectId, source, name]);
}
