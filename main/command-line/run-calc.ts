import type { Calculator, Refusal } from '#core/calculators/calculator';
import { answerCalculator } from '#core/calculators/complete-input';
import { formatSentence, type QuantityStyle } from '#core/calculators/format-quantity';
import { calculatorByName, calculators } from '#core/calculators/registry';
import { displayOfSettings } from '#core/calculators/shared-fields';
import type { Measurements } from '#core/domain/measurements';
import type { FieldProblem } from '#core/field-problem';
import { currencyFromCode } from '#core/units/money';
import { clipRead } from '#core/units/typed-text';
import { describeCalculators } from './describe-calculators';
import { type Arguments, readArguments } from './read-arguments';
import { answerAsData, answerAsText } from './write-answer';

/** What a run prints and the code it exits with. */
export interface Outcome {
  readonly status: 0 | 2;
  readonly stdout: string;
  readonly stderr: string;
}

/** Ends with 0 and the answer on standard output, or with 2 and one line on standard error that says what to fix. */
export function runCalc(args: readonly string[]): Outcome {
  const read = readArguments(args);
  if (!read.ok) return refuse('calc', read.error.path, problemLine([read.error]));
  const [name, text, ...more] = read.value.positionals;
  if (name === 'list' && text === undefined) return print(asJson(describeCalculators(calculators)));
  if (name === undefined || more.length > 0)
    return refuse('calc', [], 'expected: list, or NAME \'{"field": value, …}\'');
  const calculator = calculatorByName(name);
  if (calculator === undefined) {
    const names = calculators.map((one) => one.name).join(', ');
    return refuse('calc', [], `read "${clipRead(name)}", expected list or one of: ${names}`);
  }
  return answer(calculator, text ?? '{}', read.value);
}

function answer(calculator: Calculator, text: string, { measurements, asText }: Arguments): Outcome {
  const { name } = calculator;
  const raw = parseJson(text);
  if (raw === undefined) {
    const expected = `a JSON object such as '{"field": "9 1/2 in"}'`;
    return refuse(name, [], `read "${clipRead(text)}", expected ${expected}`);
  }
  const style = styleOf(measurements);
  const answered = answerCalculator(calculator, measurements, raw);
  if (answered.ok) {
    return print(
      asText
        ? answerAsText(calculator, answered.value, style)
        : asJson(answerAsData(calculator, answered.value, style)),
    );
  }
  const { error } = answered;
  return error.code === 'refused'
    ? refuse(name, error.refusal.field, refusalLine(error.refusal, raw, style))
    : refuse(name, error.fields[0]?.path ?? [], problemLine(error.fields));
}

function styleOf({ settings }: Measurements): QuantityStyle {
  return { display: displayOfSettings(settings), currency: currencyFromCode('USD'), locale: 'en-US' };
}

function problemLine(problems: readonly FieldProblem[]): string {
  const [first] = problems;
  const others = problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
  return `read ${first?.read ?? 'nothing'}, expected ${first?.expected ?? 'a group of fields'}${others}`;
}

function refusalLine(refusal: Refusal, raw: unknown, style: QuantityStyle): string {
  return `read ${clipRead(JSON.stringify(raw))}, no answer: ${formatSentence(refusal, style)}`;
}

/** Undefined when the text is not JSON, which has no undefined itself. */
function parseJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

function refuse(name: string, path: FieldProblem['path'], line: string): Outcome {
  const field = path.length === 0 ? '' : `${path.join('.')}: `;
  return { status: 2, stdout: '', stderr: `${`${name}: ${field}${line}`.replace(/\s+/g, ' ')}\n` };
}

function asJson(value: object): string {
  return JSON.stringify(value, null, 2);
}

const print = (text: string): Outcome => ({ status: 0, stdout: `${text}\n`, stderr: '' });
