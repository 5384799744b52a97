/** Closes a switch over a union: a new case that nobody handles becomes a compile error. */
export function assertNever(value: never): never {
  throw new Error(`Unhandled case: ${JSON.stringify(value)}`);
}
