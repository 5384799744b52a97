import { useMemo, useState } from 'react';
import type { CuttingRule } from '#core/cutting/cut-plan';
import type { JobPlan } from '#core/cutting/cutting-job';
import type { JobAnswer } from '#core/cutting/plan-cutting';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import { habitsOfProject } from '#core/domain/workshop';
import { yardageStep } from '#core/units/format-length';
import { useWorkshop } from '#renderer/bridge/workshop';
import { useDisplay } from '#renderer/ui/display';
import { useDraft } from '#renderer/ui/draft';
import { EmptyState } from '#renderer/ui/empty-state';
import { Page } from '#renderer/ui/page';
import { jobOfSetup, type Shelf } from './job-of-setup';
import { PlanAnswer } from './plan-answer';
import { clothOf, isSetup } from './setup-changes';
import { usePlanning } from './use-planning';
import { useClothOnShelf, useWorkAtHand } from './use-work-at-hand';
import { WhatToCut } from './what-to-cut';
import styles from './cutting.module.css';

interface CuttingDeskProps {
  readonly start: CuttingSetup;
  readonly projectName: string;
}

const NO_PROJECTS = [] as const;

/** What to cut and from what on the left, the plan as it gets better on the right. */
export function CuttingDesk({ start, projectName }: CuttingDeskProps) {
  const [lead] = start.projects;
  const [setup, setSetup] = useDraft(`cutting ${lead ?? ''}`, start, isSetup);
  const [spotlight, setSpotlight] = useState<string | null>(null);
  const work = useWorkAtHand(setup.projects.length === 0 ? NO_PROJECTS : setup.projects);
  const shelf = useShelf(setup, work);
  const job = useMemo(
    () => (shelf === undefined || setup.lines.length === 0 ? null : jobOfSetup(setup, shelf)),
    [setup, shelf],
  );
  const planning = usePlanning(job);
  const [rule, setRule] = useState<CuttingRule | null>(null);
  const chosen = chosenPlan(planning.answer, rule);
  return (
    <Page
      title="Plan the cutting"
      under="Every patch on a piece of cloth, with straight cuts from edge to edge."
      back={{ to: `/projects/${lead ?? ''}`, words: projectName }}
    >
      <div className={styles['desk']}>
        {work !== undefined && shelf !== undefined && (
          <WhatToCut
            setup={setup}
            work={work}
            shelf={shelf}
            spotlight={spotlight}
            onSpotlight={setSpotlight}
            onChange={setSetup}
          />
        )}
        {setup.lines.length === 0 ? (
          <EmptyState title="Nothing to cut yet">
            <p>
              Keep an answer of “The whole top” or “Patch sizes” on the piecing stage, and its list of patches
              comes here by itself. Or add patches by hand.
            </p>
          </EmptyState>
        ) : (
          shelf !== undefined && (
            <PlanAnswer
              setup={setup}
              shelf={shelf}
              planning={planning}
              chosen={chosen}
              onChoose={setRule}
              spotlight={spotlight}
              onSpotlight={setSpotlight}
              onChange={setSetup}
            />
          )
        )}
      </div>
    </Page>
  );
}

/** The plan the maker chose; until she does, the one with least cloth, or the simple one where that takes no more. */
function chosenPlan(answer: JobAnswer | null, rule: CuttingRule | null): JobPlan | null {
  if (answer === null) return null;
  const { simplestCuts, leastCloth } = answer;
  if (rule !== null) return rule === '2-stage' ? simplestCuts : leastCloth;
  const isSame =
    simplestCuts.totals.usedArea <= leastCloth.totals.usedArea &&
    simplestCuts.totals.boughtArea <= leastCloth.totals.boughtArea;
  return isSame ? simplestCuts : leastCloth;
}

/** What is on the shelf for this plan; undefined until it is read. */
function useShelf(setup: CuttingSetup, work: ReturnType<typeof useWorkAtHand>): Shelf | undefined {
  const { habits } = useWorkshop();
  const { length } = useDisplay();
  const fabrics = [...new Set(setup.lines.flatMap((line) => clothOf(setup, line) ?? []))];
  const cloth = useClothOnShelf(fabrics);
  const lead = work?.spreads[0]?.project;
  if (work === undefined || cloth === undefined) return undefined;
  const usual = lead === undefined ? habits : habitsOfProject(habits, lead.habitChanges);
  return {
    cloth,
    ownHolds: work.ownHolds,
    usualWidth: usual.fabricWidth,
    lengthStep: yardageStep(length),
  };
}
