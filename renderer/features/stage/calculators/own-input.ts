import { isSameData } from '#core/calculators/complete-input';

/**
 * The part of a calculator’s input that the maker set: the fields of the top level whose value differs from the project’s. A field
 * set back to the project’s value follows the project again.
 */
export function ownPart(
  value: Readonly<Record<string, unknown>>,
  fromProject: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(value).filter(([name, entered]) => !isSameData(entered, fromProject[name])),
  );
}
