import { Button } from '#renderer/ui/page/button';
import { Notice } from '#renderer/ui/page/notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { CompareNew } from './compare-new';
import { PlanChoice } from './plan-choice';
import { PlanPieces } from './plan-pieces';
import type { PlanProps } from './plan-props';
import { gapWords } from './plan-quality-words';
import { ToBuy } from '../desk/to-buy';
import { Unplaced } from '../desk/unplaced';
import { LONGER_MILLISECONDS, type Planning } from './use-planning';
import styles from '../cutting.module.css';

/** The two plans side by side, how good they are, what cannot be cut, what must be bought, and every piece drawn. */
export function PlanAnswer(props: PlanProps) {
  const { setup, shelf, job, planning, chosen } = props;
  const { answer } = planning;
  return (
    <section className={styles['answer']} aria-label="The plan">
      {answer !== null && chosen !== null && (
        <PlanChoice
          plans={[answer.simplestCuts, answer.leastFabric]}
          chosen={chosen}
          onChoose={props.onChoose}
        />
      )}
      <div className={styles['progress']}>
        <p className={styles['quiet']} role="status">
          {progressWords(planning)}
        </p>
        {answer !== null && planning.state !== 'exhausted' && (
          <Button
            look="quiet"
            isSmall
            onClick={planning.state === 'searching' ? planning.stop : planning.searchOn}
          >
            {planning.state === 'searching'
              ? 'That will do'
              : `Search ${String(LONGER_MILLISECONDS / 1_000)} seconds more`}
          </Button>
        )}
      </div>
      {chosen !== null && job !== null && (
        <>
          {chosen.leastArea > 0 && (
            <p>
              <Typeset text={gapWords(chosen)} />
            </p>
          )}
          <Unplaced plan={chosen} setup={setup} />
          <ToBuy plan={chosen} setup={setup} shelf={shelf} onBought={null} />
          <CompareNew job={job} plan={chosen} />
          <PlanPieces {...props} plan={chosen} />
          <Notice kind="caution">
            A fresh blade, closed whenever it is put down. Cut away from yourself, hand flat on the ruler and
            clear of its edge.
          </Notice>
        </>
      )}
    </section>
  );
}

function progressWords({ answer, state, milliseconds }: Planning): string {
  if (answer === null) return 'Laying out the first plan…';
  if (state === 'searching') return 'Looking for better plans…';
  if (state === 'exhausted') return 'Everything worth trying was tried.';
  return `Searched for ${(milliseconds / 1_000).toFixed(1)} seconds.`;
}
