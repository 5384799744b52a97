import type { Answer } from '#core/calculators/complete-input';
import { answerCalculator } from '#core/calculators/complete-input';
import type { Calculator, Refusal } from '#core/calculators/calculator';
import {
  formatExactQuantity,
  formatQuantity,
  formatSentence,
  type QuantityStyle,
} from '#core/calculators/format-quantity';
import { calculatorByName, calculators } from '#core/calculators/registry';
import { displayOfSettings } from '#core/calculators/shared-fields';
import type { FieldProblem } from '#core/field-problem';
import { currencyFromCode } from '#core/units/money';
import { clipRead } from '#core/units/typed-text';
import { describeCalculators } from './describe-calculators';
import { SAMPLE_MEASUREMENTS } from './sample-measurements';

const STYLE: QuantityStyle = {
  display: displayOfSettings(SAMPLE_MEASUREMENTS.settings),
  currency: currencyFromCode('USD'),
  locale: 'en-US',
};

/** Exits with 0 and JSON on standard output, or with 2 and one line on standard error that says what to fix. */
function main(args: readonly string[]): number {
  const [name, text, ...more] = args;
  if (name === 'list' && text === undefined) return print(describeCalculators(calculators));
  if (name === undefined || more.length > 0)
    return refuse('calc', [], 'expected: list, or NAME \'{"field": value, …}\'');
  const calculator = calculatorByName(name);
  if (calculator === undefined) {
    return refuse(
      'calc',
      [],
      `read "${clipRead(name)}", expected list or one of: ${calculators.map((one) => one.name).join(', ')}`,
    );
  }
  const raw = parseJson(text ?? '{}');
  if (raw === undefined)
    return refuse(
      name,
      [],
      `read "${clipRead(text ?? '')}", expected a JSON object such as '{"field": "9 1/2 in"}'`,
    );
  const answer = answerCalculator(calculator, SAMPLE_MEASUREMENTS, raw);
  if (answer.ok) return print(written(calculator, answer.value));
  return answer.error.code === 'refused'
    ? refuse(name, answer.error.refusal.field, refusalLine(answer.error.refusal, raw))
    : refuse(name, answer.error.fields[0]?.path ?? [], problemLine(answer.error.fields));
}

/** The answer as data, and in the words that screen and paper show. */
function written(calculator: Calculator, { input, calculation }: Answer): object {
  const write = (quantity: Parameters<typeof formatQuantity>[0]) => {
    const exact = formatExactQuantity(quantity, STYLE);
    return `${formatQuantity(quantity, STYLE)}${exact === null ? '' : ` (exactly ${exact})`}`;
  };
  const words = {
    figures: calculation.figures.map(({ label, quantity }) => `${label}: ${write(quantity)}`),
    steps: calculation.explanation.map(({ label, formula, terms, result, rule }) => {
      const put = terms
        .map(({ symbol, quantity }) => `${symbol} ${formatQuantity(quantity, STYLE)}`)
        .join(', ');
      return `${label}: ${formula}${put === '' ? '' : ` with ${put}`} gives ${write(result)} [${rule.kind}: ${rule.says}]`;
    }),
    notes: calculation.notes.map((note) => `${note.kind}: ${formatSentence(note, STYLE)}`),
  };
  return { calculator: calculator.name, version: calculator.version, input, words, ...calculation };
}

function problemLine(problems: readonly FieldProblem[]): string {
  const [first] = problems;
  const others = problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
  return `read ${first?.read ?? 'nothing'}, expected ${first?.expected ?? 'a group of fields'}${others}`;
}

function refusalLine(refusal: Refusal, raw: unknown): string {
  return `read ${clipRead(JSON.stringify(raw))}, no answer: ${formatSentence(refusal, STYLE)}`;
}

/** Undefined when the text is not JSON, which has no undefined itself. */
function parseJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

function refuse(name: string, path: FieldProblem['path'], line: string): number {
  const field = path.length === 0 ? '' : `${path.join('.')}: `;
  process.stderr.write(`${name}: ${field}${line}`.replace(/\s+/g, ' ') + '\n');
  return 2;
}

function print(value: object): number {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
  return 0;
}

process.exitCode = main(process.argv.slice(2));
