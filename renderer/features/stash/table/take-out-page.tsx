import { useState } from 'react';
import type { Problem } from '#core/contract/problem';
import { call } from '#renderer/bridge/call';
import shared from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { Choice } from '#renderer/ui/fields/choice';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';

/** The whole stash as a file, for a spreadsheet or for another workshop. */
export function TakeOutPage() {
  const [as, setAs] = useState<'csv' | 'json'>('csv');
  const [kept, setKept] = useState<string | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const keep = async () => {
    const answer = await call('shell:export-stash', { as });
    setProblem(answer.ok ? null : answer.error);
    if (answer.ok && answer.value !== null) setKept(answer.value.file);
  };
  return (
    <Page
      title="Take the stash out"
      back={{ to: '/stash', words: 'Stash' }}
      action={
        <Button look="main" onClick={() => void keep()}>
          Keep it as a file
        </Button>
      }
    >
      <div className={shared['stack']}>
        <Choice
          label="As"
          value={as}
          options={[
            { value: 'csv', words: 'A table for a spreadsheet (CSV)' },
            { value: 'json', words: 'Data for another program (JSON)' },
          ]}
          onChange={setAs}
        />
        <p className={shared['quiet']}>
          Every fabric with the pieces that are there, what is left of their cost, and the day they came. What
          is set aside, the history and the photos stay in the workshop and its backups.
        </p>
        <p role="status">{kept === null ? '' : `Kept as ${kept}`}</p>
        <ProblemNotice problem={problem} />
      </div>
    </Page>
  );
}
