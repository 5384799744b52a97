import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { expect, test } from 'vitest';
import type { PartialDate } from '#core/units/partial-date';
import { BoughtDayField } from '#renderer/features/stash/bought-day-field';

function Trial({ start = null }: { readonly start?: PartialDate | null }) {
  const [value, setValue] = useState(start);
  return (
    <>
      <BoughtDayField value={value} onChange={setValue} />
      <output>{value ?? 'nothing'}</output>
    </>
  );
}

const known = () => screen.getByRole('combobox', { name: 'When bought' });
const held = () => screen.getByRole('status').textContent;

test('the day is not known unless the maker says otherwise', async () => {
  render(<Trial />);
  expect(known()).toHaveDisplayValue('Not known');
  await userEvent.selectOptions(known(), 'In a year');
  const year = screen.getByRole('textbox', { name: /Year bought/ });
  await userEvent.clear(year);
  await userEvent.type(year, '2019');
  await userEvent.tab();
  expect(held()).toBe('2019');
  await userEvent.selectOptions(known(), 'On a day');
  expect(held()).toMatch(/^\d{4}-\d\d-\d\d$/);
  await userEvent.selectOptions(known(), 'Not known');
  expect(held()).toBe('nothing');
});

test('a month is shown as a month, and clearing it asks for a month still', async () => {
  render(<Trial start={'2024-03' as PartialDate} />);
  expect(screen.getByLabelText('Bought in')).toHaveValue('2024-03');
  await userEvent.clear(screen.getByLabelText('Bought in'));
  expect(held()).toBe('nothing');
  expect(known()).toHaveDisplayValue('In a month');
});
