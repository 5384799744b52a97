import type { PastChange } from '#core/contract/workshop';
import { useRead, useWrite } from '#renderer/bridge/query';
import { instantWords } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './history-dialog.module.css';

/** Every change of the notebook, newest first, with a button to undo back to it or redo up to it. */
export function HistoryDialog({ onClose }: { readonly onClose: () => void }) {
  const { value: list } = useRead('change:list', {});
  const going = useWrite('change:go-to');
  const goTo = (change: PastChange) => void going.write({ changeId: change.id });
  return (
    <Dialog
      title="History"
      isWide
      onClose={onClose}
      foot={
        <Button look="main" onClick={onClose}>
          Close
        </Button>
      }
    >
      {list !== undefined && list.done.length + list.undone.length === 0 && <p>Nothing to undo yet.</p>}
      {list !== undefined && list.undone.length > 0 && (
        <section aria-label="Undone">
          <h3>Undone</h3>
          <HistoryLines
            changes={list.undone.toReversed()}
            verb="Redo up to here"
            isBusy={going.isWriting}
            onGo={goTo}
          />
        </section>
      )}
      {list !== undefined && list.done.length > 0 && (
        <section aria-label="Done">
          <h3>Done</h3>
          <HistoryLines changes={list.done} verb="Undo back to here" isBusy={going.isWriting} onGo={goTo} />
        </section>
      )}
      <ProblemNotice problem={going.problem} />
    </Dialog>
  );
}

interface HistoryLinesProps {
  readonly changes: readonly PastChange[];
  readonly verb: string;
  readonly isBusy: boolean;
  readonly onGo: (change: PastChange) => void;
}

function HistoryLines({ changes, verb, isBusy, onGo }: HistoryLinesProps) {
  const { locale } = useDisplay();
  return (
    <ol className={layout['lines']}>
      {changes.map((change) => (
        <li key={change.id} className={styles['line']}>
          <span className={styles['when']}>{instantWords(change.madeAt, locale)}</span>
          <span className={styles['says']}>{change.says}</span>
          <Button
            look="quiet"
            isSmall
            disabled={isBusy}
            aria-label={`${verb}: ${change.says}`}
            onClick={() => onGo(change)}
          >
            {verb}
          </Button>
        </li>
      ))}
    </ol>
  );
}
