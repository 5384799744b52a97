import { useState } from 'react';
import type { Backup } from '#core/contract/workshop';
import { call } from '#renderer/bridge/call';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { backupSize, backupTime, BACKUP_WHY } from './backup-words';
import layout from '#renderer/ui/page/layout.module.css';
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

/** The list of backups, newest first, each with a button to restore it. */
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
      <p className={layout['quiet']}>
        Ringbound makes a backup at every start and before anything that changes the whole notebook. It keeps
        the last ten, and one a day for thirty days. Photos are stored once, for all backups.
      </p>
      <ProblemNotice problem={problem} />
      {backups?.length === 0 && <p>No backups yet.</p>}
      <ul className={layout['lines']}>
        {(backups ?? []).map((backup) => (
          <li key={backup.name} className={styles['line']}>
            <span className={styles['words']}>
              <span className={styles['name']}>{backupTime(backup.madeAt, locale)}</span>
              <span className={layout['quiet']}>
                {BACKUP_WHY[backup.why]}, {backupSize(backup.bytes)}
              </span>
            </span>
            <Button
              isSmall
              aria-label={`Restore ${backupTime(backup.madeAt, locale)}`}
              onClick={() => setChosen(backup)}
            >
              Restore
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
      title={`Restore ${backupTime(backup.madeAt, locale)}`}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Cancel</Button>
          <Button look="main" disabled={restoring.isWriting} onClick={() => void restore()}>
            {restoring.isWriting ? 'Restoring…' : 'Restore'}
          </Button>
        </>
      }
    >
      <p>
        Your notebook becomes what it was then. A backup of what is in it now is made first, so you can return
        to this moment the same way.
      </p>
      <ProblemNotice problem={restoring.problem} />
    </Dialog>
  );
}
