import { useEffect, useLayoutEffect, useRef } from 'react';
import { type PieceCode, parsePieceCode } from '#core/stash/piece-code';
import { isTextField } from './text-field';

/** A pressed key: its character, its position on the keyboard, and the time in milliseconds. */
interface PressedKey {
  readonly key: string;
  readonly code: string;
  readonly timeStamp: number;
}

/** A scanner types a character every few milliseconds. Nobody types nine by hand without one longer gap. */
const LONGEST_GAP_MS = 50;

/**
 * The piece code that these keys spell, or null. A scanner set to another keyboard layout gives wrong characters from the right
 * keys, so the positions of the keys are tried too.
 */
function codeOfKeys(keys: readonly PressedKey[]): PieceCode | null {
  const [typed, pressed] = [
    parsePieceCode(keys.map(({ key }) => key).join('')),
    parsePieceCode(keys.map(({ code }) => code.replace(/^(Key|Digit|Numpad)/, '')).join('')),
  ];
  if (typed.ok) return typed.value;
  return pressed.ok ? pressed.value : null;
}

/**
 * Calls `onCode` when a scanner types a code and Enter anywhere in the window. While a field has the focus or a dialog with a
 * form is open, the code is not followed, since leaving would lose what is entered there: the characters go into the field,
 * and the Enter is dropped so that it submits nothing. The stash search handles Enter itself.
 */
export function useScannedCode(onCode: (code: PieceCode) => void): void {
  const latest = useRef(onCode);
  useLayoutEffect(() => {
    latest.current = onCode;
  });
  useEffect(() => {
    let keys: PressedKey[] = [];
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === 'Shift' || event.key === 'CapsLock') return;
      const { key, code, timeStamp } = event;
      const isPlain = !event.ctrlKey && !event.metaKey && !event.altKey && !event.isComposing;
      if (isPlain && key.length === 1) {
        const last = keys.at(-1);
        if (last !== undefined && timeStamp - last.timeStamp > LONGEST_GAP_MS) keys = [];
        keys.push({ key, code, timeStamp });
        return;
      }
      const isInTime = timeStamp - (keys.at(-1)?.timeStamp ?? 0) <= LONGEST_GAP_MS;
      const scanned = isPlain && key === 'Enter' && isInTime ? codeOfKeys(keys) : null;
      keys = [];
      if (scanned === null) return;
      event.preventDefault();
      if (isFieldInUse()) return;
      // The Enter belongs to the code, not to a button that has the focus.
      event.stopPropagation();
      latest.current(scanned);
    };
    window.addEventListener('keydown', onKey, true);
    return () => window.removeEventListener('keydown', onKey, true);
  }, []);
}

function isFieldInUse(): boolean {
  const { activeElement } = document;
  const isField = isTextField(activeElement) || activeElement instanceof HTMLSelectElement;
  return isField || document.querySelector('dialog[open] form') !== null;
}
