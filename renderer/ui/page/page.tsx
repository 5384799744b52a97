import { createContext, type ReactNode, useContext, useEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import { Link } from 'react-router';
import styles from './page.module.css';

/** What the frame gives to every page. */
export interface PageFrameContextValue {
  /** Where the main action of a page is drawn, at the bottom of the window. */
  readonly actionPlace: HTMLElement | null;
  /** Changes with every visit to a page; the title then takes the focus. Null on the first page. */
  readonly visit: string | null;
}

export const PageFrameContext = createContext<PageFrameContextValue>({ actionPlace: null, visit: null });

interface PageProps {
  readonly title: string;
  /** A line under the title. */
  readonly under?: ReactNode;
  readonly back?: { readonly to: string; readonly words: string };
  /** The one main action. */
  readonly action?: ReactNode;
  /** Other actions for the whole page, beside the title. */
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/** A page of the notebook: its title, its content, and one main action that is in the same place on every page. */
export function Page({ title, under, back, action, aside, children }: PageProps) {
  const { actionPlace, visit } = useContext(PageFrameContext);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${title} · Ringbound`;
  }, [title]);
  useEffect(() => {
    if (visit !== null) heading.current?.focus({ preventScroll: true });
  }, [visit]);
  return (
    <div className={styles['page']}>
      <header className={styles['head']}>
        <div className={styles['titles']}>
          {back !== undefined && (
            <Link to={back.to} className={styles['back']}>
              {back.words}
            </Link>
          )}
          <h1 ref={heading} tabIndex={-1} className={styles['title']}>
            {title}
          </h1>
          {under !== undefined && <div className={styles['under']}>{under}</div>}
        </div>
        {aside !== undefined && <div className={styles['aside']}>{aside}</div>}
      </header>
      {children}
      {actionPlace !== null && action !== undefined && createPortal(action, actionPlace)}
    </div>
  );
}
