import { useId, useState } from 'react';
import type { Booking, FabricPage } from '#core/contract/stash';
import shared from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { LedgerLine } from './ledger-line';
import styles from './fabric.module.css';

const AT_FIRST = 30;

/** Every step of a fabric, the newest first. */
export function FabricLedger({ opened }: { readonly opened: FabricPage }) {
  const { ledger } = opened;
  const [isWhole, setIsWhole] = useState(false);
  const titleId = useId();
  if (ledger.length === 0) return null;
  const shown: readonly Booking[] = isWhole ? ledger : ledger.slice(0, AT_FIRST);
  return (
    <section className={shared['stack']} aria-labelledby={titleId}>
      <h2 id={titleId} className={styles['heading']}>
        Ledger
      </h2>
      <ul className={styles['ledger']}>
        {shown.map((booking) => (
          <LedgerLine key={booking.id} booking={booking} ledger={ledger} />
        ))}
      </ul>
      {shown.length < ledger.length && (
        <div>
          <Button isSmall onClick={() => setIsWhole(true)}>
            {`Show the ${String(ledger.length - shown.length)} before`}
          </Button>
        </div>
      )}
    </section>
  );
}
