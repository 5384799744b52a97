import { Button } from './button';
import styles from './undo-bar.module.css';

export interface UndoBarProps {
  /** The last change, such as "Deleted Hearth skirt"; null before the first. */
  readonly says: string | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
}

/** One line for the last change, with Undo and Redo. Its room is always kept free, so nothing moves when it appears. */
export function UndoBar({ says, canUndo, canRedo, onUndo, onRedo }: UndoBarProps) {
  return (
    <div className={styles['bar']} role="group" aria-label="Last change">
      <span className={styles['words']} role="status" title={says ?? undefined}>
        {says}
      </span>
      {says !== null && canUndo && (
        <Button look="quiet" isSmall onClick={onUndo} aria-keyshortcuts="Control+Z">
          Undo
        </Button>
      )}
      {says !== null && canRedo && (
        <Button look="quiet" isSmall onClick={onRedo} aria-keyshortcuts="Control+Shift+Z">
          Redo
        </Button>
      )}
    </div>
  );
}
