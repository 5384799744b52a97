import type { answerCalculator } from '#core/calculators/complete-input';
import { formatSentence } from '#core/calculators/format-quantity';
import { AnswerDetails, AnswerFigures } from '#renderer/ui/answers/answer';
import { quantityStyle } from '#renderer/ui/answers/typeset';
import { useDisplay } from '#renderer/ui/base/display';
import { Notice } from '#renderer/ui/page/notice';
import layout from '#renderer/ui/page/layout.module.css';

interface PatternAnswerProps {
  readonly answered: ReturnType<typeof answerCalculator>;
}

/** The fabric that the patches take, beside what the pattern asks for. */
export function PatternAnswer({ answered }: PatternAnswerProps) {
  const display = useDisplay();
  return (
    <section className={layout['part']} aria-labelledby="pattern-answer">
      <h2 id="pattern-answer" className={layout['heading']}>
        What its patches take
      </h2>
      {answered.ok ? (
        <>
          <AnswerFigures calculation={answered.value.calculation} />
          <AnswerDetails calculation={answered.value.calculation} />
        </>
      ) : (
        <Notice kind="warning" title="Can’t work this out yet">
          {answered.error.code === 'refused'
            ? formatSentence(answered.error.refusal, quantityStyle(display))
            : 'One of the sizes or numbers is too large or too small. Check the lines above.'}
        </Notice>
      )}
    </section>
  );
}
