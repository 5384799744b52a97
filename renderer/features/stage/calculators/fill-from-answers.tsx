import type { Calculator } from '#core/calculators/calculator';
import { isSameData } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import type { SavedCalculation } from '#core/contract/calculations';
import { Button } from '#renderer/ui/page/button';
import styles from './numbers.module.css';

type Fields = Readonly<Record<string, unknown>>;

interface FillFromAnswersProps {
  readonly calculator: Calculator;
  /** The answers saved with the stage. */
  readonly answers: readonly SavedCalculation[];
  /** What the fields hold now. */
  readonly value: Fields;
  readonly onFill: (fields: Fields) => void;
}

/** One button for each saved answer whose sizes can be taken over; none where the fields hold them already. */
export function FillFromAnswers({ calculator, answers, value, onFill }: FillFromAnswersProps) {
  const offers = (calculator.fromAnswers?.(answers, value) ?? []).filter(({ fields }) =>
    Object.entries(fields).some(([name, given]) => !isSameData(given, value[name])),
  );
  if (offers.length === 0) return null;
  return (
    <div className={styles['fill']}>
      {offers.map(({ calculator: name, fields }) => (
        <Button key={name} isSmall onClick={() => onFill({ ...fields })}>
          Take the sizes from “{calculatorByName(name)?.title ?? name}”
        </Button>
      ))}
    </div>
  );
}
