import { type ReactNode, useEffect, useLayoutEffect } from 'react';
import type { SheetPaper } from '#core/domain/paper';
import styles from './paper.module.css';

interface PaperProps {
  readonly paper: SheetPaper;
  /** A sheet that flows over pages has a margin on each page; a sheet that draws its pages itself has none. */
  readonly margin: '14mm' | '0';
  readonly children: ReactNode;
}

/** The main process waits for this title: it says that everything on the sheet is drawn. */
const READY_TITLE = 'Sheet ready';

/**
 * The frame of every sheet, in light colors whatever the theme. Draw it only once all its data is there. Nothing in it may be wider
 * than the page, or the whole sheet would be printed smaller.
 */
export function Paper({ paper, margin, children }: PaperProps) {
  useLayoutEffect(() => {
    const rule = new CSSStyleSheet();
    rule.replaceSync(
      `@page { size: ${paper === 'letter' ? '8.5in 11in' : '210mm 297mm'}; margin: ${margin}; }`,
    );
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, rule];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== rule);
    };
  }, [paper, margin]);
  useEffect(() => {
    // Measuring makes the browser lay out the sheet, and so request its fonts.
    document.body.getBoundingClientRect();
    void document.fonts.ready.then(() => {
      document.title = READY_TITLE;
    });
  }, []);
  return (
    <main className={styles['paper']} data-paper={paper}>
      {children}
    </main>
  );
}
