import type { Calculation, Calculator } from '#core/calculators/calculator';
import type { DiagramPart } from '#core/calculators/diagram';
import { formatExactQuantity, formatQuantity, type QuantityStyle } from '#core/calculators/format-quantity';
import type { Note, Quantity } from '#core/calculators/explanation';
import type { Need, NeededPatch } from '#core/domain/need';
import { lengthFromInches, UNITS_PER_INCH } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';

type NeedAmount = Need['amount'];

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

/** What an answer puts on the shopping list and hands to the cutting plan, in inches. */
export function writtenFabric(
  calculator: Calculator,
  input: object,
  { details }: Calculation,
): Readonly<Record<string, readonly string[]>> {
  const needs = calculator.needs?.(input, details, lengthFromInches(42)) ?? [];
  const cuts = calculator.cuts?.(input, details) ?? [];
  return {
    needs: needs.map(({ name, kind, amount, fabricWidth, extraPercent, package: sold }) => {
      const from = `${inchesOf(fabricWidth)} in wide + ${String(Number(extraPercent.toFixed(3)))}%`;
      return [name, kind, writtenAmount(amount), from, ...(sold === null ? [] : [sold.name])].join(' | ');
    }),
    cuts: cuts.map(({ fabric, ...patch }) => `${fabric} | ${writtenPatch(patch)}`),
  };
}

function writtenAmount(amount: NeedAmount): string {
  switch (amount.measure) {
    case 'patches':
      return amount.patches.map(writtenPatch).join(', ');
    case 'strips':
      return `strips ${inchesOf(amount.strip)} for ${inchesOf(amount.needed)}, a join takes ${inchesOf(amount.cost)}`;
    case 'thread':
    case 'notion':
      return inchesOf(amount.length);
  }
}

function writtenPatch({ width, length, count, mayTurn }: NeededPatch): string {
  return `${String(count)} of ${inchesOf(width)} × ${inchesOf(length)}${mayTurn ? '' : ', not turned'}`;
}

function inchesOf(units: number): string {
  return String(Number((units / UNITS_PER_INCH).toFixed(3)));
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
  const at = ({ x, y }: { readonly x: number; readonly y: number }) => `${inchesOf(x)},${inchesOf(y)}`;
  const degrees = (angle: number) => String(Number(angle.toFixed(3)));
  switch (part.part) {
    case 'polygon':
      return `${part.tone} ${part.points.map(at).join(' ')}`;
    case 'line':
      return `${part.tone} line ${at(part.from)} ${at(part.to)}`;
    case 'circle':
      return `${part.tone} circle ${at(part.center)} r ${inchesOf(part.radius)}`;
    case 'ellipse':
      return `${part.tone} ellipse ${at(part.center)} ${inchesOf(part.radiusX)} × ${inchesOf(part.radiusY)}`;
    case 'arc':
      return `${part.tone} arc ${at(part.center)} r ${inchesOf(part.radius)} ${degrees(part.fromDegrees)}° to ${degrees(part.toDegrees)}°`;
    case 'label':
      return `label ${at(part.at)} ${part.text}`;
    case 'dimension':
      return `dimension ${at(part.from)} ${at(part.to)} off ${inchesOf(part.offset)}: ${inchesOf(part.length)}`;
  }
}
