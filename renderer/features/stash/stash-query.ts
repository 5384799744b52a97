import { type StashFilter, stashFilter, type StashOrder, stashOrder } from '#core/domain/stash-filter';

/** What the stash page is asked to show. */
export interface StashQuery {
  readonly search: string;
  readonly filter: StashFilter;
  readonly order: StashOrder;
}

/** The query as a page's address keeps it; what cannot be read there does not count. */
export function queryOfParams(params: URLSearchParams): StashQuery {
  const filter = readFilter(params.get('filter'));
  const place = stashFilter.safeParse({ placeId: params.get('place') ?? undefined });
  const order = stashOrder.safeParse(params.get('order'));
  return {
    search: params.get('search') ?? '',
    filter: place.success ? { ...place.data, ...filter } : filter,
    order: order.success ? order.data : 'name',
  };
}

/** The parts of an address that say the query; null where a part is as it is unless said. */
export function paramsOfQuery({
  search,
  filter,
  order,
}: StashQuery): Readonly<Record<string, string | null>> {
  return {
    search: search === '' ? null : search,
    filter: isFiltered(filter) ? JSON.stringify(filter) : null,
    place: null,
    order: order === 'name' ? null : order,
  };
}

export function isFiltered(filter: StashFilter): boolean {
  return Object.values(filter).some((value) => value !== undefined);
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

function readFilter(text: string | null): StashFilter {
  if (text === null) return {};
  try {
    const read = stashFilter.safeParse(JSON.parse(text));
    return read.success ? read.data : {};
  } catch {
    return {};
  }
}
