import {
  keepPreviousData,
  QueryClient,
  useMutation,
  useQueries,
  useQuery,
  useQueryClient,
} from '@tanstack/react-query';
import type { ChannelAnswer, ChannelInput, ChannelName, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import { call } from './call';

/** A value read from the store. `problem` may come with an older `value`. */
export interface Reading<Value> {
  readonly value: Value | undefined;
  readonly problem: Problem | null;
  readonly isLoading: boolean;
  readonly again: () => void;
}

/** Window and store are one program on one machine: only a write makes a value stale, and nothing is retried. */
export function makeQueryClient(): QueryClient {
  return new QueryClient({
    defaultOptions: {
      queries: { staleTime: Infinity, retry: false, networkMode: 'always', refetchOnWindowFocus: false },
      mutations: { retry: false, networkMode: 'always' },
    },
  });
}

interface ReadOptions {
  /** Returns the last answer while the next one loads, for a search as you type. */
  readonly keepsPrevious?: boolean;
  readonly isOn?: boolean;
}

/** Reads from the store now and after every write. */
export function useRead<Name extends ChannelName>(
  name: Name,
  input: ChannelInput<Name>,
  { keepsPrevious = false, isOn = true }: ReadOptions = {},
): Reading<ChannelOutput<Name>> {
  const query = useQuery({
    queryKey: [name, input],
    queryFn: () => call(name, input),
    enabled: isOn,
    ...(keepsPrevious ? { placeholderData: keepPreviousData } : {}),
  });
  const answer = query.data;
  return {
    value: answer?.ok === true ? answer.value : undefined,
    problem: answer?.ok === false ? answer.error : null,
    isLoading: query.isPending,
    again: () => void query.refetch(),
  };
}

/** Reads one channel for several inputs, in their order; undefined until all are read. One that cannot be read is null. */
export function useReadEach<Name extends ChannelName>(
  name: Name,
  inputs: readonly ChannelInput<Name>[],
): readonly (ChannelOutput<Name> | null)[] | undefined {
  const queries = useQueries({
    queries: inputs.map((input) => ({ queryKey: [name, input], queryFn: () => call(name, input) })),
  });
  if (queries.some((query) => query.isPending)) return undefined;
  return queries.map(({ data }) => (data?.ok === true ? data.value : null));
}

export interface Writing<Name extends ChannelName> {
  /** Returns the store's answer, after everything on the page has been read again. */
  readonly write: (input: ChannelInput<Name>) => Promise<ChannelAnswer<Name>>;
  readonly isWriting: boolean;
  /** Why the last write failed; null after a success. */
  readonly problem: Problem | null;
}

/** These open another notebook, so nothing read from the one before may still be shown. */
const OPENS_ANOTHER: readonly ChannelName[] = ['shell:enter-demo', 'shell:leave-demo', 'backup:restore'];

/** Changes the workshop, and then reads everything on the page again. */
export function useWrite<Name extends ChannelName>(name: Name): Writing<Name> {
  const client = useQueryClient();
  const mutation = useMutation({
    mutationKey: ['write', name],
    mutationFn: (input: ChannelInput<Name>) => call(name, input),
    onSuccess: async (answer) => {
      if (!answer.ok) return;
      if (OPENS_ANOTHER.includes(name)) client.removeQueries({ type: 'inactive' });
      await client.invalidateQueries();
    },
  });
  return {
    write: mutation.mutateAsync,
    isWriting: mutation.isPending,
    problem: mutation.data?.ok === false ? mutation.data.error : null,
  };
}
