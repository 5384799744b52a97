import { screen } from '@testing-library/react';
import { expect, it } from 'vitest';
import { CAUTIONS } from '#core/domain/cautions';
import { SAMPLE_MEASUREMENTS } from '#main/command-line/sample-measurements';
import { GateDialog } from '#renderer/features/stage/gate-dialog';
import { renderPage, workshopBehindWindow } from '#test/helpers/page-on-store';
import { addProject } from '#test/helpers/workshop';

it('keeps what spoils the quilt apart from what hurts a person before the center is cut', async () => {
  const { stages } = addProject(workshopBehindWindow());
  const stage = stages.find(({ kind }) => kind === 'center-cut')!;
  renderPage(
    <GateDialog stage={stage} stages={stages} measurements={SAMPLE_MEASUREMENTS} onClose={() => undefined} />,
  );
  const [irreversible, caution] = await screen.findAllByRole('note');
  expect(irreversible).toHaveTextContent('This can’t be undone');
  expect(irreversible).not.toHaveTextContent(CAUTIONS.rotaryBlade);
  expect(caution).toHaveTextContent(CAUTIONS.rotaryBlade);
  expect(caution).toHaveTextContent(CAUTIONS.scissors);
  expect(screen.getByRole('button', { name: 'Start anyway' })).toBeDisabled();
});
