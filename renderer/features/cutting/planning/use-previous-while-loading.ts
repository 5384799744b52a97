import { useEffect, useState } from 'react';

/** Returns the previous value while a new one loads, so that the view stays mounted and keeps the focus. */
export function usePreviousWhileLoading<Value>(value: Value | undefined): Value | undefined {
  const [previous] = useState(() => new Map<'value', Value>());
  useEffect(() => {
    if (value !== undefined) previous.set('value', value);
  }, [previous, value]);
  return value ?? previous.get('value');
}
