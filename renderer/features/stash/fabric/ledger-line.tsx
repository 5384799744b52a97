import { Link } from 'react-router';
import type { Booking } from '#core/contract/stash';
import { useWrite } from '#renderer/bridge/query';
import { loneCostWords } from '#renderer/text/cost-words';
import { partialDateWords, today } from '#renderer/text/dates';
import { Typeset } from '#renderer/ui/answers/typeset';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { Button } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { bookingWords } from './booking-words';
import styles from './fabric.module.css';

interface LedgerLineProps {
  readonly booking: Booking;
  /** The whole ledger of the fabric: an undo is described by the booking it reverses. */
  readonly ledger: readonly Booking[];
}

/** One booking in words: date, what was done, for which project and its cost; with a button to undo it. */
export function LedgerLine({ booking, ledger }: LedgerLineProps) {
  const display = useDisplay();
  const { length, locale } = display;
  const undoing = useWrite('ledger:undo');
  const { before, after, isUndo } = bookingWords(booking, ledger, length);
  return (
    <li className={styles['booking']}>
      <div className={classes(styles['bookingLine'], booking.isUndone && styles['undone'])}>
        <span className={layout['quiet']}>{partialDateWords(booking.on, locale, today())}</span>
        <div className={styles['bookingWords']}>
          <p>
            <Typeset text={before} />
            <ProjectOfBooking booking={booking} />
            <Typeset text={after === '' ? '' : `; ${after}`} />
          </p>
          {booking.note !== '' && <p className={styles['note']}>{booking.note}</p>}
        </div>
        <span className={styles['cost']}>{loneCostWords(booking.cost, display)}</span>
        <span className={styles['undo']}>
          {!booking.isUndone && !isUndo && (
            <Button
              look="quiet"
              isSmall
              aria-label={`Undo: ${before} ${booking.projectName ?? ''}`.trim()}
              disabled={undoing.isWriting}
              onClick={() => void undoing.write({ bookingId: booking.id, on: today() })}
            >
              Undo
            </Button>
          )}
          {booking.isUndone && <span className={layout['quiet']}>undone</span>}
        </span>
      </div>
      <ProblemNotice problem={undoing.problem} />
    </li>
  );
}

function ProjectOfBooking({ booking }: { readonly booking: Booking }) {
  const { projectId, projectName, stageId, stageName } = booking;
  if (projectId === null || projectName === null) return null;
  return (
    <>
      {' '}
      <Link to={`/projects/${projectId}`}>{projectName}</Link>
      {stageName !== null && ', '}
      {stageName !== null &&
        (stageId === null ? (
          stageName
        ) : (
          <Link to={`/projects/${projectId}/stages/${stageId}`}>{stageName}</Link>
        ))}
    </>
  );
}
