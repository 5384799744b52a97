import type { CutTree } from '#core/domain/cutting-plan';

/** What a search reports while it runs. */
export interface SearchNews {
  /** A layout lower than any before. */
  layout(height: number, tree: CutTree): void;
  /** A proven lower bound of the height. It can be weaker than an earlier one. */
  bound(height: number): void;
}
