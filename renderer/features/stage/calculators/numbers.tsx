import { type ReactNode, useState } from 'react';
import type { Calculator } from '#core/calculators/calculator';
import { calculatorsForStage } from '#core/calculators/registry';
import type { SavedCalculation } from '#core/contract/calculations';
import type { Measurements } from '#core/domain/measurements';
import type { Stage } from '#core/domain/stage';
import { useRead } from '#renderer/bridge/query';
import { useFabricNames } from '#renderer/shared/fabric-names';
import { FabricNamesContext } from '#renderer/ui/base/suggested-names';
import { classes } from '#renderer/ui/base/classes';
import layout from '#renderer/ui/page/layout.module.css';
import { CalculatorPanel } from './calculator-panel';
import { CalculatorHead } from './calculator-head';
import styles from './numbers.module.css';

interface NumbersProps {
  readonly stage: Stage;
  readonly measurements: Measurements;
}

/** The calculators of a stage: each is a question with its answer. */
export function Numbers(props: NumbersProps) {
  const { value: saved } = useRead('calculation:list', { stageId: props.stage.id });
  const calculators = calculatorsForStage(props.stage);
  if (calculators.length === 0 || saved === undefined) return null;
  return (
    <FabricNamesContext value={useFabricNames}>
      <Questions {...props} calculators={calculators} saved={saved} />
    </FabricNamesContext>
  );
}

interface QuestionsProps extends NumbersProps {
  readonly calculators: readonly Calculator[];
  readonly saved: readonly SavedCalculation[];
}

/** One question is open at a time. Those that few projects ask come last, folded away unless they were answered. */
function Questions({ stage, measurements, calculators, saved }: QuestionsProps) {
  // Decided once: a question does not move while it is answered.
  const [seldom] = useState(() => seldomAsked(stage, calculators, saved));
  const first = calculators.find(({ name }) => !seldom.has(name)) ?? calculators[0];
  const [opened, setOpened] = useState<string | null>(first?.name ?? null);
  const question = (calculator: Calculator): ReactNode => {
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
              answers={saved}
              measurements={measurements}
            />
          </div>
        )}
      </article>
    );
  };
  const more = calculators.filter(({ name }) => seldom.has(name));
  return (
    <section aria-label="Numbers" className={styles['numbers']}>
      {calculators.filter(({ name }) => !seldom.has(name)).map(question)}
      {more.length > 0 && (
        <details className={classes(layout['fold'], styles['calculator'])}>
          <summary>More questions ({more.length})</summary>
          {more.map(question)}
        </details>
      )}
    </section>
  );
}

/** The names of the questions to fold away. What was chosen for the stage or answered stays in view. */
function seldomAsked(
  stage: Stage,
  calculators: readonly Calculator[],
  saved: readonly SavedCalculation[],
): ReadonlySet<string> {
  if (stage.calculators !== null) return new Set();
  const answered = new Set(saved.map(({ calculator }) => calculator));
  const seldom = calculators.filter(({ name, isOccasional }) => isOccasional === true && !answered.has(name));
  return new Set(seldom.map(({ name }) => name));
}
