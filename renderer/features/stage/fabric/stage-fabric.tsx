import { stageKindRecord } from '#core/domain/stage-kinds';
import { useState } from 'react';
import type { Booking } from '#core/contract/stash';
import type { Stage } from '#core/domain/stage';
import { formatArea } from '#core/units/format-area';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import { useRead, useWrite } from '#renderer/bridge/query';
import { loneCostWords } from '#renderer/text/cost-words';
import { partialDateWords, today } from '#renderer/text/dates';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { type Display, useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { CutDialog } from './cut-dialog';
import layout from '#renderer/ui/page/layout.module.css';
import styles from '../stage.module.css';

/** The fabric this stage has cut from the stash. A cut can be recorded here, and undone. */
export function StageFabric({ stage }: { readonly stage: Stage }) {
  const [isCutting, setIsCutting] = useState(false);
  const { value: fabric, problem } = useRead('ledger:of-project', { projectId: stage.projectId });
  const bookings = (fabric?.bookings ?? []).filter(
    ({ stageId, isUndone: isTakenBack, entries }) =>
      stageId === stage.id && !isTakenBack && entries.some((entry) => entry.kind === 'cut'),
  );
  return (
    <section className={layout['part']} aria-label="Fabric">
      <div className={layout['partHead']}>
        <h3>Fabric</h3>
        <div className={layout['row']}>
          {stageKindRecord(stage.kind).cutsPatches && (
            <ButtonLink isSmall to={`/projects/${stage.projectId}/cutting`}>
              Plan the cutting
            </ButtonLink>
          )}
          <ButtonLink isSmall to={`/shopping?project=${stage.projectId}`}>
            Which fabric fits
          </ButtonLink>
          <Button isSmall onClick={() => setIsCutting(true)}>
            Record a cut
          </Button>
        </div>
      </div>
      {bookings.length === 0 && <p className={layout['quiet']}>Nothing from the stash yet.</p>}
      <ul className={styles['lines']}>
        {bookings.map((booking) => (
          <BookingLine key={booking.id} booking={booking} />
        ))}
      </ul>
      <ProblemNotice problem={problem} />
      {isCutting && <CutDialog stage={stage} held={fabric?.held ?? []} onClose={() => setIsCutting(false)} />}
    </section>
  );
}

function BookingLine({ booking }: { readonly booking: Booking }) {
  const display = useDisplay();
  const undoing = useWrite('ledger:undo');
  return (
    <li className={layout['part']}>
      <div className={styles['line']}>
        <span>
          <span className={styles['swatch']} style={{ background: booking.swatch }} />
          <strong>{booking.fabricName}</strong>
          <br />
          <Typeset text={cutWords(booking, display)} />
        </span>
        <Button
          look="quiet"
          isSmall
          disabled={undoing.isWriting}
          aria-label={`Undo the cut of ${booking.fabricName}`}
          onClick={() => void undoing.write({ bookingId: booking.id, on: today() })}
        >
          Undo
        </Button>
      </div>
      <ProblemNotice problem={undoing.problem} />
    </li>
  );
}

/** `10 in cut on Oct 3, 1 leftover kept; 420 sq in used, $3.20`. */
function cutWords(booking: Booking, display: Display): string {
  const { length, locale } = display;
  const cut = booking.entries.find((entry) => entry.kind === 'cut');
  const leftovers = booking.entries.filter((entry) => entry.kind === 'leftover').length;
  const cutLength = cut === undefined ? '' : formatLength(lengthFromUnits(-cut.lengthChange), length);
  const day = cut === undefined ? '' : ` cut on ${partialDateWords(booking.on, locale, today())}`;
  const kept =
    leftovers === 0 ? '' : `, ${String(leftovers)} ${leftovers === 1 ? 'leftover' : 'leftovers'} kept`;
  const used = `${formatArea(booking.usedArea, length)} used`;
  const cost = loneCostWords(booking.cost, display);
  return `${cutLength}${day}${kept}; ${cost === '' ? used : `${used}, ${cost}`}`;
}
