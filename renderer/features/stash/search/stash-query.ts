import {
  filterOfText,
  type StashFilter,
  stashFilter,
  stashGrouping,
  stashOrder,
  type StashSearch,
  stashSearch,
} from '#core/domain/stash-filter';

/** The search as a page's address keeps it; what cannot be read there does not count. */
export function queryOfParams(params: URLSearchParams): StashSearch {
  const filter = filterOfText(params.get('filter'));
  const place = stashFilter.safeParse({ placeId: params.get('place') ?? undefined });
  const order = stashOrder.safeParse(params.get('order'));
  const grouping = stashGrouping.safeParse(params.get('by'));
  return {
    search: params.get('search') ?? '',
    filter: place.success ? { ...place.data, ...filter } : filter,
    order: order.success ? order.data : 'name',
    grouping: grouping.success ? grouping.data : null,
    view: params.get('view') === 'shelf' ? 'shelf' : 'list',
  };
}

/** The parts of an address that say the search; null where a part is as it is unless said. */
export function paramsOfQuery({
  search,
  filter,
  order,
  grouping,
  view,
}: StashSearch): Readonly<Record<string, string | null>> {
  return {
    search: search === '' ? null : search,
    filter: isFiltered(filter) ? JSON.stringify(filter) : null,
    place: null,
    order: order === 'name' ? null : order,
    by: grouping,
    view: view === 'list' ? null : view,
  };
}

export function isFiltered(filter: StashFilter): boolean {
  return Object.values(filter).some((value) => value !== undefined);
}

/** Whether both show the same, however they were put together. */
export function isSameQuery(first: StashSearch, second: StashSearch): boolean {
  const said = (query: StashSearch) => JSON.stringify(stashSearch.parse(query));
  return said(first) === said(second);
}

/** The filter with one part changed; undefined takes the part out. */
export function withFilter<Part extends keyof StashFilter>(
  filter: StashFilter,
  part: Part,
  value: StashFilter[Part] | undefined,
): StashFilter {
  const { [part]: _before, ...others } = filter;
  return value === undefined ? others : { ...others, [part]: value };
}
