import type { CuttingSetup } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { HabitsDisplay } from '#renderer/ui/habits-display';
import { Page } from '#renderer/ui/page';
import { ProblemNotice } from '#renderer/ui/problem-notice';
import { CuttingDesk } from './cutting-desk';
import { clothGroups, clothOf, startingSetup, withCloth } from './setup-changes';
import { useFabricsNamed, useWorkAtHand } from './use-work-at-hand';

/** Plans how the patches of a project, and of others with it, are cut from the stash. */
export function CuttingPage({ projectId }: { readonly projectId: ProjectId }) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  const { habits } = useWorkshop();
  const work = useWorkAtHand([projectId]);
  if (spread === undefined) {
    return (
      <Page title="Plan the cutting" back={{ to: '/projects', words: 'Projects' }}>
        <ProblemNotice problem={problem} />
      </Page>
    );
  }
  const start = work && startingSetup(projectId, work.sources);
  return (
    <HabitsDisplay habits={measurementsOfProject(spread.project, habits).habits}>
      {start !== undefined && <NamedCloth start={start} projectName={spread.project.name} />}
    </HabitsDisplay>
  );
}

interface NamedClothProps {
  readonly start: CuttingSetup;
  readonly projectName: string;
}

/** Fabrics of the list that are called as one in the stash are cut from that one, until the maker says otherwise. */
function NamedCloth({ start, projectName }: NamedClothProps) {
  const groups = clothGroups(start);
  const named = useFabricsNamed(groups.map(({ fabric }) => fabric));
  if (named === undefined) return null;
  const withNamed = groups.reduce((setup, { projectId, fabric }) => {
    const fabricId = named.get(fabric.toLowerCase());
    const isOpen = clothOf(setup, { projectId, fabric }) === undefined;
    return fabricId === undefined || !isOpen ? setup : withCloth(setup, { projectId, fabric, fabricId });
  }, start);
  return <CuttingDesk start={withNamed} projectName={projectName} />;
}
