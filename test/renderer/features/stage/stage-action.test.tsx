import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import type { ProjectId } from '#core/domain/ids';
import { useRead } from '#renderer/bridge/query';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { StageAction } from '#renderer/features/stage/stage-action';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addProject } from '#test/helpers/workshop';

/** The action of the longarm stage, on a page that also reads something else. */
function LongarmAction({ projectId }: { readonly projectId: ProjectId }) {
  useRead('contact:list', {});
  const spread = useRead('project:open', { projectId }).value;
  const stage = spread?.stages.find(({ kind }) => kind === 'longarm');
  return (
    spread !== undefined &&
    stage !== undefined && <StageAction stage={stage} spread={spread} measurements={SAMPLE_MEASUREMENTS} />
  );
}

/** Holds back the contacts until they are released, so that they are always read last. */
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

it('asks for the open checks before a stage starts, and opens no dialog of the next state', async () => {
  const workshop = workshopBehindWindow();
  const { projectId, stages } = addProject(workshop);
  const longarm = stages.find(({ kind }) => kind === 'longarm');
  for (const { id } of longarm?.checklist.filter(({ isGate }) => isGate).slice(1) ?? []) {
    workshop.get('checklist:tick', { checklistItemId: id, ticked: true });
  }
  renderPage(<LongarmAction projectId={projectId} />);
  await userEvent.click(await screen.findByRole('button', { name: 'Check before you start' }));
  await userEvent.click(screen.getByRole('checkbox'));
  const start = await screen.findByRole('button', { name: 'Start' });
  const release = holdContacts();
  await userEvent.click(start);
  // The stage has started, while the page is still reading the change.
  expect(await screen.findByRole('button', { name: 'Send it out' })).toBeVisible();
  expect(screen.queryByRole('dialog')).toBeNull();
  release();
  expect(await screen.findByRole('button', { name: 'Send it out' })).toBeEnabled();
  expect(screen.queryByRole('dialog')).toBeNull();
});
