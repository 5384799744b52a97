import type { Calculation } from '../calculator';
import type { Quantity, Sentence, Table } from '../explanation';
import { isHowTo } from '../how-to';
import { wordsQuantity } from '../quantities';
import { calculatorByName } from '../registry';
import { answersThatCount } from '../saved-answer';
import { answerNow, step, type StepGrounds, type StepGroup } from './step-group';

/** The steps that these calculators give themselves, each under its title. One without such steps, or without an answer, is left out. */
export function ownSteps(names: readonly string[], grounds: StepGrounds): readonly StepGroup[] {
  return [...new Set(names)].flatMap((name) => {
    const calculator = calculatorByName(name);
    const answer = calculator === undefined ? null : answerNow(calculator, grounds);
    if (calculator === undefined || answer === null) return [];
    const steps = stepsOf(answer.calculation);
    return steps.length === 0 ? [] : [{ title: `${calculator.title}, step by step`, steps }];
  });
}

/** The calculators whose saved answers count for the stage: not the single patches beside a whole top, and one way to cut a binding. */
export function savedNames({ answers }: StepGrounds): readonly string[] {
  return answersThatCount(answers).map(({ calculator }) => calculator);
}

function stepsOf({ tables }: Calculation): readonly Sentence[] {
  return tables.filter(isHowTo).flatMap((table: Table) => table.rows.map(sentenceOf));
}

/**
 * A row has its number, what to do, and the measure, which may be empty. The measure goes to the sentence that says “this”, or else to the
 * first one. The words may hold a name of the maker's, braces and all, so they are quantities too.
 */
function sentenceOf([, does, measure]: readonly Quantity[]): Sentence {
  const words = does?.kind === 'words' ? does.text : '';
  if (measure === undefined || (measure.kind === 'words' && measure.text === '')) {
    return step('{does}', { does: wordsQuantity(words) });
  }
  const sentences = words.endsWith('.') ? words.split(/(?<=\.) (?=[A-Z])/) : [words];
  const at = Math.max(
    0,
    sentences.findIndex((sentence) => /\bthis\b/.test(sentence)),
  );
  const before = sentences
    .slice(0, at + 1)
    .join(' ')
    .replace(/\.$/, '');
  const rest = sentences.slice(at + 1).join(' ');
  return step(rest === '' ? '{does}: {measure}.' : '{does}: {measure}. {then}', {
    does: wordsQuantity(before),
    measure,
    then: wordsQuantity(rest),
  });
}
