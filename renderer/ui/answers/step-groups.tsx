import type { StepGroup } from '#core/calculators/stage-steps/step-group';
import { SentenceText } from './typeset';
import styles from './step-groups.module.css';

/** Steps in order, under their headings, with quantities in the reader's units. */
export function StepGroups({ groups }: { readonly groups: readonly StepGroup[] }) {
  return groups.map(({ title, steps }) => (
    <section key={title} className={styles['group']}>
      <h3>{title}</h3>
      <ol className={styles['steps']}>
        {steps.map((sentence, index) => (
          <li key={index}>
            <SentenceText sentence={sentence} />
          </li>
        ))}
      </ol>
    </section>
  ));
}
