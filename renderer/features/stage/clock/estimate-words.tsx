import type { Stage } from '#core/domain/stage';
import { ENOUGH_CASES } from '#core/learned/learned';
import type { EstimatePart, StageEstimate } from '#core/learned/stage-estimate';
import { formatMinutes, minutesFromWhole } from '#core/units/minutes';
import { useWrite } from '#renderer/bridge/query';
import { doneWords, rateWords } from '#renderer/text/work-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import styles from '../stage.module.css';

interface EstimateWordsProps {
  readonly stage: Stage;
  readonly estimate: StageEstimate;
}

/** Where a stage's hours come from: how much there is to do, at which rate, and what stands beside them. */
export function EstimateWords({ stage, estimate }: EstimateWordsProps) {
  const reckoning = useWrite('stage:reckon');
  const { from, parts, ratesMinutes } = estimate;
  if (parts.length === 0) return null;
  const isByRates = from === 'rates';
  return (
    <div className={styles['part']} role="group" aria-label="Where the hours come from">
      <p className={styles['quiet']}>{sourceWords(estimate)}</p>
      <ul className={styles['lines']}>
        {parts.map((part) => (
          <PartLine key={part.what} part={part} />
        ))}
      </ul>
      {ratesMinutes !== null && (
        <div>
          <Button
            isSmall
            disabled={reckoning.isWriting}
            onClick={() => void reckoning.write({ stageId: stage.id, by: isByRates ? 'own' : 'rates' })}
          >
            {isByRates ? `Go by ${said(estimate)} instead` : 'Go by your own rates'}
          </Button>
        </div>
      )}
      <ProblemNotice problem={reckoning.problem} />
    </div>
  );
}

function said({ saidMinutes }: StageEstimate): string {
  return formatMinutes(minutesFromWhole(saidMinutes));
}

function sourceWords(estimate: StageEstimate): string {
  const byRates =
    estimate.ratesMinutes === null
      ? ''
      : `; by your own rates it would be ${formatMinutes(minutesFromWhole(estimate.ratesMinutes))}`;
  switch (estimate.from) {
    case 'rates': {
      const joins = estimate.parts.some(({ what }) => what === 'blocks')
        ? '; joining the blocks comes on top'
        : '';
      return `By your own rates${joins}. Without them: ${said(estimate)}.`;
    }
    case 'own':
      return `The hours you set${byRates}.`;
    case 'plan':
      return 'As the plan has it: your own rates cannot tell yet.';
  }
}

function PartLine({ part }: { readonly part: EstimatePart }) {
  const { length } = useDisplay();
  const { learned, minutes } = part;
  const time = minutes === null ? '' : `: ${formatMinutes(minutesFromWhole(minutes))}`;
  const use = minutes === null ? `; used from ${String(ENOUGH_CASES)} times on` : '';
  const rate = learned === null ? 'not counted yet' : rateWords(part.what, learned, length);
  return (
    <li>
      {doneWords(part, length)}
      {time} <span className={styles['quiet']}>{`${rate}${use}`}</span>
    </li>
  );
}
