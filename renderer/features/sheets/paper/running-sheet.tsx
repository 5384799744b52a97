import type { ReactNode } from 'react';
import type { SheetPaper } from '#core/domain/paper';
import { longDateWords, today } from '#renderer/text/dates';
import { useDisplay } from '#renderer/ui/base/display';
import { Paper } from './paper';
import styles from './sheet.module.css';

interface RunningSheetProps {
  readonly paper: SheetPaper;
  /** Printed at the top of every page, beside the date. */
  readonly name: string;
  readonly children: ReactNode;
}

/** A sheet that flows over as many pages as it needs, each with its name and the date at the top. */
export function RunningSheet({ paper, name, children }: RunningSheetProps) {
  const { locale } = useDisplay();
  return (
    <Paper paper={paper} margin="14mm">
      <div className={styles['sheet']}>
        <div className={styles['running']}>
          <div className={styles['runningRow']}>
            <div className={styles['runningCell']}>
              <div className={styles['runningLine']}>
                <span>{name}</span>
                <span>As of {longDateWords(today(), locale)}</span>
              </div>
            </div>
          </div>
        </div>
        <div className={styles['content']}>
          <div className={styles['contentRow']}>
            <div className={styles['contentCell']}>{children}</div>
          </div>
        </div>
      </div>
    </Paper>
  );
}
