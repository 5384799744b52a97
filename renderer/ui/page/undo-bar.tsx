import { Button } from './button';
import styles from './undo-bar.module.css';

export interface UndoBarProps {
  /** What was just done, such as "Deleted Hearth skirt"; null when there is nothing to say. */
  readonly says: string | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
}

/** One quiet line for the last change, with the way back beside it. It always has its place, so nothing moves when it speaks. */
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
