import { workMeasure } from '#core/domain/clock';
import { ENOUGH_CASES } from '#core/learned/learned';
import { ownRates, rateInUse } from '#core/learned/rates';
import { useRead } from '#renderer/bridge/query';
import { MEASURE_WORDS, rateWords } from '#renderer/text/work-words';
import { useDisplay } from '#renderer/ui/base/display';
import styles from './workshop.module.css';

/** How fast the maker is, as her own clock tells; once counted often enough it stands in place of the default. */
export function OwnRates() {
  const { value: counted } = useRead('work:counted', {});
  const { length } = useDisplay();
  if (counted === undefined) return null;
  const rates = ownRates(counted);
  return (
    <section className={styles['part']} aria-labelledby="own-rates">
      <h2 id="own-rates">Your own rates</h2>
      <p className={styles['quiet']}>
        Learned from what you count when the clock stops. Counted {ENOUGH_CASES} times or more, they are used
        in place of the defaults: for stages whose kept answers say how much there is to do, and wherever hand
        sewing is reckoned.
      </p>
      <ul className={styles['lines']}>
        {workMeasure.options.map((what) => {
          const learned = rates[what];
          return (
            <li key={what} className={styles['line']}>
              <span className={styles['words']}>
                <span className={styles['name']}>{MEASURE_WORDS[what]}</span>
                <span className={styles['quiet']}>
                  {learned === null ? 'Not counted yet' : rateWords(what, learned, length)}
                </span>
              </span>
              <span className={styles['quiet']}>
                {rateInUse(rates, what) === null ? 'Not used yet' : 'In use'}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
