import type { ChannelInput, ChannelOutput, StoreChannelName } from '#core/contract/channels';
import type { FabricPieceId, FabricId, ProjectId } from '#core/domain/ids';
import type { CalendarDate } from '#core/units/calendar-date';

/** The store the demo fills: it takes the same calls as from the window, and its clock can be set back. */
export interface DemoStore {
  /** Throws when the store refuses a call, because then the demo's own data is wrong. */
  readonly call: <Name extends StoreChannelName>(
    name: Name,
    input: ChannelInput<Name>,
  ) => ChannelOutput<Name>;
  readonly today: CalendarDate;
  /** Sets the store's clock to that many days before today. */
  readonly setClock: (daysAgo: number) => void;
}

/** Something that happened in the demo workshop. */
export interface Moment {
  readonly daysAgo: number;
  readonly happen: () => void;
}

/** Everything the demo has made so far, by name. */
export interface DemoShelf {
  readonly fabrics: Map<string, FabricId>;
  readonly pieces: Map<string, { readonly id: FabricPieceId; left: number }[]>;
  readonly projects: Map<string, ProjectId>;
}

/** Finds something the demo has already made; throws when it is not made yet. */
export function madeBefore<Value>(map: ReadonlyMap<string, Value>, name: string): Value {
  const value = map.get(name);
  if (value === undefined) throw new Error(`The demo has no ${name} yet`);
  return value;
}
