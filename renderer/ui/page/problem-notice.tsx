import type { Problem } from '#core/contract/problem';
import { problemWords } from '#renderer/text/problems';
import { useDisplay } from '../base/display';
import { Notice } from './notice';
import styles from './notice.module.css';

/** Why something did not work, read out as it appears; empty without a problem. */
export function ProblemNotice({ problem }: { readonly problem: Problem | null }) {
  const display = useDisplay().length;
  return (
    <div role="alert" className={styles['alert']}>
      {problem !== null && (
        <Notice kind="warning" title={problem.code === 'not-found' ? 'Not found' : 'Not done'}>
          {problemWords(problem, display)}
        </Notice>
      )}
    </div>
  );
}
