import { useEffect, useState } from 'react';

/** A value, and while it is being read anew the one before: so that what shows it stays, and with it the focus. */
export function useLastKnown<Value>(value: Value | undefined): Value | undefined {
  const [known] = useState(() => new Map<'last', Value>());
  useEffect(() => {
    if (value !== undefined) known.set('last', value);
  }, [known, value]);
  return value ?? known.get('last');
}
