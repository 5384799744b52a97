import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { Calculation, Calculator } from '#core/calculators/calculator';
import { answerCalculator, completeInput } from '#core/calculators/complete-input';
import type { Diagram } from '#core/calculators/diagram';
import type { Quantity, Sentence } from '#core/calculators/explanation';
import {
  formatExactQuantity,
  formatQuantity,
  formatSentence,
  type QuantityStyle,
} from '#core/calculators/format-quantity';
import { readInput } from '#core/calculators/read-input';
import { calculatorByName, calculators, calculatorsForStage } from '#core/calculators/registry';
import type { Measurements } from '#core/domain/measurements';
import { stageKindSchema } from '#core/domain/stage';
import { STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches } from '#core/units/length';
import { currencyFromCode } from '#core/units/money';
import { anyMeasurements, METRIC_SETTINGS } from '#test/helpers/measurements';

const inches = lengthFromInches;
const styles: readonly QuantityStyle[] = [
  { display: { system: 'inch', inchStep: 8 }, currency: currencyFromCode('USD'), locale: 'en-US' },
  { display: { system: 'metric', inchStep: 8 }, currency: currencyFromCode('EUR'), locale: 'de-DE' },
];

const projects: readonly Measurements[] = [
  {
    outline: { shape: 'hexagon', acrossFlats: inches(48) },
    hole: { diameter: inches(6.5) },
    hasSlit: true,
    settings: STARTING_SETTINGS,
  },
  {
    outline: { shape: 'circle', diameter: inches(24) },
    hole: { diameter: inches(4) },
    hasSlit: false,
    settings: METRIC_SETTINGS,
  },
  {
    outline: { shape: 'rectangle', width: inches(60), length: inches(80) },
    hole: null,
    hasSlit: false,
    settings: STARTING_SETTINGS,
  },
  {
    outline: {
      shape: 'sides',
      sides: [30, 28, 31, 29].map((side) => inches(side)),
      width: inches(31),
      length: inches(31),
    },
    hole: null,
    hasSlit: false,
    settings: METRIC_SETTINGS,
  },
];

function quantitiesOf(calculation: Calculation): readonly Quantity[] {
  return [
    ...calculation.figures.map(({ quantity }) => quantity),
    ...calculation.tables.flatMap(({ rows }) => rows.flat()),
    ...calculation.explanation.flatMap(({ terms, result }) => [
      ...terms.map(({ quantity }) => quantity),
      result,
    ]),
    ...calculation.notes.flatMap(({ values }) => Object.values(values)),
  ];
}

function expectSound(calculation: Calculation): void {
  expect(calculation.figures.length).toBeGreaterThan(0);
  expect(calculation.explanation.length).toBeGreaterThan(0);
  for (const style of styles) {
    for (const quantity of quantitiesOf(calculation)) {
      const written = `${formatQuantity(quantity, style)} ${formatExactQuantity(quantity, style) ?? ''}`;
      expect(written).not.toMatch(/NaN|Infinity|undefined/);
    }
    for (const note of calculation.notes) expectWhole(note, style);
  }
  for (const { columns, rows } of calculation.tables) {
    for (const row of rows) expect(row.length).toBe(columns.length);
  }
  for (const { label, formula, rule } of calculation.explanation) {
    for (const words of [label, formula, rule.says]) expect(words.trim()).not.toBe('');
  }
  if (calculation.diagram !== null) expectDrawn(calculation.diagram);
  expect(JSON.parse(JSON.stringify(calculation))).toEqual(calculation);
}

/** Every place in the sentence has its quantity and every quantity its place. */
function expectWhole(sentence: Sentence, style: QuantityStyle): void {
  expect(formatSentence(sentence, style)).not.toMatch(/[{}]/);
  for (const name of Object.keys(sentence.values)) expect(sentence.says).toContain(`{${name}}`);
}

function expectDrawn({ width, height, parts }: Diagram): void {
  expect(width > 0 && height > 0 && Number.isFinite(width + height)).toBe(true);
  expect(parts.length).toBeGreaterThan(0);
  const inside = ({ x, y }: { readonly x: number; readonly y: number }) => {
    const slack = Math.max(width, height) / 1_000;
    expect(x >= -slack && x <= width + slack && y >= -slack && y <= height + slack).toBe(true);
  };
  for (const part of parts) {
    if (part.part === 'polygon') part.points.forEach(inside);
    else if (part.part === 'line' || part.part === 'dimension') [part.from, part.to].forEach(inside);
    else inside(part.part === 'label' ? part.at : part.center);
  }
}

