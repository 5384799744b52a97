import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, it } from 'vitest';
import { GRAMS_PER_OUNCE } from '#core/units/format-weight';
import { WeightField } from '#renderer/ui/fields/weight-field';

function Host() {
  const [grams, setGrams] = useState<number | null>(300);
  return (
    <>
      <WeightField label="Packing" value={grams} onCommit={setGrams} minimum={0} maximum={20_000} />
      <output>{grams ?? 'none'}</output>
    </>
  );
}

async function typed(text: string) {
  render(<Host />);
  const field = screen.getByRole('textbox', { name: /^Packing/ });
  await userEvent.clear(field);
  await userEvent.type(field, text);
  await userEvent.tab();
  return { field, kept: Number(screen.getByRole('status').textContent) };
}

describe('a weight field', () => {
  it('shows grams that are no whole ounces as grams', () => {
    render(<Host />);
    expect(screen.getByRole('textbox', { name: /^Packing/ })).toHaveValue('300 g');
  });

  it.each([
    ['11 oz', 11 * GRAMS_PER_OUNCE, '11 oz'],
    ['1½ lb', 24 * GRAMS_PER_OUNCE, '1 lb 8 oz'],
    ['7', 7 * GRAMS_PER_OUNCE, '7 oz'],
    ['250 g', 250, '250 g'],
  ])('reads %s on leaving and writes it plainly', async (text, grams, shown) => {
    const { field, kept } = await typed(text);
    expect(kept).toBeCloseTo(grams, 3);
    expect(field).toHaveValue(shown);
  });

  it.each([
    ['heavy', /“heavy” could not be read as a weight.*6 oz/],
    ['50 lb', /44 lb 1 oz or less/],
  ])('keeps %s, says what is wrong, and does not change the value', async (text, words) => {
    const { field, kept } = await typed(text);
    expect(field).toHaveValue(text);
    expect(field).toHaveAccessibleDescription(words);
    expect(kept).toBe(300);
  });
});
