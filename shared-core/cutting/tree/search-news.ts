import type { CutTree } from './cut-plan';

/** What a search reports as it goes on. */
export interface SearchNews {
  /** A layout lower than any before. */
  layout(height: number, tree: CutTree): void;
  /** A proven lower bound of the height; it can be weaker than one before. */
  bound(height: number): void;
}
