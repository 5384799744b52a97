import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import type { ProjectId } from '#core/domain/ids';
import { useRead } from '#renderer/bridge/query';
import { StageAction } from '#renderer/features/stage/stage-action';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addProject } from '#test/helpers/workshop';

/** The action of a project's quilting that is sent out, as its stage's page shows it beside something else that is read. */
function LongarmAction({ projectId }: { readonly projectId: ProjectId }) {
  useRead('contact:list', {});
  const spread = useRead('project:open', { projectId }).value;
  const stage = spread?.stages.find(({ kind }) => kind === 'longarm');
  return spread !== undefined && stage !== undefined && <StageAction stage={stage} spread={spread} />;
}

/** From now on the contacts are answered only once they are released: something is always read last. */
function holdContacts(): () => void {
  const bridge = window.ringbound;
  let release: () => void = () => undefined;
  const released = new Promise<void>((resolve) => (release = resolve));
  const call: typeof bridge.call = async (name, input) => {
    if (name === 'contact:list') await released;
    return bridge.call(name, input);
  };
  Object.defineProperty(window, 'ringbound', { value: { ...bridge, call }, configurable: true });
  return () => release();
}

it('asks before a stage starts what its gate asks, and nothing of the state that comes then', async () => {
  const workshop = workshopBehindWindow();
  const { projectId, stages } = addProject(workshop);
  const longarm = stages.find(({ kind }) => kind === 'longarm');
  for (const { id } of longarm?.checklist.filter(({ isGate }) => isGate).slice(1) ?? []) {
    workshop.get('checklist:tick', { checklistItemId: id, ticked: true });
  }
  renderPage(<LongarmAction projectId={projectId} />);
  await userEvent.click(await screen.findByRole('button', { name: 'Check before you start' }));
  await userEvent.click(screen.getByRole('checkbox'));
  const start = await screen.findByRole('button', { name: 'All is checked: start' });
  const release = holdContacts();
  await userEvent.click(start);
  // Begun, while the change is still on its way through the page.
  expect(await screen.findByRole('button', { name: 'Send it out' })).toBeVisible();
  expect(screen.queryByRole('dialog')).toBeNull();
  release();
  expect(await screen.findByRole('button', { name: 'Send it out' })).toBeEnabled();
  expect(screen.queryByRole('dialog')).toBeNull();
});
