import type { Measurements } from '#core/domain/measurements';
import type { FieldProblem } from '#core/field-problem';
import { failure, type Result, success } from '#core/result';
import type { LengthUnit } from '#core/units/length-unit';
import type { UnitSystem } from '#core/units/unit-system';
import type { Calculation, Calculator, Refusal } from './calculator';
import { describeRead } from './read-field';
import { readInput } from './read-input';

interface CompletedInput {
  /** Checked, so `calculate` accepts it. */
  readonly input: object;
  /** The fields the maker set, in whole units, so that they mean the same whatever units are shown later. */
  readonly ownInput: object;
}

/** The unit of a number typed into a length field without one. */
export function bareUnitOf(system: UnitSystem): LengthUnit {
  return system === 'inch' ? 'in' : 'cm';
}

/** The project's input with each field that the maker set put in its place, checked by the schema. */
export function completeInput(
  calculator: Calculator,
  measurements: Measurements,
  ownInput: unknown,
): Result<CompletedInput, readonly FieldProblem[]> {
  const isGroup = typeof ownInput === 'object' && ownInput !== null && !Array.isArray(ownInput);
  if (!isGroup) return failure([{ path: [], read: describeRead(ownInput), expected: 'a group of fields' }]);
  const fromProject = Object.entries(calculator.fromProject(measurements));
  const merged = Object.fromEntries([...fromProject, ...Object.entries(ownInput)]);
  const input = readInput(calculator.input, merged, bareUnitOf(measurements.settings.unitSystem));
  if (!input.ok) return input;
  const own = Object.entries(input.value).filter(([name]) => Object.hasOwn(ownInput, name));
  return success({ input: input.value, ownInput: Object.fromEntries(own) });
}

type AnswerFailure =
  | { readonly code: 'invalid-input'; readonly fields: readonly FieldProblem[] }
  | { readonly code: 'refused'; readonly refusal: Refusal };

export interface Answer extends CompletedInput {
  readonly calculation: Calculation;
}

/** Completes and checks the input, then calculates: the only way from typed fields to an answer. */
export function answerCalculator(
  calculator: Calculator,
  measurements: Measurements,
  ownInput: unknown,
): Result<Answer, AnswerFailure> {
  const completed = completeInput(calculator, measurements, ownInput);
  if (!completed.ok) return failure({ code: 'invalid-input', fields: completed.error });
  const calculation = calculator.calculate(completed.value.input);
  if (!calculation.ok) return failure({ code: 'refused', refusal: calculation.error });
  return success({ ...completed.value, calculation: calculation.value });
}

/** The stored parts that decide whether a saved answer is out of date. */
interface SavedAnswer {
  readonly version: number;
  readonly input: unknown;
  readonly ownInput: unknown;
}

/**
 * Whether the project no longer gives the saved answer: its calculator has a newer version, its own fields no longer read, or the
 * project gives a different answer now. A change that the answer does not depend on leaves it up to date; the drawing, which shows
 * the whole project, is not compared.
 */
export function isOutOfDate(saved: SavedAnswer, calculator: Calculator, measurements: Measurements): boolean {
  if (saved.version !== calculator.version) return true;
  const now = completeInput(calculator, measurements, saved.ownInput);
  if (!now.ok) return true;
  return !isSameData(now.value.input, saved.input) && !isSameAnswer(calculator, now.value.input, saved.input);
}

function isSameAnswer(calculator: Calculator, input: object, savedInput: unknown): boolean {
  const before = readInput(calculator.input, savedInput, 'in');
  if (!before.ok) return false;
  const [one, other] = [calculator.calculate(input), calculator.calculate(before.value)];
  return one.ok && other.ok && isSameData({ ...one.value, diagram: null }, { ...other.value, diagram: null });
}

/** Deep equality of plain data; the order of fields does not matter. */
export function isSameData(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const [first, second] = [Object.entries(one), new Map(Object.entries(other))];
  return (
    first.length === second.size &&
    first.every(([name, value]) => second.has(name) && isSameData(value, second.get(name)))
  );
}
