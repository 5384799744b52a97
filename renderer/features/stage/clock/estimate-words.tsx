import type { Stage } from '#core/domain/stage';
import { ENOUGH_CASES } from '#core/learned/learned';
import type { EstimatePart, StageEstimate } from '#core/learned/stage-estimate';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { doneWords, rateWords } from '#renderer/text/work-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import layout from '#renderer/ui/page/layout.module.css';
import styles from '../stage.module.css';

interface EstimateWordsProps {
  readonly stage: Stage;
  readonly estimate: StageEstimate;
}

/** Where a stage’s estimate comes from: how much there is to do, at which rate, and what the other source would give. */
export function EstimateWords({ stage, estimate }: EstimateWordsProps) {
  const saving = useWrite('stage:set-estimate-source');
  const { from, parts, ratesMinutes } = estimate;
  if (parts.length === 0) return null;
  const isByRates = from === 'rates';
  return (
    <div className={layout['part']} role="group" aria-label="Where the estimate comes from">
      <p className={layout['quiet']}>{sourceWords(estimate)}</p>
      <ul className={styles['lines']}>
        {parts.map((part) => (
          <PartLine key={part.what} part={part} />
        ))}
      </ul>
      {ratesMinutes !== null && (
        <div>
          <Button
            isSmall
            disabled={saving.isWriting}
            onClick={() => void saving.write({ stageId: stage.id, by: isByRates ? 'own' : 'rates' })}
          >
            {isByRates ? `Use ${withoutRates(estimate)} instead` : 'Use your own rates'}
          </Button>
        </div>
      )}
      <ProblemNotice problem={saving.problem} />
    </div>
  );
}

function withoutRates({ storedMinutes }: StageEstimate): string {
  return formatMinutes(minutesFromWhole(storedMinutes));
}

function sourceWords(estimate: StageEstimate): string {
  const byRates =
    estimate.ratesMinutes === null
      ? ''
      : `; your own rates would give ${formatMinutes(minutesFromWhole(estimate.ratesMinutes))}`;
  switch (estimate.from) {
    case 'rates': {
      const joins = estimate.parts.some(({ what }) => what === 'blocks')
        ? '; joining the blocks is not included'
        : '';
      return `From your own rates${joins}. Without them: ${withoutRates(estimate)}.`;
    }
    case 'own':
      return `The estimate you set${byRates}.`;
    case 'plan':
      return 'From the stage plan, until enough time is logged to use your own rates.';
  }
}

function PartLine({ part }: { readonly part: EstimatePart }) {
  const { length } = useDisplay();
  const { learned, minutes } = part;
  const time = minutes === null ? '' : `: ${formatMinutes(minutesFromWhole(minutes))}`;
  const use = minutes === null ? `; used after ${String(ENOUGH_CASES)} entries` : '';
  const rate = learned === null ? 'nothing logged yet' : rateWords(part.what, learned, length);
  return (
    <li>
      {doneWords(part, length)}
      {time} <span className={layout['quiet']}>{`${rate}${use}`}</span>
    </li>
  );
}
