import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import styles from './frame.module.css';

const COMMAND = navigator.userAgent.includes('Mac') ? '⌘' : 'Ctrl';

const KEYS: readonly (readonly [string, string])[] = [
  [`${COMMAND} Enter`, 'Do the main action of the page'],
  [`${COMMAND} Z`, 'Undo the last change'],
  [`${COMMAND} Shift Z`, 'Redo it'],
  [`${COMMAND} 1`, 'Bench'],
  [`${COMMAND} 2`, 'Projects'],
  [`${COMMAND} 3`, 'Days'],
  [`${COMMAND} 4`, 'Out'],
  [`${COMMAND} 5`, 'Stash'],
  [`${COMMAND} 6`, 'Shopping'],
  [`${COMMAND} 7`, 'Workshop'],
  [`${COMMAND} N`, 'Begin a piece'],
  [`${COMMAND} Shift N`, 'New fabric'],
  ['Alt ↑ and Alt ↓', 'Move a stage earlier or later'],
  ['Alt ← and Alt →', 'On the board: move a piece a stage back or on'],
  ['← and →, Page ↑ and Page ↓', 'On Days: move a chosen flag by a day or a week'],
  ['Alt 1 to Alt 9', 'In the stash: open a saved search'],
  ['A scanned label', 'Open that piece of fabric, ready to use'],
  ['Esc', 'Close a question; put a field back as it was'],
  ['F1', 'This list'],
];

/** The keys of the notebook. */
export function KeysDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog
      title="Keys"
      onClose={onClose}
      foot={
        <Button look="main" onClick={onClose}>
          Close
        </Button>
      }
    >
      <dl className={styles['keys']}>
        {KEYS.map(([key, does]) => (
          <div key={key}>
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
