import { type ReactNode, useEffect, useId, useRef } from 'react';
import { classes } from '../base/classes';
import styles from './dialog.module.css';

interface DialogProps {
  readonly title: string;
  /** Called for Escape and for a press outside; the caller stops drawing the dialog. */
  readonly onClose: () => void;
  readonly isWide?: boolean;
  /** The buttons; the one that does it stands last. */
  readonly foot?: ReactNode;
  readonly children: ReactNode;
}

/**
 * A question in front of the page, drawn while it is asked. The focus goes into it and back to where it was. A press outside
 * leaves it open once something in it has been typed, so that nothing typed is lost by a slip.
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
