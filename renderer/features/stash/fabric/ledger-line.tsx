import { Link } from 'react-router';
import type { Problem } from '#core/contract/problem';
import type { Booking } from '#core/contract/stash';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useWrite } from '#renderer/bridge/query';
import shared from '#renderer/features/stash/stash.module.css';
import { dateWords, today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { Notice } from '#renderer/ui/page/notice';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { bookingWords } from './booking-words';
import styles from './fabric.module.css';

interface LedgerLineProps {
  readonly booking: Booking;
  /** All of the fabric's, as what was taken back is told by what it had been. */
  readonly ledger: readonly Booking[];
}

/** One booking in words: when, what, for whom, what it cost; and the way to take it back. */
export function LedgerLine({ booking, ledger }: LedgerLineProps) {
  const { length, currency, locale } = useDisplay();
  const takingBack = useWrite('ledger:take-back');
  const { before, after, isTakingBack } = bookingWords(booking, ledger, length);
  const canBeTakenBack = !booking.isTakenBack && !isTakingBack;
  return (
    <li className={styles['booking']}>
      <div className={classes(styles['bookingLine'], booking.isTakenBack && styles['takenBack'])}>
        <span className={shared['quiet']}>{dateWords(booking.on, locale, today())}</span>
        <div className={styles['bookingWords']}>
          <p>
            <Typeset text={before} />
            <ForWhom booking={booking} />
            <Typeset text={after === '' ? '' : `; ${after}`} />
          </p>
          {booking.note !== '' && <p className={styles['note']}>{booking.note}</p>}
        </div>
        <span className={styles['cost']}>
          {booking.costMinor === 0 ? '' : formatMoney(moneyFromMinor(booking.costMinor, currency), locale)}
        </span>
        <span className={styles['takeBack']}>
          {canBeTakenBack && (
            <Button
              look="quiet"
              isSmall
              aria-label={`Take back: ${before} ${booking.projectName ?? ''}`.trim()}
              disabled={takingBack.isWriting}
              onClick={() => void takingBack.write({ bookingId: booking.id, on: today() })}
            >
              Take back
            </Button>
          )}
          {booking.isTakenBack && <span className={shared['quiet']}>taken back</span>}
        </span>
      </div>
      <TakeBackProblem problem={takingBack.problem} />
    </li>
  );
}

function ForWhom({ booking }: { readonly booking: Booking }) {
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

/** The store names what is in the way; the line says it at the booking. */
function TakeBackProblem({ problem }: { readonly problem: Problem | null }) {
  if (problem?.code !== 'in-use') return <ProblemNotice problem={problem} />;
  return (
    <div role="alert">
      <Notice kind="warning" title="Not taken back">
        In the way is {problem.what}.
      </Notice>
    </div>
  );
}
