import { z } from 'zod';

/**
 * A call across the bridge. `input` is checked on the main side before anything happens; `output` only carries a type. A write may change
 * the workshop, so the page reads again what it read before.
 */
export interface Channel<Input = unknown, Output = unknown> {
  readonly access: 'read' | 'write';
  readonly input: z.ZodType<Input>;
  readonly output?: Output;
}

/** Declares a call that changes nothing: `reads<Output>()(inputSchema)`. */
export function reads<Output>() {
  return <Input>(input: z.ZodType<Input>): Channel<Input, Output> => ({ access: 'read', input });
}

/** Declares a call that may change the workshop: `writes<Output>()(inputSchema)`. */
export function writes<Output>() {
  return <Input>(input: z.ZodType<Input>): Channel<Input, Output> => ({ access: 'write', input });
}

export type InputOf<C> = C extends Channel<infer Input> ? Input : never;
export type OutputOf<C> = C extends { readonly output?: infer Output } ? Exclude<Output, undefined> : never;

/** Part of a long list: `limit` lines from `offset` on, counted from 0; without `limit` all the rest. */
export const pageRequest = { offset: z.int().min(0).optional(), limit: z.int().min(1).max(1_000).optional() };

/** The lines asked for, and the number of lines in the whole list. */
export interface Page<Item> {
  readonly items: readonly Item[];
  readonly total: number;
}
