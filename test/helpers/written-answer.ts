import type { Calculation } from '#core/calculators/calculator';
import type { DiagramPart } from '#core/calculators/diagram';
import { formatExactQuantity, formatQuantity, type QuantityStyle } from '#core/calculators/format-quantity';
import type { Note, Quantity } from '#core/calculators/explanation';
import { UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';

const INCH: QuantityStyle = {
  display: { system: 'inch', inchStep: 16 },
  currency: currencyFromCode('USD'),
  locale: 'en-US',
};

/** A whole answer as lines a person can check by hand: figures, steps with the numbers put in, tables, notes, drawing. */
export function writtenAnswer(calculation: Calculation): Readonly<Record<string, readonly string[]>> {
  return {
    figures: calculation.figures.map(({ label, quantity }) => `${label}: ${written(quantity)}`),
    steps: calculation.explanation.map(({ label, formula, terms, result, rule }) => {
      const put = terms.map(({ symbol, quantity }) => `${symbol} = ${written(quantity)}`).join('; ');
      return [label, formula, put, written(result), rule.kind].join(' | ');
    }),
    tables: calculation.tables.flatMap(({ rows }) => rows.map((row) => row.map(written).join(' | '))),
    notes: calculation.notes.map(writtenNote),
    drawing: calculation.diagram === null ? [] : calculation.diagram.parts.map(writtenPart),
  };
}

/** Its kind and the quantities in it; the words are read by people. */
function writtenNote({ kind, values }: Note): string {
  const put = Object.entries(values).map(([name, quantity]) => `${name} = ${written(quantity)}`);
  return put.length === 0 ? kind : `${kind}: ${put.join('; ')}`;
}

function written(quantity: Quantity): string {
  const exact = formatExactQuantity(quantity, INCH);
  return exact === null ? formatQuantity(quantity, INCH) : `${formatQuantity(quantity, INCH)} (${exact})`;
}

/** Places in inches, to three decimals. */
function writtenPart(part: DiagramPart): string {
  const inches = (units: number) => String(Number((units / UNITS_PER_INCH).toFixed(3)));
  const at = ({ x, y }: { readonly x: number; readonly y: number }) => `${inches(x)},${inches(y)}`;
  const degrees = (angle: number) => String(Number(angle.toFixed(3)));
  switch (part.part) {
    case 'polygon':
      return `${part.tone} ${part.points.map(at).join(' ')}`;
    case 'line':
      return `${part.tone} line ${at(part.from)} ${at(part.to)}`;
    case 'circle':
      return `${part.tone} circle ${at(part.center)} r ${inches(part.radius)}`;
    case 'ellipse':
      return `${part.tone} ellipse ${at(part.center)} ${inches(part.radiusX)} × ${inches(part.radiusY)}`;
    case 'arc':
      return `${part.tone} arc ${at(part.center)} r ${inches(part.radius)} ${degrees(part.fromDegrees)}° to ${degrees(part.toDegrees)}°`;
    case 'label':
      return `label ${at(part.at)} ${part.text}`;
    case 'dimension':
      return `dimension ${at(part.from)} ${at(part.to)} off ${inches(part.offset)}: ${inches(part.length)}`;
  }
}
