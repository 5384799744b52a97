import { workMeasureSchema } from '#core/domain/clock';
import { ENOUGH_CASES } from '#core/learned/learned';
import { ownRates, rateInUse } from '#core/learned/rates';
import { useRead } from '#renderer/bridge/query';
import { MEASURE_WORDS, rateWords } from '#renderer/text/work-words';
import { useDisplay } from '#renderer/ui/base/display';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './workshop.module.css';

/** How fast the maker works, learned from the clock. After enough entries these rates replace the defaults. */
export function OwnRates() {
  const { value: counted } = useRead('work:counted', {});
  const { length } = useDisplay();
  if (counted === undefined) return null;
  const rates = ownRates(counted);
  return (
    <section className={layout['stack']} aria-labelledby="own-rates">
      <h2 id="own-rates">Your speed</h2>
      <p className={layout['quiet']}>
        Learned from what you enter when you stop the clock. After {ENOUGH_CASES} entries Ringbound uses your
        own speed instead of the default.
      </p>
      <ul className={layout['lines']}>
        {workMeasureSchema.options.map((what) => {
          const learned = rates[what];
          return (
            <li key={what} className={styles['line']}>
              <span className={styles['words']}>
                <span className={styles['name']}>{MEASURE_WORDS[what]}</span>
                <span className={layout['quiet']}>
                  {learned === null ? 'No entries yet' : rateWords(what, learned, length)}
                </span>
              </span>
              <span className={layout['quiet']}>
                {rateInUse(rates, what) === null ? 'Not used yet' : 'In use'}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
