import type { Calculator } from '#core/calculators/calculator';
import { isOutOfDate } from '#core/calculators/complete-input';
import { calculationOf } from '#core/calculators/saved-answer';
import type { SavedCalculation } from '#core/contract/calculations';
import type { Measurements } from '#core/domain/measurements';
import { QuantityText } from '#renderer/ui/answers/typeset';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './numbers.module.css';

interface CalculatorHeadProps {
  readonly calculator: Calculator;
  readonly saved: SavedCalculation | null;
  readonly measurements: Measurements;
  readonly isOpen: boolean;
  readonly panelId: string;
  readonly onToggle: () => void;
}

/** A calculator’s question and the answer saved for it, if any; pressing it opens the calculator. */
export function CalculatorHead({
  calculator,
  saved,
  measurements,
  isOpen,
  panelId,
  onToggle,
}: CalculatorHeadProps) {
  const isOld = saved !== null && isOutOfDate(saved, calculator, measurements);
  const figure = saved === null ? undefined : calculationOf(saved.answer)?.figures[0];
  return (
    <h2 className={styles['head']}>
      <button
        type="button"
        className={styles['toggle']}
        aria-expanded={isOpen}
        aria-controls={panelId}
        onClick={onToggle}
      >
        <span className={styles['titles']}>
          <span className={styles['title']}>{calculator.title}</span>
          <span className={layout['quiet']}>{calculator.question}</span>
        </span>
        {figure !== undefined && !isOpen && (
          <span className={styles['saved']}>
            <QuantityText quantity={figure.quantity} />
            <span className={isOld ? styles['old'] : layout['quiet']}>
              {isOld ? 'out of date' : figure.label}
            </span>
          </span>
        )}
      </button>
    </h2>
  );
}
