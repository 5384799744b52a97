import { useState } from 'react';

/**
 * Shows a new value at once, until the value read from the store is the same. Returns the value, a setter for the new value,
 * and a function that goes back to the stored value if saving fails.
 */
export function useOptimisticValue<Value>(
  stored: Value,
): readonly [Value, (value: Value) => void, () => void] {
  const [expected, setExpected] = useState<{ readonly value: Value } | null>(null);
  if (expected !== null && JSON.stringify(expected.value) === JSON.stringify(stored)) setExpected(null);
  return [
    expected === null ? stored : expected.value,
    (value) => setExpected({ value }),
    () => setExpected(null),
  ];
}
