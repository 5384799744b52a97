import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { answerCalculator } from '#core/calculators/complete-input';
import { patchSize } from '#core/calculators/patches/patch-size/patch-size';
import { calculators } from '#core/calculators/registry';
import { calendarDateSchema } from '#core/domain/dates';
import {
  choiceField,
  countField,
  flagField,
  lengthField,
  minorField,
  numberField,
  percentField,
  textField,
  withDefault,
} from '#core/domain/fields';
import type { Measurements } from '#core/domain/measurements';
import { outlineSchema } from '#core/domain/outline';
import { settingChanges, settingsSchema, STARTING_SETTINGS } from '#core/domain/workshop';
import { lengthFromInches } from '#core/units/length';
import { describeSchema } from '#core/domain/describe-schema';
import { type PathProblem, startingValue, startingVariant } from '#renderer/ui/schema-form/schema-values';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';

const every = z.object({
  strip: lengthField({ title: 'Strip', help: 'Cut width.' }),
  count: countField({ title: 'How many', minimum: 1, maximum: 9, unit: 'strips' }),
  factor: numberField({ title: 'Factor', minimum: 0, maximum: 10 }),
  extra: percentField({ title: 'Extra', minimum: 0, maximum: 100 }),
  price: minorField({ title: 'Price', minimum: 0, maximum: 100_000 }),
  grain: choiceField(['straight', 'on-the-bias'], { title: 'Grain' }),
  washed: flagField({ title: 'Washed' }),
  label: textField({ title: 'Label' }),
  on: calendarDateSchema,
  hole: z
    .object({ diameter: lengthField({ title: 'Hole across' }) })
    .nullable()
    .meta({ title: 'It has a hole' }),
  blocks: z
    .array(z.object({ size: lengthField({ title: 'Finished size' }) }))
    .min(1)
    .max(3)
    .meta({ title: 'Blocks' }),
  outline: outlineSchema,
});

const start = {
  strip: lengthFromInches(2.5),
  count: 3,
  factor: 2,
  extra: 5,
  price: 1250,
  grain: 'straight',
  washed: false,
  label: '',
  on: '2027-02-28',
  hole: null,
  blocks: [{ size: lengthFromInches(6) }],
  outline: { shape: 'circle', diameter: lengthFromInches(40) },
};

const project: Measurements = {
  outline: { shape: 'circle', diameter: lengthFromInches(40) },
  hole: null,
  hasSlit: false,
  settings: STARTING_SETTINGS,
};

/** What the form last gave back. */
const seen: { latest: Readonly<Record<string, unknown>> } = { latest: {} };

function Host({ problems = [] }: { readonly problems?: readonly PathProblem[] }) {
  const [value, setValue] = useState<Readonly<Record<string, unknown>>>(start);
  return (
    <SchemaForm
      schema={every}
      value={value}
      onChange={(next) => {
        setValue(next);
        seen.latest = next;
      }}
      problems={problems}
    />
  );
}

const retype = async (name: string, text: string) => {
  const box = screen.getByRole('textbox', { name });
  await userEvent.clear(box);
  await userEvent.type(box, text);
  await userEvent.tab();
};

beforeEach(() => {
  seen.latest = start;
});

