import type { Measurements } from '#core/domain/measurements';
import type { FieldProblem } from '#core/field-problem';
import { failure, type Result, success } from '#core/result';
import type { LengthUnit } from '#core/units/length-unit';
import type { UnitSystem } from '#core/units/unit-system';
import type { Calculation, Calculator, Refusal } from './calculator';
import { describeRead } from './read-field';
import { readInput } from './read-input';

export interface CompletedInput {
  /** Checked: it may be passed to `calculate`. */
  readonly input: object;
  /** The maker's own part of it, read into whole units, so that it means the same whatever units are shown later. */
  readonly ownInput: object;
}

/** What a bare number typed into a length field is measured in. */
export function bareUnitOf(system: UnitSystem): LengthUnit {
  return system === 'inch' ? 'in' : 'cm';
}

/** The project's input with the maker's own fields laid over it, whole fields at the top level, then read by the schema. */
export function completeInput(
  calculator: Calculator,
  measurements: Measurements,
  ownInput: unknown,
): Result<CompletedInput, readonly FieldProblem[]> {
  const isGroup = typeof ownInput === 'object' && ownInput !== null && !Array.isArray(ownInput);
  if (!isGroup) return failure([{ path: [], read: describeRead(ownInput), expected: 'a group of fields' }]);
  const fromProject = Object.entries(calculator.fromProject(measurements));
  const laidOver = Object.fromEntries([...fromProject, ...Object.entries(ownInput)]);
  const input = readInput(calculator.input, laidOver, bareUnitOf(measurements.settings.unitSystem));
  if (!input.ok) return input;
  const own = Object.entries(input.value).filter(([name]) => Object.hasOwn(ownInput, name));
  return success({ input: input.value, ownInput: Object.fromEntries(own) });
}

export type AnswerFailure =
  | { readonly code: 'invalid-input'; readonly fields: readonly FieldProblem[] }
  | { readonly code: 'refused'; readonly refusal: Refusal };

export interface Answer extends CompletedInput {
  readonly calculation: Calculation;
}

/** Completes the input, checks it and works out the answer: the one way from anything typed to a result. */
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

/** What is stored of a kept answer and decides whether it still holds. */
export interface SavedAnswer {
  readonly version: number;
  readonly input: unknown;
  readonly ownInput: unknown;
}

/**
 * Whether a kept answer no longer follows from the project: its calculator has risen, its own part no longer reads, or the
 * project now gives another answer. A change of the project and back again leaves it up to date, and so does a change that the
 * answer does not hang on, such as the hole's size where the slit is not counted; a drawing of the whole piece says nothing new.
 */
export function isOutOfDate(kept: SavedAnswer, calculator: Calculator, measurements: Measurements): boolean {
  if (kept.version !== calculator.version) return true;
  const now = completeInput(calculator, measurements, kept.ownInput);
  if (!now.ok) return true;
  return !isSameData(now.value.input, kept.input) && !isSameAnswer(calculator, now.value.input, kept.input);
}

function isSameAnswer(calculator: Calculator, input: object, keptInput: unknown): boolean {
  const before = readInput(calculator.input, keptInput, 'in');
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
