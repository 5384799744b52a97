import { CAUTIONS } from '#core/domain/cautions';
import { Button } from '#renderer/ui/page/button';
import { Notice } from '#renderer/ui/page/notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { CompareNew } from './compare-new';
import { CuttingPlanChoice } from './cutting-plan-choice';
import { PlanPieces } from './plan-pieces';
import type { CuttingPlanProps } from './cutting-plan-props';
import { gapWords } from './cutting-plan-words';
import { ToBuy } from '../desk/to-buy';
import { Unplaced } from '../desk/unplaced';
import { LONGER_MILLISECONDS, type Planning } from './use-planning';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './planning.module.css';

/** The two plans to choose from, how good the chosen one is, what can’t be cut, what to buy, and a drawing of every piece. */
export function PlanAnswer(props: CuttingPlanProps) {
  const { setup, stash, job, planning, chosen } = props;
  const { answer } = planning;
  return (
    <section className={styles['answer']} aria-label="The plan">
      {answer !== null && chosen !== null && (
        <CuttingPlanChoice
          plans={[answer.simplestCuts, answer.leastFabric]}
          chosen={chosen}
          onChoose={props.onChoose}
        />
      )}
      <div className={styles['progress']}>
        <p className={layout['quiet']} role="status">
          {progressWords(planning)}
        </p>
        {answer !== null && planning.state !== 'exhausted' && (
          <Button
            look="quiet"
            isSmall
            onClick={planning.state === 'searching' ? planning.stop : planning.searchOn}
          >
            {planning.state === 'searching'
              ? 'Stop'
              : `Search ${String(LONGER_MILLISECONDS / 1_000)} more seconds`}
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
          <ToBuy plan={chosen} setup={setup} stash={stash} onBought={null} />
          <CompareNew job={job} plan={chosen} />
          <PlanPieces {...props} plan={chosen} />
          <Notice kind="caution">{CAUTIONS.rotaryBlade}</Notice>
        </>
      )}
    </section>
  );
}

function progressWords({ answer, state, milliseconds }: Planning): string {
  if (answer === null) return 'Laying out the first plan…';
  if (state === 'searching') return 'Looking for better plans…';
  if (state === 'exhausted') return 'Everything worth trying has been tried.';
  return `Searched for ${(milliseconds / 1_000).toFixed(1)} seconds.`;
}
