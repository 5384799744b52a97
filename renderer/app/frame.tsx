import { type ReactNode, Suspense, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { NavLink, Outlet, useLocation } from 'react-router';
import { PLACES } from '#core/contract/screens';
import { useFindByCode } from '#renderer/features/stash/search/find-by-code';
import { PageDraftContext, useFormDraft } from '#renderer/ui/base/draft';
import { Button } from '#renderer/ui/page/button';
import { PageFrameContext } from '#renderer/ui/page/page';
import { HistoryDialog } from './history-dialog';
import { Clock } from './clock';
import { DemoBand } from './demo-band';
import { ShortcutsDialog } from './shortcuts-dialog';
import { useLastChange } from './last-change';
import { useFieldLeftOnClose } from './leave-field';
import { useScannedCode } from './scanned-code';
import { useWindowKeys } from './window-keys';
import styles from './frame.module.css';

/** The frame around every page: places on the left; the last change and the page's main action at the bottom. */
export function Frame() {
  const [actionPlace, setActionPlace] = useState<HTMLElement | null>(null);
  const [isHistoryShown, setIsHistoryShown] = useState(false);
  const [areShortcutsShown, setAreShortcutsShown] = useState(false);
  const visit = useVisit();
  const frame = useMemo(() => ({ actionPlace, visit }), [actionPlace, visit]);
  const scroller = useKeptScroll();
  const lastChange = useLastChange();
  useFieldLeftOnClose();
  const byCode = useFindByCode();
  useScannedCode((code) => void byCode.find(code));
  useWindowKeys({
    undo: lastChange.undo,
    redo: lastChange.redo,
    showShortcuts: () => setAreShortcutsShown(true),
  });
  return (
    <PageFrameContext value={frame}>
      <div className={styles['frame']}>
        <a href="#page" className={styles['skip']} onClick={skipToPage}>
          Skip to the page
        </a>
        <header className={styles['spine']}>
          <span className={styles['name']}>Ringbound</span>
          <nav aria-label="Notebook">
            <ul className={styles['places']}>
              {PLACES.map(({ path, words }) => (
                <li key={path}>
                  <NavLink to={path} end={path === '/'} className={styles['place'] ?? ''}>
                    {words}
                  </NavLink>
                </li>
              ))}
            </ul>
          </nav>
          <div className={styles['foot']}>
            <Clock />
            <Button look="quiet" isSmall onClick={() => setIsHistoryShown(true)}>
              History
            </Button>
            <Button look="quiet" isSmall onClick={() => setAreShortcutsShown(true)}>
              Keyboard shortcuts
            </Button>
          </div>
        </header>
        <div className={styles['leaf']}>
          <DemoBand />
          <main id="page" ref={scroller} className={styles['scroller']} data-page-scroller>
            <Suspense fallback={null}>
              <PageDraft>
                <Outlet />
              </PageDraft>
            </Suspense>
          </main>
          <footer className={styles['hem']} aria-label="Last change and main action">
            {lastChange.bar}
            <div ref={setActionPlace} className={styles['action']} data-main-action />
          </footer>
        </div>
      </div>
      {byCode.dialog}
      {isHistoryShown && <HistoryDialog onClose={() => setIsHistoryShown(false)} />}
      {areShortcutsShown && <ShortcutsDialog onClose={() => setAreShortcutsShown(false)} />}
    </PageFrameContext>
  );
}

/** Keeps text in fields that are saved when they are left, for each address. */
function PageDraft({ children }: { readonly children: ReactNode }) {
  const draft = useFormDraft(`page ${useLocation().pathname}`);
  return <PageDraftContext value={draft}>{children}</PageDraftContext>;
}

/** Changes with each visit to a page. Null on the first page, which must not take the focus. A changed search is no visit. */
function useVisit(): string | null {
  const { pathname } = useLocation();
  const [visit, setVisit] = useState({ pathname, count: 0 });
  if (visit.pathname !== pathname) setVisit({ pathname, count: visit.count + 1 });
  return visit.count === 0 ? null : String(visit.count);
}

/** A page opens at its top the first time, and later where it was left. */
function useKeptScroll() {
  const { pathname } = useLocation();
  const scroller = useRef<HTMLElement>(null);
  const scrolled = useRef(new Map<string, number>());
  useLayoutEffect(() => {
    const element = scroller.current;
    const positions = scrolled.current;
    if (element === null) return;
    element.scrollTop = positions.get(pathname) ?? 0;
    const remember = () => positions.set(pathname, element.scrollTop);
    element.addEventListener('scroll', remember, { passive: true });
    return () => element.removeEventListener('scroll', remember);
  }, [pathname]);
  return scroller;
}

/** The hash of the address belongs to the router, so the link moves the focus itself. */
function skipToPage(event: React.MouseEvent): void {
  event.preventDefault();
  document.querySelector<HTMLElement>('main h1')?.focus();
}
