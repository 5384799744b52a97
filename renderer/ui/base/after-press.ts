/** Whether a finger or mouse button is down, and what waits for its release. */
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
 * Runs `act` now or, during a press, after it ends: a line that appears while a button is pressed would move the button away
 * and lose the press.
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
