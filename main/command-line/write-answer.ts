import type { Calculator } from '#core/calculators/calculator';
import type { Answer } from '#core/calculators/complete-input';
import type { Quantity, Table } from '#core/calculators/explanation';
import {
  formatExactQuantity,
  formatInline,
  formatQuantity,
  formatSentence,
  type QuantityStyle,
} from '#core/calculators/format-quantity';

/** The answer as data, and in the words that screen and paper show. */
export function answerAsData(calculator: Calculator, { input, calculation }: Answer, style: QuantityStyle) {
  const words = {
    figures: calculation.figures.map(({ label, quantity }) => `${label}: ${withExact(quantity, style)}`),
    steps: calculation.explanation.map(({ label, formula, terms, result, rule }) => {
      const put = terms
        .map(({ symbol, quantity }) => `${symbol} ${formatInline(quantity, style)}`)
        .join(', ');
      const gives = withExact(result, style);
      return `${label}: ${formula}${put === '' ? '' : ` with ${put}`} gives ${gives} [${rule.kind}: ${rule.says}]`;
    }),
    notes: calculation.notes.map((note) => `${note.kind}: ${formatSentence(note, style)}`),
  };
  return { calculator: calculator.name, version: calculator.version, input, words, ...calculation };
}

/** The answer as the screen shows it, without its drawing: question, figures, tables, working, notes. */
export function answerAsText(calculator: Calculator, answer: Answer, style: QuantityStyle): string {
  const { words, tables } = answerAsData(calculator, answer, style);
  const parts = [
    [calculator.title, calculator.question],
    words.figures,
    ...tables.map((table) => tableLines(table, style)),
    ['Working', ...words.steps],
    words.notes,
  ];
  return parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n');
}

function withExact(quantity: Quantity, style: QuantityStyle): string {
  const exact = formatExactQuantity(quantity, style);
  return `${formatQuantity(quantity, style)}${exact === null ? '' : ` (exactly ${exact})`}`;
}

/** The title, then the heads and rows with every column as wide as its widest cell. */
function tableLines({ title, columns, rows }: Table, style: QuantityStyle): readonly string[] {
  const cells = [columns, ...rows.map((row) => row.map((quantity) => formatInline(quantity, style)))];
  const widths = columns.map((_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0)));
  const lines = cells.map((row) => row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  '));
  return [title, ...lines.map((line) => line.trimEnd())];
}
