import {
  filterOfText,
  type StashFilter,
  stashFilterSchema,
  stashGroupingSchema,
  stashOrderSchema,
  type StashSearch,
  stashSearchSchema,
} from '#core/domain/stash-filter';

/** The search in a page's address; parts that cannot be read are ignored. */
export function queryOfParams(params: URLSearchParams): StashSearch {
  const filter = filterOfText(params.get('filter'));
  const place = stashFilterSchema.safeParse({ placeId: params.get('place') ?? undefined });
  const order = stashOrderSchema.safeParse(params.get('order'));
  const grouping = stashGroupingSchema.safeParse(params.get('by'));
  return {
    search: params.get('search') ?? '',
    filter: place.success ? { ...place.data, ...filter } : filter,
    order: order.success ? order.data : 'name',
    grouping: grouping.success ? grouping.data : null,
    view: params.get('view') === 'shelf' ? 'shelf' : 'list',
  };
}

/** The search as parameters of an address; null for a part that has its default. */
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

/** Whether both searches show the same, whatever the order of their parts. */
export function isSameQuery(first: StashSearch, second: StashSearch): boolean {
  const textOf = (query: StashSearch) => JSON.stringify(stashSearchSchema.parse(query));
  return textOf(first) === textOf(second);
}

/** The filter with one part changed; undefined removes the part. */
export function withFilter<Part extends keyof StashFilter>(
  filter: StashFilter,
  part: Part,
  value: StashFilter[Part] | undefined,
): StashFilter {
  const { [part]: _before, ...others } = filter;
  return value === undefined ? others : { ...others, [part]: value };
}
