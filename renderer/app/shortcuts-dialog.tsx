import { MENU } from '#core/contract/menu';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import styles from './frame.module.css';

const COMMAND = navigator.userAgent.includes('Mac') ? '⌘' : 'Ctrl';

/** Keys that are not in the menu, and what they do. */
const MORE: readonly (readonly [string, string])[] = [
  ['Alt ↑ and Alt ↓', 'Move a stage earlier or later'],
  ['← and →', 'On the line-up: slide the needle to the stage before or after'],
  ['← and →, Page ↑ and Page ↓', 'On Days: move a chosen flag by a day or a week'],
  ['Alt 1 to Alt 9', 'In the stash: open a saved search'],
  ['A scanned label', 'Open that piece of fabric, ready to use'],
  ['Esc', 'Close a dialog; put a field back as it was'],
];

const SHORTCUTS: readonly (readonly [string, string])[] = [
  [`${COMMAND} Enter`, 'Do the main action of the page'],
  ...Object.values(MENU)
    .flat()
    .map(({ key, label }) => [key.replace('CmdOrCtrl', COMMAND).replaceAll('+', ' '), label] as const),
  ...MORE,
];

/** Every keyboard shortcut: those of the menu, then those of single pages. */
export function ShortcutsDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog
      title="Keyboard shortcuts"
      onClose={onClose}
      foot={
        <Button look="main" onClick={onClose}>
          Close
        </Button>
      }
    >
      <dl className={styles['keys']}>
        {SHORTCUTS.map(([key, does]) => (
          <div key={key + does}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </Dialog>
  );
}
