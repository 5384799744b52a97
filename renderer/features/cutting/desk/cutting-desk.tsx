import { useState } from 'react';
import type { KeptWithTicks } from '#core/cutting/tree/kept-plan';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import { useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Button } from '#renderer/ui/page/button';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { PlanAnswer } from '../planning/plan-answer';
import { useCuttingPlan } from '../planning/use-cutting-plan';
import { usePlanStash } from '../planning/use-plan-stash';
import { usePreviousWhileLoading } from '../planning/use-previous-while-loading';
import { purposeOf, useWorkAtHand } from '../planning/use-work-at-hand';
import { planToSave } from '../table/locked-cuts';
import { copiesIn } from './patch-sources';
import { isSetup } from './setup-changes';
import { WhatToCut } from './what-to-cut';
import styles from './desk.module.css';

interface CuttingDeskProps {
  readonly start: CuttingSetup;
  readonly projectName: string;
  /** The saved plan to change; null when there is none yet. */
  readonly saved: (KeptWithTicks & { readonly savedAt: number }) | null;
  /** Called after saving, and when a change of the saved plan is canceled. */
  readonly onDone: () => void;
}

const NO_PROJECTS = [] as const;

/** With more patches than this, drawings and lists are too long to use. */
const MOST_PATCHES = 3_000;

/** What to cut and from which fabric on the left; the plan, as it gets better, on the right. */
export function CuttingDesk({ start, projectName, saved, onDone }: CuttingDeskProps) {
  const [lead] = start.projects;
  const draft = useFormDraft(`cutting ${lead ?? ''} ${String(saved?.savedAt ?? '')}`);
  const [setup, setSetup] = useDraftValue(draft, 'setup', start, isSetup);
  const [spotlight, setSpotlight] = useState<string | null>(null);
  const work = useWorkAtHand(setup.projects.length === 0 ? NO_PROJECTS : setup.projects);
  const stash = usePlanStash(setup, work, saved);
  const workShown = usePreviousWhileLoading(work);
  const stashShown = usePreviousWhileLoading(stash);
  const isTooMuch = copiesIn(setup.lines) > MOST_PATCHES;
  const { locks, job, planning, chosen, choose } = useCuttingPlan(setup, stash, saved, isTooMuch);
  const saving = useWrite('cutting:save');
  const leave = () => {
    draft.forget();
    onDone();
  };
  const save = async () => {
    if (lead === undefined || job === null || chosen === null) return;
    planning.stop();
    const answer = await saving.write({ projectId: lead, plan: planToSave(setup, job, chosen) });
    if (answer.ok) leave();
  };
  const spotlightProps = { spotlight, onSpotlight: setSpotlight };
  return (
    <Page
      title="Plan the cutting"
      under="Every patch on a piece of fabric, with straight cuts from edge to edge."
      back={{ to: `/projects/${lead ?? ''}`, words: projectName }}
      action={
        <Button
          look="main"
          disabled={chosen === null || chosen.pieces.length === 0 || saving.isWriting}
          onClick={() => void save()}
        >
          Save this plan
        </Button>
      }
      aside={saved !== null && <Button onClick={leave}>Cancel</Button>}
    >
      <ProblemNotice problem={saving.problem} />
      <div className={styles['desk']}>
        {workShown !== undefined && stashShown !== undefined && (
          <WhatToCut
            setup={setup}
            work={workShown}
            stash={stashShown}
            onChange={setSetup}
            {...spotlightProps}
          />
        )}
        {setup.lines.length === 0 && <NothingToCut />}
        {isTooMuch && <TooMuch copies={copiesIn(setup.lines)} />}
        {setup.lines.length > 0 && !isTooMuch && workShown !== undefined && stashShown !== undefined && (
          <PlanAnswer
            setup={setup}
            stash={stashShown}
            goesTo={(line) => purposeOf(workShown, line)}
            locks={locks}
            job={job}
            planning={planning}
            chosen={chosen}
            onChoose={choose}
            onChange={setSetup}
            {...spotlightProps}
          />
        )}
      </div>
    </Page>
  );
}

function NothingToCut() {
  return (
    <EmptyState title="Nothing to cut yet">
      <p>
        Save your numbers from “The whole top” or “Patch sizes” on the piecing stage, and the patches show up
        here. You can also add patches by hand.
      </p>
    </EmptyState>
  );
}

function TooMuch({ copies }: { readonly copies: number }) {
  return (
    <EmptyState title="Too many patches for one plan">
      <p>
        You have {copies.toLocaleString('en')} patches to cut, and one plan holds up to{' '}
        {MOST_PATCHES.toLocaleString('en')}. Leave out some of the lists and plan them separately, or lower a
        number.
      </p>
    </EmptyState>
  );
}