describe('a form drawn from a schema', () => {
  it('accepts a value of every kind', async () => {
    render(<Host />);
    await retype('Strip', '2 1/4');
    await retype('How many', '7');
    await retype('Factor', '1,5');
    await retype('Extra', '10');
    await retype('Price', '19.90');
    await retype('Label', 'For Nell');
    await userEvent.click(screen.getByRole('radio', { name: 'On the bias' }));
    await userEvent.click(screen.getByRole('checkbox', { name: 'Washed' }));
    expect(seen.latest).toMatchObject({
      strip: lengthFromInches(2.25),
      count: 7,
      factor: 1.5,
      extra: 10,
      price: 1990,
      label: 'For Nell',
      grain: 'on-the-bias',
      washed: true,
    });
    expect(every.safeParse(seen.latest).success).toBe(true);
  });

  it('refuses a count that is not whole or not within its limits, and keeps its text', async () => {
    render(<Host />);
    await retype('How many', '2.5');
    expect(screen.getByRole('textbox', { name: 'How many' })).toHaveAccessibleDescription(/not whole/);
    await retype('How many', '12');
    expect(screen.getByRole('textbox', { name: 'How many' })).toHaveValue('12');
    expect(screen.getByRole('textbox', { name: 'How many' })).toHaveAccessibleDescription(/9 or less/);
    expect(seen.latest['count']).toBe(3);
  });

  it('adds and removes a part that may be missing', async () => {
    render(<Host />);
    await userEvent.click(screen.getByRole('checkbox', { name: 'It has a hole' }));
    await retype('Hole across', '6');
    expect(seen.latest['hole']).toEqual({ diameter: lengthFromInches(6) });
    await userEvent.click(screen.getByRole('checkbox', { name: 'It has a hole' }));
    expect(seen.latest['hole']).toBeNull();
  });

  it('adds a row as a copy of the last, removes one, and respects the limits of the list', async () => {
    render(<Host />);
    const blocks = within(screen.getByRole('group', { name: 'Blocks' }));
    expect(blocks.getByRole('button', { name: 'Remove line 1' })).toBeDisabled();
    await userEvent.click(blocks.getByRole('button', { name: 'Add line 2' }));
    expect(seen.latest['blocks']).toEqual([{ size: lengthFromInches(6) }, { size: lengthFromInches(6) }]);
    await userEvent.click(blocks.getByRole('button', { name: 'Add line 3' }));
    expect(blocks.getByRole('button', { name: 'Add line 4' })).toBeDisabled();
    await userEvent.click(blocks.getByRole('button', { name: 'Remove line 2' }));
    expect(seen.latest['blocks']).toHaveLength(2);
  });

  it('changes to another variant with its own fields', async () => {
    render(<Host />);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Shape' }), 'Rectangle');
    await retype('Width', '14');
    await retype('Length', '42');
    expect(seen.latest['outline']).toEqual({
      shape: 'rectangle',
      width: lengthFromInches(14),
      length: lengthFromInches(42),
    });
  });

  it('starts a newly chosen patch with sizes that can be cut, and keeps values entered under the same name', () => {
    const described = describeSchema(patchSize.input);
    const unit = described.form === 'group' && described.fields.find(({ key }) => key === 'unit')?.field;
    if (unit === false || unit?.form !== 'one-of') throw new Error('Patches are told apart by their unit');
    const variantOf = (name: string) => unit.variants.find(({ value }) => value === name)!;
    expect(startingVariant('unit', variantOf('log-cabin'))).toEqual({
      unit: 'log-cabin',
      center: lengthFromInches(2),
      firstStrip: lengthFromInches(1),
      secondStrip: lengthFromInches(1),
      rounds: 4,
      firstFabric: '',
      secondFabric: '',
      thirdFabric: '',
    });
    const rectangle = startingVariant('unit', variantOf('rectangle'), {
      width: lengthFromInches(5),
      side: 1,
    });
    expect(rectangle).toMatchObject({ unit: 'rectangle', width: lengthFromInches(5) });
    expect(rectangle).not.toHaveProperty('side');
    for (const variant of unit.variants) {
      const own = { unit: startingVariant('unit', variant) };
      expect(answerCalculator(patchSize, project, own).ok, variant.value).toBe(true);
    }
  });

  it('shows a problem at the field of its path', () => {
    render(<Host problems={[{ path: ['blocks', 0, 'size'], words: 'Larger than the piece.' }]} />);
    expect(screen.getByRole('textbox', { name: 'Finished size' })).toHaveAccessibleDescription(
      /Larger than the piece/,
    );
    expect(screen.getByRole('textbox', { name: 'Strip' })).toHaveAttribute('aria-invalid', 'false');
  });

  it('leaves out an optional field that is emptied, and shows the value used instead', async () => {
    function Settings() {
      const [value, setValue] = useState<Readonly<Record<string, unknown>>>({
        seamAllowance: lengthFromInches(0.5),
      });
      const change = (next: Readonly<Record<string, unknown>>) => {
        setValue(next);
        seen.latest = next;
      };
      return (
        <SchemaForm schema={settingChanges} value={value} fallbacks={STARTING_SETTINGS} onChange={change} />
      );
    }
    render(<Settings />);
    await userEvent.clear(screen.getByRole('textbox', { name: 'Seam allowance' }));
    await userEvent.tab();
    expect(seen.latest).toEqual({});
    expect(screen.getByRole('textbox', { name: 'Seam allowance' })).toHaveAttribute(
      'placeholder',
      'usually 1/4 in',
    );
    expect(screen.getByRole('radio', { name: 'As usual: inches' })).toBeChecked();
    await userEvent.click(screen.getByRole('radio', { name: 'Sixteenths' }));
    expect(seen.latest).toEqual({ inchStep: 16 });
  });
});

it('starts a field that was added later with its own value, which cannot be left out', async () => {
  const later = z.object({
    lines: z
      .array(z.object({ reach: withDefault(choiceField(['one', 'all'], { title: 'Reach' }), 'all') }))
      .min(1),
  });
  const given: unknown[] = [];
  render(<SchemaForm schema={later} value={{ lines: [{}] }} onChange={(value) => given.push(value)} />);
  expect(screen.queryByText('Not chosen')).toBeNull();
  expect(screen.getByRole('radio', { name: 'All' })).toBeChecked();
  await userEvent.click(screen.getByRole('radio', { name: 'One' }));
  expect(given.at(-1)).toEqual({ lines: [{ reach: 'one' }] });
  expect(startingValue(describeSchema(later))).toEqual({ lines: [{ reach: 'all' }] });
});

describe('the description of a schema', () => {
  it('is found for every calculator and for the settings, with words for each field', () => {
    for (const schema of [settingsSchema, ...calculators.map((calculator) => calculator.input)]) {
      const described = describeSchema(schema);
      expect(described.form).toBe('group');
      const fields = described.form === 'group' ? described.fields : [];
      expect(fields.filter(({ field }) => field.title === '')).toEqual([]);
    }
  });

  it('is refused for a kind of field without a form', () => {
    expect(() => describeSchema(z.object({ odd: z.map(z.string(), z.string()) }))).toThrow(RangeError);
  });
});
