import { useState } from 'react';
import { useNavigate } from 'react-router';
import { useWrite } from '#renderer/bridge/query';
import type { Workshop } from '#core/domain/workshop';
import { lengthFromInches } from '#core/units/length';
import { Button } from '#renderer/ui/page/button';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { StartDialog } from './start-dialog';
import styles from './opening.module.css';

/** The first page of an empty notebook: start your own, or look around the demo. */
export function OpeningPage({ workshop }: { readonly workshop: Workshop }) {
  const [isStarting, setIsStarting] = useState(false);
  const entering = useWrite('shell:enter-demo');
  const navigate = useNavigate();
  const lookAround = () => {
    void entering.write({}).then((answer) => {
      if (answer.ok) void navigate('/');
    });
  };
  return (
    <Page title="An empty notebook">
      <div className={styles['opening']}>
        <ProjectDrawing
          project={EXAMPLE}
          stages={EXAMPLE_STAGES}
          swatches={EXAMPLE_SWATCHES}
          size={340}
          isSilent
        />
        <div className={styles['choices']}>
          <section className={styles['choice']}>
            <h2>Start your own</h2>
            <p>
              Enter your first project: its shape and size, who it’s for and when it’s due. The notebook then
              knows what comes next, how much fabric it takes, and where everything is.
            </p>
            <div>
              <Button look="main" onClick={() => setIsStarting(true)}>
                Start my notebook
              </Button>
            </div>
          </section>
          <section className={styles['choice']}>
            <h2>Or look around first</h2>
            <p>
              A demo workshop with projects in every stage and a full stash. Everything in it is invented, and
              nothing you do there changes your own notebook.
            </p>
            <div>
              <Button onClick={lookAround} disabled={entering.isWriting}>
                {entering.isWriting ? 'Opening the demo…' : 'Look around the demo workshop'}
              </Button>
            </div>
            <ProblemNotice problem={entering.problem} />
          </section>
        </div>
      </div>
      {isStarting && <StartDialog workshop={workshop} onClose={() => setIsStarting(false)} />}
    </Page>
  );
}

const EXAMPLE = {
  outline: { shape: 'octagon', acrossFlats: lengthFromInches(54) },
  hole: { diameter: lengthFromInches(9) },
  hasSlit: true,
} as const;

const EXAMPLE_SWATCHES = ['#2f5d62', '#d9c7a0', '#a4483a', '#e7ddc8'];

const EXAMPLE_STAGES = (['done', 'done', 'in-hand', 'planned', 'planned', 'planned'] as const).map(
  (state, index) => ({
    id: String(index),
    name: '',
    state,
  }),
);
