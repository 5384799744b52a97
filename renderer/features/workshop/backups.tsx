import { useState } from 'react';
import type { Backup } from '#core/contract/workshop';
import { call } from '#renderer/bridge/call';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { backupSize, backupTime, BACKUP_WHY } from './backup-words';
import styles from './workshop.module.css';

/** The main action of the Workshop page. */
export function MakeBackupButton() {
  const making = useWrite('backup:make');
  return (
    <>
      <ProblemNotice problem={making.problem} />
      <Button look="main" disabled={making.isWriting} onClick={() => void making.write({})}>
        {making.isWriting ? 'Backing up…' : 'Back up now'}
      </Button>
    </>
  );
}

/** The backups there are, newest first, and the way back to one of them. */
export function Backups() {
  const { value: backups, problem } = useRead('backup:list', {});
  const [chosen, setChosen] = useState<Backup | null>(null);
  const { locale } = useDisplay();
  return (
    <section className={styles['part']} aria-labelledby="backups">
      <div className={styles['head']}>
        <h2 id="backups">Backups</h2>
        <Button look="quiet" isSmall onClick={() => void call('shell:show-folder', { which: 'backups' })}>
          Show the folder
        </Button>
      </div>
      <p className={styles['quiet']}>
        One is made at every start and before anything that touches the whole notebook: the last ten are kept,
        then one a day for thirty days. Photos stay where they are and belong to all of them.
      </p>
      <ProblemNotice problem={problem} />
      {backups?.length === 0 && <p>There is none yet.</p>}
      <ul className={styles['lines']}>
        {(backups ?? []).map((backup) => (
          <li key={backup.name} className={styles['line']}>
            <span className={styles['words']}>
              <span className={styles['name']}>{backupTime(backup.madeAt, locale)}</span>
              <span className={styles['quiet']}>
                {BACKUP_WHY[backup.why]}, {backupSize(backup.bytes)}
              </span>
            </span>
            <Button
              isSmall
              aria-label={`Go back to ${backupTime(backup.madeAt, locale)}`}
              onClick={() => setChosen(backup)}
            >
              Go back to this
            </Button>
          </li>
        ))}
      </ul>
      {chosen !== null && <RestoreDialog backup={chosen} onClose={() => setChosen(null)} />}
    </section>
  );
}

function RestoreDialog({ backup, onClose }: { readonly backup: Backup; readonly onClose: () => void }) {
  const { locale } = useDisplay();
  const restoring = useWrite('backup:restore');
  const restore = async () => {
    const answer = await restoring.write({ name: backup.name });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={`Go back to ${backupTime(backup.madeAt, locale)}`}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Stay with what is here</Button>
          <Button look="main" disabled={restoring.isWriting} onClick={() => void restore()}>
            {restoring.isWriting ? 'Going back…' : 'Go back to it'}
          </Button>
        </>
      }
    >
      <p>
        The notebook becomes what it was then. What is in it now is backed up first, so that you can come back
        to this moment in the same way.
      </p>
      <ProblemNotice problem={restoring.problem} />
    </Dialog>
  );
}
