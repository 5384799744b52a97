import { useEffect, useLayoutEffect, useRef } from 'react';
import { type PieceCode, parsePieceCode } from '#core/stash/piece-code';
import { isTextField } from './text-field';

/** A key as it went down: the character it gave, the place on the keyboard it lies at, and when, in milliseconds. */
interface HeardKey {
  readonly key: string;
  readonly code: string;
  readonly timeStamp: number;
}

/** A scanner types a character every few milliseconds; nobody types nine by hand without once taking longer than this. */
const LONGEST_GAP_MS = 50;

/**
 * The code that these keys are, if they are one and nothing else. A scanner that is set to another keyboard than this one still
 * presses the right keys, so that their places are read where their characters make no code.
 */
function codeOfKeys(keys: readonly HeardKey[]): PieceCode | null {
  const [typed, pressed] = [
    parsePieceCode(keys.map(({ key }) => key).join('')),
    parsePieceCode(keys.map(({ code }) => code.replace(/^(Key|Digit|Numpad)/, '')).join('')),
  ];
  if (typed.ok) return typed.value;
  return pressed.ok ? pressed.value : null;
}

/**
 * Hears a scanner that types a code and Enter anywhere in the window. While a field has the focus, or a dialog asks something,
 * the code is not followed, as what stands there would be left behind: the characters go into the field like any others, for the
 * maker to see and take out, and the Enter after them sends nothing off. The search of the stash is meant for them and hears the
 * Enter itself.
 */
export function useScannedCode(follow: (code: PieceCode) => void): void {
  const latest = useRef(follow);
  useLayoutEffect(() => {
    latest.current = follow;
  });
  useEffect(() => {
    let heard: HeardKey[] = [];
    const hear = (event: KeyboardEvent): void => {
      if (event.key === 'Shift' || event.key === 'CapsLock') return;
      const { key, code, timeStamp } = event;
      const isPlain = !event.ctrlKey && !event.metaKey && !event.altKey && !event.isComposing;
      if (isPlain && key.length === 1) {
        const last = heard.at(-1);
        if (last !== undefined && timeStamp - last.timeStamp > LONGEST_GAP_MS) heard = [];
        heard.push({ key, code, timeStamp });
        return;
      }
      const isInTime = timeStamp - (heard.at(-1)?.timeStamp ?? 0) <= LONGEST_GAP_MS;
      const scanned = isPlain && key === 'Enter' && isInTime ? codeOfKeys(heard) : null;
      heard = [];
      if (scanned === null) return;
      event.preventDefault();
      if (isFieldInUse()) return;
      // Whatever has the focus, such as a button, is not what the Enter was meant for.
      event.stopPropagation();
      latest.current(scanned);
    };
    window.addEventListener('keydown', hear, true);
    return () => window.removeEventListener('keydown', hear, true);
  }, []);
}

function isFieldInUse(): boolean {
  const { activeElement } = document;
  const isField = isTextField(activeElement) || activeElement instanceof HTMLSelectElement;
  return isField || document.querySelector('dialog[open] form') !== null;
}
