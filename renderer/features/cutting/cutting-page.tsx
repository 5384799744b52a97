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
import { patchGroups, startingSetup, withStock } from './desk/setup-changes';
import { useFabricsNamed, useWorkAtHand } from './planning/use-work-at-hand';

/** Plans how the patches of a project, and of others with it, are cut from the stash; a plan that is kept is cut by. */
export function CuttingPage({ projectId }: { readonly projectId: ProjectId }) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  const { value: kept } = useRead('cutting:open', { projectId });
  const { settings } = useWorkshop();
  const work = useWorkAtHand([projectId]);
  if (spread === undefined) {
    return (
      <Page title="Plan the cutting" back={{ to: '/projects', words: 'Projects' }}>
        <ProblemNotice problem={problem} />
      </Page>
    );
  }
  const start = kept?.plan.setup ?? (work && startingSetup(projectId, work.sources));
  return (
    <SettingsDisplay settings={measurementsOfProject(spread.project, settings).settings}>
      {start !== undefined && kept !== undefined && (
        <ListFabric start={start} kept={kept} projectName={spread.project.name} />
      )}
    </SettingsDisplay>
  );
}

interface ListFabricProps {
  readonly start: CuttingSetup;
  readonly kept: CuttingPlanPage | null;
  readonly projectName: string;
}

/** Fabrics of the list that are called as one in the stash are cut from that one, until the maker says otherwise. */
function ListFabric({ start, kept, projectName }: ListFabricProps) {
  const [isChanging, setIsChanging] = useState(false);
  const groups = patchGroups(start);
  const named = useFabricsNamed(groups.map(({ fabric }) => fabric));
  if (named === undefined) return null;
  const withNamed = groups.reduce((setup, { projectId, fabric }) => {
    const fabricId = named.get(fabric.toLowerCase());
    const isOpen = fabricOf(setup, { projectId, fabric }) === undefined;
    return fabricId === undefined || !isOpen ? setup : withStock(setup, { projectId, fabric, fabricId });
  }, start);
  const now = { start: withNamed, projectName };
  return kept !== null && !isChanging ? (
    <CuttingTable {...now} kept={kept} onPlanAnew={() => setIsChanging(true)} />
  ) : (
    <CuttingDesk key={kept?.keptAt ?? 'new'} {...now} kept={kept} onKept={() => setIsChanging(false)} />
  );
}
