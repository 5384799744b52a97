import { useState } from 'react';
import type { CuttingPlanPage } from '#core/contract/cutting';
import { fabricOf, type CuttingSetup } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { CuttingDesk } from './desk/cutting-desk';
import { CuttingTable } from './table/cutting-table';
import { patchGroups, startingSetup, withFabricChoice } from './desk/setup-changes';
import { useFabricsNamed, useWorkAtHand } from './planning/use-work-at-hand';

/** Plans how the patches of a project, and of others with it, are cut from the stash. A saved plan is shown for cutting. */
export function CuttingPage({ projectId }: { readonly projectId: ProjectId }) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  const { value: saved } = useRead('cutting:open', { projectId });
  const { settings } = useWorkshop();
  const work = useWorkAtHand([projectId]);
  if (spread === undefined) {
    return (
      <Page title="Plan the cutting" back={{ to: '/projects', words: 'Projects' }}>
        <ProblemNotice problem={problem} />
      </Page>
    );
  }
  const start = saved?.plan.setup ?? (work && startingSetup(projectId, work.sources));
  return (
    <SettingsDisplay settings={measurementsOfProject(spread.project, settings).settings}>
      {start !== undefined && saved !== undefined && (
        <PlanWithMatchedFabric start={start} saved={saved} projectName={spread.project.name} />
      )}
    </SettingsDisplay>
  );
}

interface PlanWithMatchedFabricProps {
  readonly start: CuttingSetup;
  readonly saved: CuttingPlanPage | null;
  readonly projectName: string;
}

/** Matches the fabrics of the patch lists to fabrics of the stash with the same name, unless the maker chose another. */
function PlanWithMatchedFabric({ start, saved, projectName }: PlanWithMatchedFabricProps) {
  const [isChanging, setIsChanging] = useState(false);
  const groups = patchGroups(start);
  const named = useFabricsNamed(groups.map(({ fabric }) => fabric));
  if (named === undefined) return null;
  const withNamed = groups.reduce((setup, { projectId, fabric }) => {
    const fabricId = named.get(fabric.toLowerCase());
    const isOpen = fabricOf(setup, { projectId, fabric }) === undefined;
    return fabricId === undefined || !isOpen
      ? setup
      : withFabricChoice(setup, { projectId, fabric, fabricId });
  }, start);
  const now = { start: withNamed, projectName };
  return saved !== null && !isChanging ? (
    <CuttingTable {...now} saved={saved} onChangePlan={() => setIsChanging(true)} />
  ) : (
    <CuttingDesk key={saved?.savedAt ?? 'new'} {...now} saved={saved} onDone={() => setIsChanging(false)} />
  );
}
