import type { StoreHolder } from '../base/handlers';
import type { ReadTable } from './stash-table';

/** What an import needs besides the store. */
export interface ImportContext extends StoreHolder {
  /** The files the maker chose, by the token under which the page knows them. */
  readonly tables: Map<string, string>;
  /** The last table read, with its source: a table that was previewed is not read again when it is imported. */
  lastTable: { readonly from: string; readonly read: ReadTable } | null;
}
