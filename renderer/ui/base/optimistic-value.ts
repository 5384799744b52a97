import { useState } from 'react';

/**
 * What was just told shows at once and stays until what is read says the same, whatever else is being read again meanwhile.
 * `forget` goes back to what is read, should the store not keep it.
 */
export function useOptimisticValue<Value>(read: Value): readonly [Value, (value: Value) => void, () => void] {
  const [told, setTold] = useState<{ readonly value: Value } | null>(null);
  if (told !== null && JSON.stringify(told.value) === JSON.stringify(read)) setTold(null);
  return [told === null ? read : told.value, (value) => setTold({ value }), () => setTold(null)];
}
