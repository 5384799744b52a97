import { z } from 'zod';
import { textField, withDefault } from '#core/domain/fields';
import type { FabricRole } from '../patch-unit';
import { patchUnits, type UnitSizes, unitSizesField } from '../patch-units';

/** The fabric of each role by its name in the stash, or the name of one to buy; empty for one that has no name yet. */
interface UnitFabrics {
  readonly firstFabric?: string;
  readonly secondFabric?: string;
  readonly thirdFabric?: string;
}

export type UnitWithFabrics = UnitSizes & UnitFabrics;

/** What a fabric without a name is called, in the form and in the answer. */
const ROLE_NAMES: Readonly<Record<FabricRole, string>> = {
  first: 'First fabric',
  second: 'Second fabric',
  third: 'Third fabric',
};

const ROLE_FIELDS: Readonly<Record<FabricRole, keyof UnitFabrics>> = {
  first: 'firstFabric',
  second: 'secondFabric',
  third: 'thirdFabric',
};

const ROLES: readonly FabricRole[] = ['first', 'second', 'third'];

/** The sizes of any unit, and for each of its fabrics which one it is. */
export const unitWithFabricsField = z.discriminatedUnion(
  'unit',
  // The map loses which option is which, but not that each has its literal.
  unitSizesField.options.map(withFabrics) as unknown as [z.core.$ZodTypeDiscriminable],
) as unknown as z.ZodType<UnitWithFabrics, UnitWithFabrics>;

function withFabrics(option: (typeof unitSizesField.options)[number]) {
  const sizes = option.unwrap() as z.ZodObject;
  const [kind] = [...option.unwrap().shape.unit.values];
  if (kind === undefined) throw new RangeError('A unit has no kind');
  const { fabrics } = patchUnits[kind];
  const fields = ROLES.flatMap((role) => {
    const isFor = fabrics[role];
    return isFor === undefined ? [] : [[ROLE_FIELDS[role], fabricField(role, isFor)] as const];
  });
  return sizes
    .extend(Object.fromEntries(fields))
    .readonly()
    .meta(option.meta() ?? {});
}

function fabricField(role: FabricRole, isFor: string) {
  const field = textField({
    title: ROLE_NAMES[role],
    help: `For ${isFor}. Choose it from your stash, or name one to buy.`,
    maximum: 120,
    isFabricName: true,
  });
  return withDefault(field, '');
}

/** The name of the fabric that patches of a role are cut from. */
export function fabricOfRole(unit: UnitWithFabrics, role: FabricRole): string {
  const name = unit[ROLE_FIELDS[role]]?.trim() ?? '';
  return name === '' ? ROLE_NAMES[role] : name;
}

/** The name of a fabric within a sentence: `first fabric`, but `Rust leaves`. */
export function asCommon(fabric: string): string {
  return Object.values(ROLE_NAMES).includes(fabric) ? fabric.toLowerCase() : fabric;
}
