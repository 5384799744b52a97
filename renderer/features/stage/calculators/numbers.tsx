import { useState } from 'react';
import { calculatorsForStage } from '#core/calculators/registry';
import type { Measurements } from '#core/domain/measurements';
import type { Stage } from '#core/domain/stage';
import { useRead } from '#renderer/bridge/query';
import { CalculatorPanel } from './calculator-panel';
import { CalculatorHead } from './calculator-head';
import styles from './numbers.module.css';

interface NumbersProps {
  readonly stage: Stage;
  readonly measurements: Measurements;
}

/** The calculators of a stage: each is a question with its answer, and one is open at a time. */
export function Numbers({ stage, measurements }: NumbersProps) {
  const calculators = calculatorsForStage(stage);
  const { value: saved } = useRead('calculation:list', { stageId: stage.id });
  const [opened, setOpened] = useState<string | null>(calculators[0]?.name ?? null);
  if (calculators.length === 0 || saved === undefined) return null;
  return (
    <section aria-label="Numbers" className={styles['numbers']}>
      {calculators.map((calculator) => {
        const isOpen = calculator.name === opened;
        const own = saved.find((one) => one.calculator === calculator.name) ?? null;
        const panelId = `numbers-${calculator.name}`;
        return (
          <article key={calculator.name} className={styles['calculator']}>
            <CalculatorHead
              calculator={calculator}
              saved={own}
              measurements={measurements}
              isOpen={isOpen}
              panelId={panelId}
              onToggle={() => setOpened(isOpen ? null : calculator.name)}
            />
            {isOpen && (
              <div id={panelId}>
                <CalculatorPanel
                  stage={stage}
                  calculator={calculator}
                  saved={own}
                  measurements={measurements}
                />
              </div>
            )}
          </article>
        );
      })}
    </section>
  );
}
