/**
 * One page of the notebook. `path` is its address, with the ids it needs as `:projectId`; `page` is its file below
 * `renderer/features`, whose component has the file's name (`stash/places/places-page` exports `PlacesPage`) and is handed the
 * ids; `words` puts it into the list of places beside every page and into the menu, in this order, with a key by its number.
 */
export interface Screen {
  readonly path: string;
  readonly page: string;
  readonly words?: string;
}

/** Every page. Routes, the list of places, the menu and its keys are drawn from this list. */
export const SCREENS: readonly Screen[] = [
  { path: '', page: 'bench/bench-page', words: 'Bench' },
  { path: 'projects', page: 'projects/projects-page', words: 'Projects' },
  { path: 'projects/new', page: 'projects/new-project-page' },
  { path: 'projects/:projectId', page: 'projects/spread-page' },
  { path: 'projects/:projectId/edit', page: 'projects/edit-project-page' },
  { path: 'projects/:projectId/cutting', page: 'cutting/cutting-page' },
  { path: 'projects/:projectId/stages/:stageId', page: 'stage/stage-page' },
  { path: 'projects/:projectId/stages/:stageId/pattern', page: 'pattern/pattern-page' },
  { path: 'line-up', page: 'line-up/line-up-page' },
  { path: 'days', page: 'days/days-page', words: 'Days' },
  { path: 'sent-out', page: 'at-the-quilter/sent-out-page', words: 'At the quilter' },
  { path: 'sent-out/:contactId', page: 'at-the-quilter/contact-page' },
  { path: 'stash', page: 'stash/stash-page', words: 'Stash' },
  { path: 'stash/import', page: 'stash/table/import-page' },
  { path: 'stash/export', page: 'stash/table/export-page' },
  { path: 'stash/places', page: 'stash/places/places-page' },
  { path: 'stash/kinds', page: 'stash/kinds/kinds-page' },
  { path: 'stash/numbers', page: 'stash/numbers/stash-numbers-page' },
  { path: 'stash/:fabricId', page: 'stash/fabric/fabric-page' },
  { path: 'shopping', page: 'stash/shopping/shopping-page', words: 'Shopping' },
  { path: 'workshop', page: 'workshop/workshop-page', words: 'Workshop' },
];

/** A screen that is always one press away. */
export interface Place {
  readonly path: string;
  readonly words: string;
}

/** The screens beside every page, in order. */
export const PLACES: readonly Place[] = SCREENS.flatMap(({ path, words }) =>
  words === undefined ? [] : [{ path: `/${path}`, words }],
);
