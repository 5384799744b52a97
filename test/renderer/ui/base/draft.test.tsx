import { act, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Length } from '#core/units/length';
import { forgetOtherNotebooks, NotebookContext, useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { LengthField } from '#renderer/ui/fields/length-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { DialogForm } from '#renderer/ui/page/dialog-form';
import { givenModalDialogs } from '#test/helpers/page-on-store';

interface HostProps {
  readonly notebook?: string;
  readonly record?: string;
  /** What is saved of the record. */
  readonly saved?: { readonly name: string; readonly shop: string };
}

function Host({ notebook = 'own', ...form }: HostProps) {
  return (
    <NotebookContext value={notebook}>
      <HostForm {...form} />
    </NotebookContext>
  );
}

const SAVED = { name: 'Rust', shop: 'Corner' };

function HostForm({ record = 'one', saved = SAVED }: Omit<HostProps, 'notebook'>) {
  const draft = useFormDraft(`host ${record}`);
  const [details, setDetails] = useDraftValue(draft, 'details', saved);
  const [width, setWidth] = useDraftValue<Length | null>(draft, 'width', null);
  return (
    <DialogForm draft={draft} title="Host" onSave={draft.forget} onClose={() => undefined}>
      <TextField label="Name" value={details.name} onChange={(name) => setDetails({ ...details, name })} />
      <TextField label="Shop" value={details.shop} onChange={(shop) => setDetails({ ...details, shop })} />
      <LengthField label="Width" value={width} onCommit={setWidth} isOptional />
    </DialogForm>
  );
}

const field = (name: RegExp) => screen.getByRole('textbox', { name, hidden: true });
const press = (name: string) => userEvent.click(screen.getByRole('button', { name, hidden: true }));

async function type(name: RegExp, text: string): Promise<void> {
  await userEvent.clear(field(name));
  await userEvent.type(field(name), text);
}

/** Draws the form as after a restart: nothing is left but what is stored. */
function again(form: HostProps = {}): void {
  document.body.replaceChildren();
  render(<Host {...form} />);
}

beforeEach(givenModalDialogs);

describe('what is entered in a form', () => {
  it('is there again after a restart, text that cannot be read included', async () => {
    render(<Host />);
    await type(/^Name/, 'Rust leaves');
    await type(/^Width/, '5 x');
    again();
    expect(field(/^Name/)).toHaveValue('Rust leaves');
    expect(field(/^Width/)).toHaveValue('5 x');
    await type(/^Width/, '5');
    await userEvent.tab();
    again();
    expect(field(/^Width/)).toHaveValue('5 in');
  });

  it('is not lost by Escape in a field', async () => {
    render(<Host />);
    await type(/^Width/, '5 x{Escape}');
    again();
    expect(field(/^Width/)).toHaveValue('5 x');
  });

  it('is gone once it is discarded, or saved', async () => {
    render(<Host />);
    for (const [verb, before] of [
      ['Discard what you entered', '5 x'],
      ['Save', '5'],
    ] as const) {
      await type(/^Name/, 'Rust leaves');
      await type(/^Width/, before);
      await press(verb);
      expect(field(/^Name/)).toHaveValue('Rust');
      expect(field(/^Width/)).toHaveValue('');
      expect(screen.queryByRole('button', { name: 'Discard what you entered', hidden: true })).toBeNull();
      expect(window.localStorage).toHaveLength(0);
    }
  });

  it('stays apart for each record and each notebook', async () => {
    render(<Host />);
    await type(/^Name/, 'Rust leaves');
    again({ record: 'two' });
    expect(field(/^Name/)).toHaveValue('Rust');
    again({ notebook: 'demo' });
    expect(field(/^Name/)).toHaveValue('Rust');
    again();
    expect(field(/^Name/)).toHaveValue('Rust leaves');
  });

  it('of earlier demos is deleted, and of no other notebook', async () => {
    const notebooks = ['own', 'demo 1', 'demo 2'];
    for (const notebook of notebooks) {
      again({ notebook });
      await type(/^Name/, notebook);
    }
    forgetOtherNotebooks('demo ', 'demo 2');
    const names = notebooks.map((notebook) => {
      again({ notebook });
      return (field(/^Name/) as HTMLInputElement).value;
    });
    expect(names).toEqual(['own', 'Rust', 'demo 2']);
  });

  it('takes back nothing that was changed elsewhere in the meantime', async () => {
    render(<Host />);
    await type(/^Name/, 'Rust leaves');
    again({ saved: { name: 'Rust', shop: 'Market' } });
    expect(field(/^Name/)).toHaveValue('Rust leaves');
    expect(field(/^Shop/)).toHaveValue('Market');
  });

  it('starts afresh where an older program left something else', () => {
    act(() => window.localStorage.setItem('draft:own:host one', JSON.stringify({ values: 3 })));
    render(<Host />);
    expect(field(/^Name/)).toHaveValue('Rust');
  });
});
