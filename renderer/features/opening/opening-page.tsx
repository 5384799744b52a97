import { useState } from 'react';
import { useNavigate } from 'react-router';
import { useWrite } from '#renderer/bridge/query';
import type { Workshop } from '#core/domain/workshop';
import { lengthFromInches } from '#core/units/length';
import { Button } from '#renderer/ui/page/button';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { BeginDialog } from './begin-dialog';
import styles from './opening.module.css';

/** The first page of an empty notebook: begin your own, or look round one that is already full. */
export function OpeningPage({ workshop }: { readonly workshop: Workshop }) {
  const [isBeginning, setIsBeginning] = useState(false);
  const entering = useWrite('shell:enter-demo');
  const navigate = useNavigate();
  const lookRound = () => {
    void entering.write({}).then((answer) => {
      if (answer.ok) void navigate('/');
    });
  };
  return (
    <Page title="An empty notebook">
      <div className={styles['opening']}>
        <ProjectDrawing
          piece={EXAMPLE}
          stages={EXAMPLE_STAGES}
          swatches={EXAMPLE_SWATCHES}
          size={340}
          isSilent
        />
        <div className={styles['choices']}>
          <section className={styles['choice']}>
            <h2>Begin your own</h2>
            <p>
              Write down the first piece: its shape and size, for whom and by when. From then on the notebook
              knows what comes next, how much fabric it takes, and where everything is.
            </p>
            <div>
              <Button look="main" onClick={() => setIsBeginning(true)}>
                Begin my notebook
              </Button>
            </div>
          </section>
          <section className={styles['choice']}>
            <h2>Or look round first</h2>
            <p>
              A demo workshop with pieces in every stage and a full stash. Everything in it is invented, and
              nothing you do there touches your own notebook.
            </p>
            <div>
              <Button onClick={lookRound} disabled={entering.isWriting}>
                {entering.isWriting ? 'Laying out the demo…' : 'Look round the demo workshop'}
              </Button>
            </div>
            <ProblemNotice problem={entering.problem} />
          </section>
        </div>
      </div>
      {isBeginning && <BeginDialog workshop={workshop} onClose={() => setIsBeginning(false)} />}
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
