import { describe, expect, test } from 'vitest';
import { patchSizeInput } from '#core/calculators/patches/patch-size/input';
import { patchSize } from '#core/calculators/patches/patch-size/patch-size';
import type { UnitWithFabrics } from '#core/calculators/patches/patch-size/unit-fabrics';
import { patchUnits, planUnit, unitSizesField } from '#core/calculators/patches/patch-units';
import { describeSchema } from '#core/domain/describe-schema';
import { answerOf, geese, inches, patchInput } from './bench-input';

const examples = unitSizesField.options.map((option) =>
  unitSizesField.parse((option.meta()?.['examples'] as readonly unknown[] | undefined)?.[0]),
);

/** The fields of a unit that name a fabric. */
function fabricFields(kind: string) {
  const form = describeSchema(patchSizeInput);
  const unit = form.form === 'group' ? form.fields.find(({ key }) => key === 'unit')?.field : undefined;
  const variants = unit?.form === 'one-of' ? unit.variants : [];
  const fields = variants.find(({ value }) => value === kind)?.fields ?? [];
  return fields.filter(({ field }) => field.form === 'text' && field.isFabricName);
}

describe('the fabrics of a unit', () => {
  test.each(examples.map((sizes) => [sizes.unit, sizes] as const))(
    '%s: one field for each',
    (kind, sizes) => {
      const { patches } = planUnit(sizes, inches(1 / 4));
      const roles = new Set(patches.filter(({ source }) => source !== 'sewn').map(({ role }) => role));
      const named = new Set(Object.keys(patchUnits[kind].fabrics));
      // A border has cornerstones only where its corners ask for them.
      expect([...roles].filter((role) => !named.has(role))).toEqual([]);
      expect(fabricFields(kind).map(({ key }) => key)).toEqual(
        ['first', 'second', 'third'].filter((role) => named.has(role)).map((role) => `${role}Fabric`),
      );
    },
  );

  test('are named by what they are for', () => {
    expect(fabricFields('flying-geese').map(({ field }) => [field.title, field.help])).toEqual([
      ['First fabric', 'For the geese. Choose it from your stash, or name one to buy.'],
      ['Second fabric', 'For the background. Choose it from your stash, or name one to buy.'],
    ]);
  });

  test('that were chosen are the ones to cut and to buy; one without a name keeps its place', () => {
    const unit: UnitWithFabrics = { ...geese(inches(2)), firstFabric: ' Rust leaves ' };
    const input = patchInput(unit, { count: 8 });
    const answer = answerOf(unit, { count: 8 });
    expect(answer.details.patchList.map(({ fabric, count }) => [fabric, count])).toEqual([
      ['Rust leaves', 2],
      ['Second fabric', 8],
    ]);
    const needs = patchSize.needs?.(input, answer.details, inches(42)) ?? [];
    expect(needs.map(({ name }) => name)).toEqual(['Rust leaves', 'Second fabric']);
    const labels = answer.figures.map(({ label }) => label);
    expect(labels).toEqual(expect.arrayContaining(['Fabric, Rust leaves', 'Fabric, second fabric']));
  });

  test('that are one fabric are added up', () => {
    const apart = answerOf(geese(inches(2)), { count: 8 }).details.fabricLengths;
    const unit = { ...geese(inches(2)), firstFabric: 'Rust leaves', secondFabric: 'Rust leaves' };
    const both = answerOf(unit, { count: 8 }).details.fabricLengths;
    expect(both).toEqual([
      { fabric: 'Rust leaves', length: apart.reduce((sum, { length }) => sum + length, 0) },
    ]);
  });

  test('change nothing in an answer saved before they could be named', () => {
    const saved = JSON.parse(JSON.stringify(patchInput(geese(inches(2))))) as unknown;
    const read = patchSizeInput.parse(saved);
    expect(patchSize.calculate(read)).toEqual(patchSize.calculate(patchInput(geese(inches(2)))));
  });
});
