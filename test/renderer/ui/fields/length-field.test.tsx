import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, it, vi } from 'vitest';
import { type Length, lengthFromInches, lengthFromMillimeters } from '#core/units/length';
import { Button } from '#renderer/ui/page/button';
import { Form } from '#renderer/ui/fields/form';
import { LengthField } from '#renderer/ui/fields/length-field';

function Host({ start = null, onSubmit = () => undefined, isOptional = false }: HostProps) {
  const [value, setValue] = useState<Length | null>(start);
  return (
    <Form onSubmit={() => onSubmit(value)}>
      <LengthField
        label="Side"
        value={value}
        onCommit={setValue}
        isOptional={isOptional}
        minimum={lengthFromInches(1)}
        maximum={lengthFromInches(100)}
      />
      <output>{value ?? 'none'}</output>
      <Button type="submit">Keep</Button>
    </Form>
  );
}

interface HostProps {
  readonly start?: Length | null;
  readonly onSubmit?: (value: Length | null) => void;
  readonly isOptional?: boolean;
}

const field = () => screen.getByRole('textbox', { name: /^Side/ });
const kept = () => screen.getByRole('status').textContent;

describe('a length field', () => {
  it.each([
    ['9 1/2', lengthFromInches(9.5)],
    ['24 cm', lengthFromMillimeters(240)],
    ['1 1/4 yd', lengthFromInches(45)],
  ])('reads %s on leaving', async (text, expected) => {
    render(<Host />);
    await userEvent.type(field(), text);
    await userEvent.tab();
    expect(kept()).toBe(String(expected));
    expect(field()).toHaveAttribute('aria-invalid', 'false');
  });

  it('keeps text it cannot read, shows the problem, and does not change the value', async () => {
    render(<Host start={lengthFromInches(12)} />);
    await userEvent.clear(field());
    await userEvent.type(field(), 'twelve and a bit');
    await userEvent.tab();
    expect(field()).toHaveValue('twelve and a bit');
    expect(field()).toHaveAttribute('aria-invalid', 'true');
    expect(field()).toHaveAccessibleDescription(/“twelve and a bit” could not be read.*Write it like/);
    expect(kept()).toBe(String(lengthFromInches(12)));
  });

  it('brings the last value back on Escape', async () => {
    render(<Host start={lengthFromInches(12)} />);
    await userEvent.clear(field());
    await userEvent.type(field(), 'nonsense');
    await userEvent.tab();
    await userEvent.type(field(), '{Escape}');
    expect(field()).toHaveValue('12 in');
    expect(field()).toHaveAttribute('aria-invalid', 'false');
  });

  it('names the limit a length exceeds, and removes the problem once the text fits', async () => {
    render(<Host />);
    await userEvent.type(field(), '1/2');
    await userEvent.tab();
    expect(field()).toHaveAccessibleDescription('This should be 1 in or more.');
    expect(kept()).toBe('none');
    await userEvent.clear(field());
    await userEvent.type(field(), '20');
    expect(field()).toHaveAttribute('aria-invalid', 'false');
  });

  it('commits its text when Enter submits the form', async () => {
    const onSubmit = vi.fn();
    render(<Host onSubmit={onSubmit} />);
    await userEvent.type(field(), '30{Enter}');
    expect(onSubmit).toHaveBeenCalledExactlyOnceWith(lengthFromInches(30));
  });

  it('stops the form while its text cannot be read, and takes the focus', async () => {
    const onSubmit = vi.fn();
    render(<Host onSubmit={onSubmit} />);
    await userEvent.type(field(), '5 bananas');
    await userEvent.click(screen.getByRole('button', { name: 'Keep' }));
    expect(onSubmit).not.toHaveBeenCalled();
    expect(field()).toHaveFocus();
    expect(field()).toHaveValue('5 bananas');
  });

  it('stops the form when it is empty, unless it is optional', async () => {
    const onSubmit = vi.fn();
    const { rerender } = render(<Host onSubmit={onSubmit} />);
    await userEvent.click(screen.getByRole('button', { name: 'Keep' }));
    expect(onSubmit).not.toHaveBeenCalled();
    rerender(<Host onSubmit={onSubmit} isOptional />);
    await userEvent.click(screen.getByRole('button', { name: 'Keep' }));
    expect(onSubmit).toHaveBeenCalledExactlyOnceWith(null);
  });

  it('shows a problem only after the press that caused it, so that the button stays under the finger', async () => {
    render(<Host />);
    const user = userEvent.setup();
    await user.type(field(), 'nonsense');
    const button = screen.getByRole('button', { name: 'Keep' });
    await user.pointer({ keys: '[MouseLeft>]', target: button });
    expect(field()).toHaveAttribute('aria-invalid', 'false');
    await user.pointer({ keys: '[/MouseLeft]', target: button });
    await vi.waitFor(() => expect(field()).toHaveAttribute('aria-invalid', 'true'));
  });
});
