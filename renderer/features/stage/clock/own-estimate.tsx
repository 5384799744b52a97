import { stageKindRecord } from '#core/domain/stage-kinds';
import { useState } from 'react';
import type { WorkMeasure } from '#core/domain/clock';
import type { Stage } from '#core/domain/stage';
import { ENOUGH_CASES } from '#core/learned/learned';
import { minutesByOwnRate, ownRates } from '#core/learned/rates';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { UNITS_PER_INCH } from '#core/units/length';
import { useRead, useWrite } from '#renderer/bridge/query';
import { rateWords } from '#renderer/text/work-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { WorkDoneFields } from '#renderer/shared/work-done-fields';
import layout from '#renderer/ui/page/layout.module.css';

/** Works out an estimate from the maker’s own rate and an amount of blocks, hand sewing or cuts they enter. */
export function OwnEstimate({ stage }: { readonly stage: Stage }) {
  const { value: counted } = useRead('work:counted', {});
  const { length } = useDisplay();
  const changing = useWrite('stage:change');
  const [asked, setAsked] = useState<{ readonly what: WorkMeasure | null; readonly amount: number | null }>({
    what: stageKindRecord(stage.kind).usuallyCounted,
    amount: null,
  });
  if (counted === undefined || counted.length === 0) return null;
  const rates = ownRates(counted);
  const learned = asked.what === null ? null : rates[asked.what];
  const amount = asked.what === 'hand' ? (asked.amount ?? 0) / UNITS_PER_INCH : (asked.amount ?? 0);
  const minutes = asked.what === null ? null : minutesByOwnRate(rates, asked.what, amount);
  const use = (estimateMinutes: number) => {
    const { id: stageId, name, heldUpBy, notes } = stage;
    void changing.write({ stageId, name, heldUpBy, notes, estimateMinutes });
  };
  return (
    <details className={layout['fold']}>
      <summary>Estimate from your own rate</summary>
      <div className={layout['part']}>
        <WorkDoneFields {...asked} onChange={(what, next) => setAsked({ what, amount: next })} />
        {asked.what !== null && (
          <p className={layout['quiet']}>
            {learned === null ? 'Nothing logged yet' : rateWords(asked.what, learned, length)}
            {minutes === null && `; used after ${String(ENOUGH_CASES)} entries`}
          </p>
        )}
        {minutes !== null && minutes > 0 && (
          <div className={layout['row']}>
            <strong>{formatMinutes(minutesFromWhole(minutes))}</strong>
            <Button isSmall disabled={changing.isWriting} onClick={() => use(minutes)}>
              Use this estimate
            </Button>
          </div>
        )}
        <ProblemNotice problem={changing.problem} />
      </div>
    </details>
  );
}
