import type { ChannelInput, ChannelOutput, StoreChannelName } from '#core/contract/channels';
import type { FabricPieceId, FabricId, ProjectId } from '#core/domain/ids';
import type { CalendarDate } from '#core/units/calendar-date';

/** The store as the demo fills it: the same calls as the window makes, and a clock that can be set back. */
export interface DemoStore {
  /** Throws when the store refuses: the demo's own story must hold. */
  readonly call: <Name extends StoreChannelName>(
    name: Name,
    input: ChannelInput<Name>,
  ) => ChannelOutput<Name>;
  readonly today: CalendarDate;
  /** Sets the store's clock to that many days before today. */
  readonly setClock: (daysAgo: number) => void;
}

/** Something that happened in the demo workshop, so many days ago. */
export interface Moment {
  readonly daysAgo: number;
  readonly happen: () => void;
}

/** What the demo has made so far and can be found by its name. */
export interface DemoShelf {
  readonly fabrics: Map<string, FabricId>;
  readonly pieces: Map<string, { readonly id: FabricPieceId; left: number }[]>;
  readonly projects: Map<string, ProjectId>;
}

/** What the story has already made; throws when it speaks of something before that. */
export function found<Value>(map: ReadonlyMap<string, Value>, name: string): Value {
  const value = map.get(name);
  if (value === undefined) throw new Error(`The demo has no ${name} yet`);
  return value;
}
