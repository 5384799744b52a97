import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { PatternPage } from '#renderer/features/pattern/pattern-page';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addProject, addStock } from '#test/helpers/workshop';

function openPattern() {
  const workshop = workshopBehindWindow();
  const { projectId, stages } = addProject(workshop);
  const { fabricId } = addStock(workshop);
  const stageId = stages.find(({ kind }) => kind === 'piecing')!.id;
  renderPage(<PatternPage projectId={projectId} stageId={stageId} />);
  const inStash = workshop.get('fabric:open', { fabricId }).fabric.name;
  return { workshop, projectId, inStash };
}

const list = () => screen.findByRole('textbox', { name: 'Cutting list' });
const button = (name: string | RegExp) => screen.getByRole('button', { name });

async function paste(text: string) {
  await userEvent.click(await list());
  await userEvent.paste(text);
}

it('reads a list line by line, mends what is marked, and saves patches that the shopping list sees', async () => {
  const { workshop, projectId, inStash } = openPattern();
  await paste('Red:\n(48) 2 1/2" squares\nTwelve big ones 5"\nSew them together');
  const lines = screen.getByRole('list', { name: 'Line by line' });
  expect(within(lines).getByText(/^48 squares/u)).toBeVisible();
  expect(screen.getByText(/2 lines need a look/u)).toBeVisible();

  await userEvent.click(button('Leave out “Sew them together”'));
  await userEvent.click(button('Mend “Twelve big ones 5"”'));
  const dialog = screen.getByRole('dialog');
  const field = (name: string) => within(dialog).getByRole('textbox', { name: new RegExp(`^${name}`, 'u') });
  for (const [name, text] of [
    ['Width', '5'],
    ['Length', '5'],
    ['How many', '12'],
  ] as const)
    await userEvent.type(field(name), text);
  await userEvent.click(within(dialog).getByRole('button', { name: 'Put it in place of the line' }));
  expect(await list()).toHaveValue(
    'Red:\n(48) 2 1/2" squares\nFrom Red: (12) 5 in x 5 in squares\n# Sew them together',
  );
  expect(screen.getByText(/Everything was understood/u)).toBeVisible();

  await userEvent.type(screen.getByRole('combobox', { name: /^Red/u }), inStash);
  await userEvent.click(button('Save the pattern'));
  await waitFor(() => expect(workshop.get('pattern:open', { projectId })).not.toBeNull());
  expect(workshop.get('pattern:open', { projectId })?.fabrics).toEqual([{ role: 'Red', fabric: inStash }]);
  const stage = workshop.get('project:open', { projectId }).stages.find(({ kind }) => kind === 'piecing')!;
  const [answer] = workshop.get('calculation:list', { stageId: stage.id });
  expect(answer?.calculator).toBe('pattern-list');
  expect(answer?.ownInput).toMatchObject({
    patches: [
      { fabric: inStash, count: 48 },
      { fabric: inStash, count: 12 },
    ],
  });
});

it('says what would do beside what the pattern asks for, and keeps what was entered', async () => {
  const { workshop, projectId } = openPattern();
  await paste('Red: 1 5/8 yd\nCutting\nFrom the red cut (48) 2 1/2" squares');
  expect(screen.getByText(/would do, with nothing extra/u)).toBeVisible();
  expect(workshop.get('pattern:open', { projectId })).toBeNull();
  const kept = Array.from({ length: window.localStorage.length }, (_, at) =>
    window.localStorage.getItem(window.localStorage.key(at) ?? ''),
  );
  expect(kept.join(' ')).toContain('From the red cut');
  await userEvent.click(button('Discard what you entered'));
  expect(await list()).toHaveValue('');
});
