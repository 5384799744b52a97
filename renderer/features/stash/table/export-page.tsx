import { useState } from 'react';
import type { Problem } from '#core/contract/problem';
import { call } from '#renderer/bridge/call';
import { Button } from '#renderer/ui/page/button';
import { Choice } from '#renderer/ui/fields/choice';
import layout from '#renderer/ui/page/layout.module.css';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';

/** Exports the whole stash as a file, for a spreadsheet or another program. */
export function ExportPage() {
  const [format, setFormat] = useState<'csv' | 'json'>('csv');
  const [fileName, setFileName] = useState<string | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const save = async () => {
    const answer = await call('shell:export-stash', { as: format });
    setProblem(answer.ok ? null : answer.error);
    if (answer.ok && answer.value !== null) setFileName(answer.value.file);
  };
  return (
    <Page
      title="Export your stash"
      back={{ to: '/stash', words: 'Stash' }}
      action={
        <Button look="main" onClick={() => void save()}>
          Save file
        </Button>
      }
    >
      <div className={layout['stack']}>
        <Choice
          label="Format"
          value={format}
          options={[
            { value: 'csv', words: 'Spreadsheet (CSV)' },
            { value: 'json', words: 'For another program, with exact values (JSON)' },
          ]}
          onChange={setFormat}
        />
        <p className={layout['quiet']}>
          Every fabric with its pieces in your units, what is left of their cost, and the date you bought
          them. What is set aside, the history and the photos are not in the file; your backups have them.
        </p>
        <p role="status">{fileName === null ? '' : `Saved as ${fileName}`}</p>
        <ProblemNotice problem={problem} />
      </div>
    </Page>
  );
}
