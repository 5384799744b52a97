import { ENOUGH_CASES } from '#core/learned/learned';
import { usualSeams } from '#core/learned/usual-seams';
import { useRead } from '#renderer/bridge/query';
import { usualCutWords, usualSeamWords } from '#renderer/text/seam-words';
import { quantityStyle, Typeset } from '#renderer/ui/answers/typeset';
import { useDisplay } from '#renderer/ui/base/display';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './workshop.module.css';

/** How far the maker's seams and cuts are off, learned from the blocks measured in all projects. */
export function OwnSeams() {
  const { value: checks } = useRead('workshop:seam-checks', {});
  const style = quantityStyle(useDisplay());
  if (checks === undefined) return null;
  const usual = usualSeams(checks);
  const lines = [
    { name: 'Seams', words: usualSeamWords(usual, style) },
    { name: 'Cuts', words: usualCutWords(usual, style) },
  ];
  return (
    <section className={layout['stack']} aria-labelledby="own-seams">
      <h2 id="own-seams">Your seams</h2>
      <p className={layout['quiet']}>
        Learned from the blocks you measure under “What your seams take”. After {ENOUGH_CASES} projects
        Ringbound uses them instead of the settings.
      </p>
      <ul className={layout['lines']}>
        {lines.map(({ name, words }) => (
          <li key={name} className={styles['line']}>
            <span className={styles['words']}>
              <span className={styles['name']}>{name}</span>
              <span className={layout['quiet']}>
                <Typeset text={words} />
              </span>
            </span>
            <span className={layout['quiet']}>{usual.inUse === null ? 'Not used yet' : 'In use'}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
