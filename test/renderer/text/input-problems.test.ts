import type { z } from 'zod';
import { describe, expect, it } from 'vitest';
import { channels } from '#core/contract/channels';
import { fieldNameOf } from '#renderer/text/input-problems';

/** Numbers and texts that the window sends and no maker types. */
const NOT_TYPED: ReadonlySet<string> = new Set([
  'calculator',
  'calculators',
  'clockStepMinutes',
  'columnTitles',
  'fabric',
  'file',
  'key',
  'limit',
  'offset',
  'position',
  'source',
  'swatch',
]);

/** Parts of an input that hold no typed field: what a plan was made from and the trees it is cut by. */
const NOT_WALKED = /^(cutting:save\.plan|workshop:change\.workshop|table:\w+\.table|shell:)/;

function typedFields(schema: z.core.$ZodType, path: readonly string[]): readonly (readonly string[])[] {
  const { def } = schema._zod as { readonly def: z.core.$ZodTypes['_zod']['def'] };
  // Every other type holds no field.
  // oxlint-disable-next-line typescript/switch-exhaustiveness-check
  switch (def.type) {
    case 'object':
      return Object.entries(def.shape).flatMap(([name, part]) => typedFields(part, [...path, name]));
    case 'readonly':
    case 'optional':
    case 'nullable':
      return typedFields(def.innerType, path);
    case 'array':
      return typedFields(def.element, path);
    case 'union':
      return def.options.flatMap((option) => typedFields(option, path));
    case 'pipe':
      return typedFields(def.in, path);
    case 'number':
      return [path];
    case 'string':
      return 'format' in def && def.format === 'uuid' ? [] : [path];
    default:
      return [];
  }
}

describe('the fields of the contract', () => {
  const paths = Object.entries(channels)
    .flatMap(([name, { input }]) => typedFields(input, [name]))
    .filter((path) => !NOT_WALKED.test(path.join('.')))
    .filter((path) => !NOT_TYPED.has(path.at(-1) ?? '') && !/Ids?$/.test(path.at(-1) ?? ''));

  it('are many', () => {
    expect(paths.length).toBeGreaterThan(100);
  });

  it.each([...new Set(paths.map((path) => path.join('.')))])('have a name to call them by: %s', (path) => {
    expect(fieldNameOf(path.split('.'))).not.toBeNull();
  });
});
