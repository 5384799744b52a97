import { useCallback, useState } from 'react';

/**
 * State that outlasts its page: what was entered in a form is still there after a visit to another page, or after a fault. It
 * lasts as long as the window. Call `forget` once it is saved.
 */
export function useDraft<Value>(
  key: string,
  start: Value,
  isValid: (stored: unknown) => stored is Value,
): readonly [Value, (value: Value) => void, () => void] {
  const [value, setValue] = useState<Value>(() => readDraft(key, isValid) ?? start);
  const set = useCallback(
    (next: Value) => {
      setValue(next);
      window.sessionStorage.setItem(storageKey(key), JSON.stringify(next));
    },
    [key],
  );
  const forget = useCallback(() => {
    window.sessionStorage.removeItem(storageKey(key));
  }, [key]);
  return [value, set, forget];
}

function readDraft<Value>(key: string, isValid: (stored: unknown) => stored is Value): Value | undefined {
  const text = window.sessionStorage.getItem(storageKey(key));
  if (text === null) return undefined;
  const stored: unknown = JSON.parse(text);
  return isValid(stored) ? stored : undefined;
}

function storageKey(key: string): string {
  return `draft:${key}`;
}
