import type { Calculator } from '#core/calculators/calculator';
import { trialsIn } from '#core/calculators/fact-fields';
import { openDecisions } from '#core/calculators/unsettled';
import type { ProjectId } from '#core/domain/ids';
import type { Measurements } from '#core/domain/measurements';
import { type DecidedFacts, type FactName, factsOfProject, factTitle } from '#core/domain/project-facts';
import { useWrite } from '#renderer/bridge/query';
import { factWords } from '#renderer/text/fact-words';
import { Typeset } from '#renderer/ui/answers/typeset';
import { useDisplay } from '#renderer/ui/base/display';
import { Button } from '#renderer/ui/page/button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import styles from './numbers.module.css';

interface TrialsProps {
  readonly projectId: ProjectId;
  readonly calculator: Calculator;
  readonly measurements: Measurements;
  /** The fields the maker set. */
  readonly own: Readonly<Record<string, unknown>>;
  readonly onChange: (own: Readonly<Record<string, unknown>>) => void;
}

/**
 * What is only tried in a calculator: each fact of the project that was changed here, and what the answer decides, such as the hole. One press
 * makes it the project's, and everything that reads it follows.
 */
export function Trials({ projectId, calculator, measurements, own, onChange }: TrialsProps) {
  const deciding = useWrite('project:decide');
  const without = (field: string) =>
    Object.fromEntries(Object.entries(own).filter(([name]) => name !== field));
  const decisions = openDecisions(calculator, measurements, own);
  const trials = trialsIn(calculator, measurements, own);
  if (decisions.length === 0 && trials.length === 0) return null;
  return (
    <ul className={styles['trials']} aria-label="Just trying">
      {decisions.map(({ fact, answer }) => (
        <TrialLine
          key={fact}
          fact={fact}
          tried={answer}
          measurements={measurements}
          isBusy={deciding.isWriting}
          onDecide={() => void deciding.write({ projectId, decided: answer })}
        />
      ))}
      {trials.map(({ field, fact, tried }) => (
        <TrialLine
          key={field}
          fact={fact}
          tried={tried}
          measurements={measurements}
          isBusy={deciding.isWriting}
          onDecide={() =>
            void deciding.write({ projectId, decided: tried }).then(({ ok }) => {
              if (ok) onChange(without(field));
            })
          }
          onBack={() => onChange(without(field))}
        />
      ))}
      <ProblemNotice problem={deciding.problem} />
    </ul>
  );
}

interface TrialLineProps {
  readonly fact: FactName;
  readonly tried: DecidedFacts;
  readonly measurements: Measurements;
  readonly isBusy: boolean;
  readonly onDecide: () => void;
  readonly onBack?: () => void;
}

function TrialLine({ fact, tried, measurements, isBusy, onDecide, onBack }: TrialLineProps) {
  const display = useDisplay();
  const now = factWords(fact, tried, display);
  const projects = factWords(fact, factsOfProject(measurements), display);
  return (
    <li className={styles['trial']}>
      <span>
        <strong>{factTitle(fact)}:</strong>{' '}
        <Typeset text={`just trying ${now}. The project has ${projects}.`} />
      </span>
      <Button isSmall disabled={isBusy} onClick={onDecide}>
        Use {now} for this project
      </Button>
      {onBack !== undefined && (
        <Button look="quiet" isSmall onClick={onBack}>
          Back to {projects}
        </Button>
      )}
    </li>
  );
}
