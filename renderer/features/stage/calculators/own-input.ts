/**
 * The maker's own part of a calculator's input: the top fields in which `value` differs from what the project gives. A field
 * set back to the project's value follows the project again.
 */
export function ownPart(
  value: Readonly<Record<string, unknown>>,
  fromProject: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(value).filter(
      ([name, entered]) => JSON.stringify(entered) !== JSON.stringify(fromProject[name]),
    ),
  );
}
