import { calculators, calculatorsForStage } from '#core/calculators/registry';
import type { StageKind } from '#core/domain/stage-kinds';
import { Checkbox } from '../fields/checkbox';
import layout from '../page/layout.module.css';
import styles from './calculator-choice.module.css';

interface CalculatorChoiceProps {
  readonly kind: StageKind;
  /** Null for the usual ones of the stage's kind. */
  readonly chosen: readonly string[] | null;
  readonly onChange: (chosen: readonly string[] | null) => void;
}

/** Which calculators a stage's page has. A choice equal to the usual ones of its kind counts as no choice. */
export function CalculatorChoice({ kind, chosen, onChange }: CalculatorChoiceProps) {
  const usual = calculatorsForStage({ kind, calculators: null }).map(({ name }) => name);
  const now = chosen ?? usual;
  const change = (name: string, isThere: boolean) => {
    const next = calculators
      .map((one) => one.name)
      .filter((one) => (one === name ? isThere : now.includes(one)));
    onChange(next.join() === usual.join() ? null : next);
  };
  return (
    <details className={layout['fold']}>
      <summary>Calculators: {chosen === null ? 'the usual ones' : `${String(chosen.length)} chosen`}</summary>
      <div className={styles['list']}>
        {calculators.map(({ name, title }) => (
          <Checkbox
            key={name}
            label={title}
            isChecked={now.includes(name)}
            onChange={(isThere) => change(name, isThere)}
          />
        ))}
      </div>
    </details>
  );
}
