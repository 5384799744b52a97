import { type ReactNode, useEffect, useId, useRef } from 'react';
import { classes } from '../base/classes';
import styles from './dialog.module.css';

interface DialogProps {
  readonly title: string;
  /** Called for Escape and for a press outside. The caller then stops drawing the dialog. */
  readonly onClose: () => void;
  readonly isWide?: boolean;
  /** The buttons, the main one last. */
  readonly foot?: ReactNode;
  readonly children: ReactNode;
}

/**
 * A dialog in front of the page, open while it is drawn. The focus moves into it, and back when it closes. A press outside
 * closes it only while nothing has been typed in it, so that no typed text is lost by accident.
 */
export function Dialog({ title, onClose, isWide = false, foot, children }: DialogProps) {
  const titleId = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const hasTyped = useRef(false);
  useEffect(() => {
    const element = dialog.current;
    const before = document.activeElement;
    element?.showModal();
    return () => {
      element?.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      className={classes(styles['dialog'], isWide && styles['wide'])}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onInput={() => {
        hasTyped.current = true;
      }}
      onClick={(event) => {
        if (event.target === event.currentTarget && !hasTyped.current) onClose();
      }}
    >
      <div className={styles['inside']}>
        <h2 id={titleId}>{title}</h2>
        {children}
        {foot !== undefined && <div className={styles['foot']}>{foot}</div>}
      </div>
    </dialog>
  );
}
