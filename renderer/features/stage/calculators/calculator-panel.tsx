import { useId } from 'react';
import type { Calculator } from '#core/calculators/calculator';
import { answerCalculator, isOutOfDate, isSameData } from '#core/calculators/complete-input';
import { formatQuantity, formatSentence } from '#core/calculators/format-quantity';
import { calculationOf } from '#core/calculators/saved-answer';
import type { SavedCalculation } from '#core/contract/calculations';
import type { Measurements } from '#core/domain/measurements';
import type { Stage } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { dateWords, dayOfInstant, today } from '#renderer/text/dates';
import { AnswerDetails, AnswerFigures } from '#renderer/ui/answers/answer';
import { DraftContext, useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DiscardEntries } from '#renderer/ui/page/discard-entries';
import { Button } from '#renderer/ui/page/button';
import { type Display, useDisplay } from '#renderer/ui/base/display';
import { ExplanationView } from '#renderer/ui/answers/explanation';
import { Notice } from '#renderer/ui/page/notice';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';
import { asObject, type PathProblem } from '#renderer/ui/schema-form/schema-values';
import { quantityStyle, Typeset } from '#renderer/ui/answers/typeset';
import { FillFromAnswers } from './fill-from-answers';
import { ownPart } from './own-input';
import { SeamSource } from './seam-source';
import { Trials } from './trials';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './numbers.module.css';

interface CalculatorPanelProps {
  readonly stage: Stage;
  readonly calculator: Calculator;
  readonly saved: SavedCalculation | null;
  /** All answers saved with the stage. */
  readonly answers: readonly SavedCalculation[];
  readonly measurements: Measurements;
}

type Answered = ReturnType<typeof answerCalculator>;

/**
 * An open calculator. It answers again with every change of its numbers; a number the maker has not set follows the project. A
 * saved answer is stored with the stage.
 */
export function CalculatorPanel({ stage, calculator, saved, answers, measurements }: CalculatorPanelProps) {
  const draft = useFormDraft(`calculator ${stage.id} ${calculator.name}`);
  const [own, setOwn] = useDraftValue(draft, 'own', asObject(saved?.ownInput));
  const display = useDisplay();
  const saving = useWrite('calculation:save');
  const fieldsId = useId();
  const fromProject = asObject(calculator.fromProject(measurements));
  const value = { ...fromProject, ...own };
  const answered = answerCalculator(calculator, measurements, own);
  const isSaved = saved !== null && isSameData(own, saved.ownInput);
  const isOld = saved !== null && isOutOfDate(saved, calculator, measurements);
  const save = async () => {
    const answer = await saving.write({ stageId: stage.id, calculator: calculator.name, ownInput: own });
    if (answer.ok) draft.forget();
  };
  return (
    <div className={styles['panel']}>
      {answered.ok ? (
        <AnswerFigures calculation={answered.value.calculation} />
      ) : (
        <Refused answered={answered} />
      )}
      <div className={styles['keep']}>
        <Button
          look="plain"
          disabled={!answered.ok || (isSaved && !isOld) || saving.isWriting}
          onClick={() => void save()}
        >
          {saved === null ? 'Save this answer' : 'Save the new answer'}
        </Button>
        <DiscardEntries draft={draft} />
        <span className={layout['quiet']}>
          <Typeset text={savedWords(saved, isSaved, isOld, display)} />
        </span>
      </div>
      <ProblemNotice problem={saving.problem} />
      <Trials
        projectId={stage.projectId}
        calculator={calculator}
        measurements={measurements}
        own={own}
        onChange={setOwn}
      />
      <section aria-labelledby={fieldsId} className={styles['fields']}>
        <div className={styles['fieldsHead']}>
          <h3 id={fieldsId}>From these numbers</h3>
          {Object.keys(own).length > 0 && (
            <Button look="quiet" isSmall onClick={() => setOwn({})}>
              Use the project’s numbers
            </Button>
          )}
        </div>
        <FillFromAnswers
          calculator={calculator}
          answers={answers}
          value={value}
          onFill={(fields) => setOwn(ownPart({ ...value, ...fields }, fromProject))}
        />
        <SeamSource calculator={calculator} measurements={measurements} own={own} />
        <DraftContext key={draft.discards} value={draft}>
          <SchemaForm
            schema={calculator.input}
            value={value}
            problems={problemsOf(answered, display)}
            onChange={(next) => setOwn(ownPart(next, fromProject))}
          />
        </DraftContext>
      </section>
      {answered.ok && <AnswerDetails calculation={answered.value.calculation} />}
      {answered.ok && (
        <details className={layout['fold']}>
          <summary>Why: the working, line by line</summary>
          <ExplanationView explanation={answered.value.calculation.explanation} />
        </details>
      )}
    </div>
  );
}

function Refused({ answered }: { readonly answered: Extract<Answered, { ok: false }> }) {
  const display = useDisplay();
  const words =
    answered.error.code === 'refused'
      ? formatSentence(answered.error.refusal, quantityStyle(display))
      : 'One of the numbers below can’t be used yet.';
  return (
    <Notice kind="warning" title="Can’t work this out yet">
      {words}
    </Notice>
  );
}

function problemsOf(answered: Answered, display: Display): readonly PathProblem[] {
  if (answered.ok) return [];
  if (answered.error.code === 'refused') {
    const { refusal } = answered.error;
    return [{ path: refusal.field, words: formatSentence(refusal, quantityStyle(display)) }];
  }
  return answered.error.fields.map(({ path, expected }) => ({ path, words: `Expected ${expected}.` }));
}

function savedWords(
  saved: SavedCalculation | null,
  isSaved: boolean,
  isOld: boolean,
  display: Display,
): string {
  if (saved === null) return 'Not saved yet';
  const day = dateWords(dayOfInstant(saved.savedAt), display.locale, today());
  const figure = calculationOf(saved.answer)?.figures[0];
  const what =
    figure === undefined ? 'another answer' : formatQuantity(figure.quantity, quantityStyle(display));
  if (isOld) return `Out of date: saved ${day} as ${what}, and the project has changed since`;
  return isSaved ? `Saved ${day}` : `Saved ${day} as ${what}, from other numbers`;
}
