import type { Explanation, Rule, Step } from '#core/calculators/explanation';
import { ExactText, InlineQuantity, QuantityText, Typeset } from './typeset';
import styles from './explanation.module.css';

const RULE_WORDS: Readonly<Record<Rule['kind'], string>> = {
  derived: 'Worked out',
  published: 'Published',
  'common practice': 'Common practice',
};

/** The working of an answer, step by step: formula, numbers, result, and where the rule comes from. */
export function ExplanationView({ explanation }: { readonly explanation: Explanation }) {
  return (
    <ol className={styles['steps']}>
      {explanation.map((step, index) => (
        <StepView key={index} step={step} />
      ))}
    </ol>
  );
}

function StepView({ step }: { readonly step: Step }) {
  return (
    <li className={styles['step']}>
      <div className={styles['outcome']}>
        <span className={styles['label']}>
          <Typeset text={step.label} />
        </span>
        <span className={styles['result']}>
          <QuantityText quantity={step.result} />
          <span className={styles['exact']}>
            <ExactText quantity={step.result} />
          </span>
        </span>
      </div>
      <p className={styles['formula']}>{step.formula}</p>
      {step.terms.length > 0 && (
        <dl className={styles['terms']}>
          {step.terms.map((term) => (
            <div key={`${term.symbol} ${term.means}`} className={styles['term']}>
              <dt>
                <i>{term.symbol}</i> <Typeset text={term.means} />
              </dt>
              <dd>
                <InlineQuantity quantity={term.quantity} />
              </dd>
            </div>
          ))}
        </dl>
      )}
      <p className={styles['rule']}>
        {RULE_WORDS[step.rule.kind]}: <Typeset text={step.rule.says} />
      </p>
    </li>
  );
}
