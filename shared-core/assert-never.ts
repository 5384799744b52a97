/** Ends a switch over a union: a case without a branch becomes a compile error. */
export function assertNever(value: never): never {
  throw new Error(`Unhandled case: ${JSON.stringify(value)}`);
}
