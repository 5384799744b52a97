import { useEffect, useState } from 'react';
import { Link } from 'react-router';
import { clockMinutes, forgottenWhy, type RunningClock } from '#core/domain/clock';
import { formatMinutes } from '#core/units/minutes';
import { useRead } from '#renderer/bridge/query';
import { today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { StartClockDialog } from './start-clock-dialog';
import { StopClockDialog } from './stop-clock-dialog';
import styles from './clock.module.css';

/** The one clock, on every page: the stage it runs on and for how long, or a button to start it. */
export function Clock() {
  const { value: running } = useRead('clock:state', {});
  const [isStarting, setIsStarting] = useState(false);
  if (running === undefined) return null;
  return (
    <section className={styles['clock']} aria-label="Clock">
      {running === null ? (
        <Button isSmall onClick={() => setIsStarting(true)}>
          Start the clock
        </Button>
      ) : (
        <Running key={running.id} running={running} />
      )}
      {isStarting && <StartClockDialog onClose={() => setIsStarting(false)} />}
    </section>
  );
}

/** The running clock. One that looks forgotten opens its dialog once, as soon as it is shown. */
function Running({ running }: { readonly running: RunningClock }) {
  const now = useNow();
  const forgotten = forgottenWhy(running, now, today(new Date(now)));
  const [dialog, setDialog] = useState<'not-yet' | 'open' | 'closed'>('not-yet');
  if (forgotten !== null && dialog === 'not-yet') setDialog('open');
  return (
    <>
      <p className={styles['time']} role="timer">
        {formatMinutes(clockMinutes(running.startedAt, now))}
      </p>
      <Link to={`/projects/${running.projectId}/stages/${running.stageId}`} className={styles['what']}>
        {running.stageName}
      </Link>
      <span className={styles['project']}>{running.projectName}</span>
      <Button isSmall onClick={() => setDialog('open')}>
        Stop the clock
      </Button>
      {dialog === 'open' && (
        <StopClockDialog running={running} forgotten={forgotten} onClose={() => setDialog('closed')} />
      )}
    </>
  );
}

/** Often enough for a clock that shows minutes. */
const EVERY_MS = 15_000;

function useNow(): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = window.setInterval(() => setNow(Date.now()), EVERY_MS);
    return () => window.clearInterval(timer);
  }, []);
  return now;
}
