import { type ReactNode, useEffect, useLayoutEffect } from 'react';
import type { SheetPaper } from '#core/domain/paper';
import styles from './paper.module.css';

interface PaperProps {
  readonly paper: SheetPaper;
  /** A sheet that flows over pages has a margin on each; one that draws its pages itself has none. */
  readonly margin: '14mm' | '0';
  readonly children: ReactNode;
}

/** The title the main process waits for: nothing on the sheet is missing any more. */
const READY_TITLE = 'Sheet ready';

/**
 * Everything that goes on paper, in light colors whatever the theme, drawn once all that it shows is there. Nothing in it may be
 * wider than the page, or the whole sheet would be shrunk to fit.
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
    // Measuring lays the sheet out, which asks for its fonts.
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
