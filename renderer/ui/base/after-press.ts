/** Whether a finger or mouse button is down at this moment, and what waits for it to come up. */
const press: { isDown: boolean; waiting: (() => void)[] } = { isDown: false, waiting: [] };

window.addEventListener(
  'pointerdown',
  () => {
    press.isDown = true;
  },
  true,
);
for (const end of ['pointerup', 'pointercancel'] as const) {
  window.addEventListener(end, () => window.setTimeout(releasePress), true);
}

/**
 * Does it now, or once the press that is under way is over: a line that appears while a button is being pressed would move the
 * button away from under the finger, and the press would be lost.
 */
export function afterPress(act: () => void): void {
  if (press.isDown) press.waiting.push(act);
  else act();
}

function releasePress(): void {
  press.isDown = false;
  const waiting = press.waiting;
  press.waiting = [];
  for (const act of waiting) act();
}
