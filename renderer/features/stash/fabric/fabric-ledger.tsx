import { useId, useState } from 'react';
import type { Booking, FabricPage } from '#core/contract/stash';
import layout from '#renderer/ui/page/layout.module.css';
import { Button } from '#renderer/ui/page/button';
import { LedgerLine } from './ledger-line';

const SHOWN_AT_FIRST = 30;

/** The ledger of a fabric, newest booking first. */
export function FabricLedger({ opened }: { readonly opened: FabricPage }) {
  const { ledger } = opened;
  const [isWhole, setIsWhole] = useState(false);
  const titleId = useId();
  if (ledger.length === 0) return null;
  const shown: readonly Booking[] = isWhole ? ledger : ledger.slice(0, SHOWN_AT_FIRST);
  return (
    <section className={layout['stack']} aria-labelledby={titleId}>
      <h2 id={titleId} className={layout['heading']}>
        Ledger
      </h2>
      <ul className={layout['lines']}>
        {shown.map((booking) => (
          <LedgerLine key={booking.id} booking={booking} ledger={ledger} />
        ))}
      </ul>
      {shown.length < ledger.length && (
        <div>
          <Button isSmall onClick={() => setIsWhole(true)}>
            {`Show ${String(ledger.length - shown.length)} older`}
          </Button>
        </div>
      )}
    </section>
  );
}
