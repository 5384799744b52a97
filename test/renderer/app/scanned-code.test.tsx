import { render, screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import type { FabricPieceId } from '#core/domain/ids';
import { codeOfPiece, formatPieceCode } from '#core/stash/piece-code';
import { useScannedCode } from '#renderer/app/scanned-code';

const CODE = codeOfPiece('7f3a0c5b-91d2-4e6f-8a01-23456789abcd' as FabricPieceId);

/** Keys as they go down one after the other, so many milliseconds apart; answers with the last one's event. */
function type(keys: readonly string[], everyMs: number, more: KeyboardEventInit = {}): KeyboardEvent {
  const events = keys.map((key, index) => {
    const init = { key, code: placeOf(key), bubbles: true, cancelable: true, ...more };
    const event = new KeyboardEvent('keydown', init);
    Object.defineProperty(event, 'timeStamp', { value: 1_000 + index * everyMs });
    document.activeElement?.dispatchEvent(event);
    return event;
  });
  return events.at(-1) ?? new KeyboardEvent('keydown');
}

function placeOf(key: string): string {
  if (key.length > 1) return key;
  return /\d/.test(key) ? `Digit${key}` : `Key${key.toUpperCase()}`;
}

const scan = (text: string, everyMs = 5) => type([...Array.from(text), 'Enter'], everyMs);

function Window({ heard }: { readonly heard: string[] }) {
  useScannedCode((code) => heard.push(code));
  return (
    <>
      <button type="button">Delete</button>
      <input aria-label="Note" />
      <select aria-label="Kind" />
    </>
  );
}

function openWindow(): string[] {
  const heard: string[] = [];
  render(<Window heard={heard} />);
  return heard;
}

describe('a scanner in the window', () => {
  it('is followed when nothing has the focus, in upper or lower case and with Shift', () => {
    const heard = openWindow();
    expect(scan(CODE).defaultPrevented).toBe(true);
    scan(CODE.toLowerCase());
    type(
      Array.from(CODE)
        .flatMap((key) => ['Shift', key])
        .concat('Enter'),
      5,
    );
    expect(heard).toEqual([CODE, CODE, CODE]);
  });

  it('is followed on a button, and its Enter does not press the button', () => {
    const heard = openWindow();
    screen.getByRole('button').focus();
    expect(scan(CODE).defaultPrevented).toBe(true);
    expect(heard).toEqual([CODE]);
  });

  it('is read by the positions of the keys if it is set to another keyboard layout', () => {
    const heard = openWindow();
    const keys = Array.from(CODE).map((key) => ({ key: key === 'W' ? 'z' : key, code: placeOf(key) }));
    for (const [index, init] of [...keys, { key: 'Enter', code: 'Enter' }].entries()) {
      const event = new KeyboardEvent('keydown', { ...init, bubbles: true });
      Object.defineProperty(event, 'timeStamp', { value: 1_000 + 5 * index });
      document.body.dispatchEvent(event);
    }
    expect(heard).toEqual([CODE]);
  });

  it('ignores slow typing, incomplete codes, and keys pressed with Ctrl', () => {
    const heard = openWindow();
    expect(scan(CODE, 120).defaultPrevented).toBe(false);
    scan(CODE.slice(0, 8));
    scan(`${CODE}0`);
    scan(`${CODE.slice(0, 8)}${CODE.endsWith('0') ? '1' : '0'}`);
    scan(formatPieceCode(CODE).replaceAll('-', '.'));
    type([...Array.from(CODE), 'Enter'], 5, { ctrlKey: true });
    type([...Array.from(CODE), 'Tab'], 5);
    type(['Enter'], 5);
    expect(heard).toEqual([]);
  });

  it('is not followed while a field has the focus, and submits nothing', () => {
    const heard = openWindow();
    screen.getByRole('textbox').focus();
    expect(scan(CODE).defaultPrevented).toBe(true);
    expect(type(['Enter'], 5).defaultPrevented).toBe(false);
    screen.getByRole('combobox').focus();
    scan(CODE);
    expect(heard).toEqual([]);
  });
});