function shapeOf(schema: z.core.$ZodType): Readonly<Record<string, z.core.$ZodType>> {
  if (schema instanceof z.ZodObject) return schema.shape;
  return schema instanceof z.ZodReadonly ? shapeOf(schema.def.innerType) : {};
}

function titleOf(schema: z.core.$ZodType): string {
  const title = z.globalRegistry.get(schema)?.title ?? '';
  if (title !== '') return title;
  return schema instanceof z.ZodNullable || schema instanceof z.ZodReadonly
    ? titleOf(schema.def.innerType)
    : '';
}

/** The same data with every field of every group in reverse order. */
function reordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reordered);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, inside]) => [name, reordered(inside)]),
  );
}

describe('the list of calculators', () => {
  it('has each name once, in kebab-case, and finds it', () => {
    const names = calculators.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) {
      expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(calculatorByName(name)?.name).toBe(name);
    }
    expect(calculatorByName('toString')).toBeUndefined();
  });

  it('gives each kind of stage its own', () => {
    for (const kind of stageKindSchema.options) {
      for (const calculator of calculatorsForStage({ kind, calculators: null }))
        expect(calculator.stageKinds).toContain(kind);
    }
    for (const { stageKinds } of calculators) expect(stageKinds.length).toBeGreaterThan(0);
  });

  it('gives a stage those that were chosen for it instead, whatever its kind, and leaves out a name it does not know', () => {
    const [first, second] = calculators.filter(({ stageKinds }) => !stageKinds.includes('piecing'));
    const chosen = [second?.name ?? '', 'no-such-thing', first?.name ?? ''];
    expect(calculatorsForStage({ kind: 'piecing', calculators: chosen })).toEqual([first, second]);
    expect(calculatorsForStage({ kind: 'piecing', calculators: [] })).toEqual([]);
    expect(calculatorsForStage({ kind: 'piecing', calculators: null })).not.toEqual([]);
  });
});

describe.each(calculators.map((calculator) => [calculator.name, calculator] as const))(
  '%s',
  (_name, calculator: Calculator) => {
    it('has words for itself and for every field', () => {
      expect(calculator.title).not.toBe('');
      expect(calculator.question).toMatch(/\?$/);
      expect(Number.isInteger(calculator.version) && calculator.version >= 1).toBe(true);
      for (const [field, schema] of Object.entries(shapeOf(calculator.input)))
        expect(titleOf(schema), field).not.toBe('');
    });

    it.each(projects.map((project) => [project.outline.shape, project] as const))(
      'answers for a %s as sound data',
      (_shape, project) => {
        const answer = answerCalculator(calculator, project, {});
        if (answer.ok) expectSound(answer.value.calculation);
        else {
          expect(answer.error).toMatchObject({ code: 'refused' });
          if (answer.error.code === 'refused')
            for (const style of styles) expectWhole(answer.error.refusal, style);
        }
      },
    );

    it('reads its own input back, gives the same answer again, and leaves the input as it was', () => {
      const input = calculator.fromProject(projects[0]!);
      const before = JSON.stringify(input);
      expect(readInput(calculator.input, JSON.parse(before), 'in')).toEqual({ ok: true, value: input });
      const answer = calculator.calculate(input);
      expect(calculator.calculate(structuredClone(input))).toEqual(answer);
      expect(calculator.calculate(reordered(input) as object)).toEqual(answer);
      expect(JSON.stringify(input)).toBe(before);
    });

    it('has a complete input for every project, and an answer or a refusal in words', () => {
      fc.assert(
        fc.property(anyMeasurements, (measurements) => {
          const completed = completeInput(calculator, measurements, {});
          expect(completed.ok ? [] : completed.error).toEqual([]);
          if (!completed.ok) return;
          const answer = calculator.calculate(completed.value.input);
          if (answer.ok) expectSound(answer.value);
          else for (const style of styles) expectWhole(answer.error, style);
        }),
        { numRuns: 25 },
      );
    });
  },
);
