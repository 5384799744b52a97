import { useMemo, useState } from 'react';
import type { CuttingRule } from '#core/cutting/tree/cut-plan';
import type { JobPlan } from '#core/cutting/tree/cutting-job';
import type { KeptWithTicks } from '#core/cutting/tree/kept-plan';
import type { JobAnswer } from '#core/cutting/search/plan-cutting';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { useDraft } from '#renderer/ui/base/draft';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { jobOfSetup } from '../planning/job-of-setup';
import { keepable, locksOf } from '../table/locked-cuts';
import { copiesIn } from './patch-sources';
import { PlanAnswer } from '../planning/plan-answer';
import { isSetup } from './setup-changes';
import { usePlanning } from '../planning/use-planning';
import { useLastKnown } from '../planning/use-last-known';
import { useShelf } from '../planning/use-shelf';
import { purposeOf, useWorkAtHand } from '../planning/use-work-at-hand';
import { WhatToCut } from './what-to-cut';
import styles from '../cutting.module.css';

interface CuttingDeskProps {
  readonly start: CuttingSetup;
  readonly projectName: string;
  /** The plan that is made anew; null where none is kept yet. */
  readonly kept: (KeptWithTicks & { readonly keptAt: number }) | null;
  readonly onKept: () => void;
}

const NO_PROJECTS = [] as const;

/** Beyond this the drawings and the list serve nobody. */
const MOST_PATCHES = 3_000;

/** What to cut and from what on the left, the plan as it gets better on the right. */
export function CuttingDesk({ start, projectName, kept, onKept }: CuttingDeskProps) {
  const [lead] = start.projects;
  const draft = `cutting ${lead ?? ''} ${String(kept?.keptAt ?? '')}`;
  const [setup, setSetup, forget] = useDraft(draft, start, isSetup);
  const [spotlight, setSpotlight] = useState<string | null>(null);
  const work = useWorkAtHand(setup.projects.length === 0 ? NO_PROJECTS : setup.projects);
  const shelf = useShelf(setup, work, kept);
  const [knownWork, knownShelf] = [useLastKnown(work), useLastKnown(shelf)];
  const locks = useMemo(() => locksOf(kept, setup.lines), [kept, setup.lines]);
  const isTooMuch = copiesIn(setup.lines) > MOST_PATCHES;
  const job = useMemo(
    () =>
      shelf === undefined || setup.lines.length === 0 || isTooMuch ? null : jobOfSetup(setup, shelf, locks),
    [setup, shelf, locks, isTooMuch],
  );
  const planning = usePlanning(job);
  const [rule, setRule] = useState<CuttingRule | null>(kept?.plan.rule ?? null);
  const chosen = chosenPlan(planning.answer, rule);
  const keeping = useWrite('cutting:keep');
  const keep = async () => {
    if (lead === undefined || job === null || chosen === null) return;
    planning.stop();
    const answer = await keeping.write({ projectId: lead, plan: keepable(setup, job, chosen) });
    if (!answer.ok) return;
    forget();
    onKept();
  };
  return (
    <Page
      title="Plan the cutting"
      under="Every patch on a piece of fabric, with straight cuts from edge to edge."
      back={{ to: `/projects/${lead ?? ''}`, words: projectName }}
      action={
        <Button
          look="main"
          disabled={chosen === null || chosen.pieces.length === 0 || keeping.isWriting}
          onClick={() => void keep()}
        >
          Cut by this plan
        </Button>
      }
      aside={
        kept !== null && (
          <Button
            onClick={() => {
              forget();
              onKept();
            }}
          >
            Leave the plan as it was
          </Button>
        )
      }
    >
      <ProblemNotice problem={keeping.problem} />
      <div className={styles['desk']}>
        {knownWork !== undefined && knownShelf !== undefined && (
          <WhatToCut
            setup={setup}
            work={knownWork}
            shelf={knownShelf}
            spotlight={spotlight}
            onSpotlight={setSpotlight}
            onChange={setSetup}
          />
        )}
        {setup.lines.length === 0 && <NothingToCut />}
        {isTooMuch && <TooMuch copies={copiesIn(setup.lines)} />}
        {setup.lines.length > 0 && !isTooMuch && knownWork !== undefined && knownShelf !== undefined && (
          <PlanAnswer
            {...{ setup, locks, job, planning, chosen, spotlight }}
            shelf={knownShelf}
            goesTo={(line) => purposeOf(knownWork, line)}
            onChoose={setRule}
            onSpotlight={setSpotlight}
            onChange={setSetup}
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
        Keep an answer of “The whole top” or “Patch sizes” on the piecing stage, and its list of patches comes
        here by itself. Or add patches by hand.
      </p>
    </EmptyState>
  );
}

function TooMuch({ copies }: { readonly copies: number }) {
  return (
    <EmptyState title="Too many patches for one plan">
      <p>
        {copies.toLocaleString('en')} patches are asked for, and a plan holds{' '}
        {MOST_PATCHES.toLocaleString('en')}. Leave some of the lists out and plan them by themselves, or lower
        a number.
      </p>
    </EmptyState>
  );
}

/** The plan the maker chose; until she does, the one with least fabric, or the simple one where that takes no more. */
function chosenPlan(answer: JobAnswer | null, rule: CuttingRule | null): JobPlan | null {
  if (answer === null) return null;
  const { simplestCuts, leastFabric } = answer;
  if (rule !== null) return rule === '2-stage' ? simplestCuts : leastFabric;
  const isSame =
    simplestCuts.totals.usedArea <= leastFabric.totals.usedArea &&
    simplestCuts.totals.boughtArea <= leastFabric.totals.boughtArea;
  return isSame ? simplestCuts : leastFabric;
}
