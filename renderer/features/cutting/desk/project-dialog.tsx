import type { CuttingSetup } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { useRead } from '#renderer/bridge/query';
import { counted } from '#renderer/text/cut-words';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { OptionRows } from '#renderer/ui/fields/option-rows';
import { DialogForm } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { copiesIn, startingSources } from './patch-sources';
import { patchGroups, withFabricChoice, withProject } from './setup-changes';
import { useFabricsNamed, useWorkAtHand } from '../planning/use-work-at-hand';

interface ProjectDialogProps {
  readonly setup: CuttingSetup;
  readonly onChange: (setup: CuttingSetup) => void;
  readonly onClose: () => void;
}

/** Adds another open project to the plan, so that the patches of both share the fabric. */
export function ProjectDialog({ setup, onChange, onClose }: ProjectDialogProps) {
  const draft = useFormDraft(`cutting-project ${setup.projects.join(' ')}`);
  const [chosen, setChosen] = useDraftValue<ProjectId | null>(draft, 'chosen', null);
  const { value: list } = useRead('project:list', { archived: false });
  const work = useWorkAtHand(chosen === null ? [] : [chosen]);
  const others = (list?.items ?? []).filter(({ project }) => !setup.projects.includes(project.id));
  const next = chosen === null || work === undefined ? null : withProject(setup, chosen, work.sources);
  const groups = patchGroups(next ?? { lines: [] }).filter(({ projectId }) => projectId === chosen);
  const named = useFabricsNamed(groups.map(({ fabric }) => fabric));
  const add = () => {
    if (next === null || named === undefined) return;
    const withNamed = groups.reduce((changed, { projectId, fabric }) => {
      const fabricId = named.get(fabric.toLowerCase());
      return fabricId === undefined ? changed : withFabricChoice(changed, { projectId, fabric, fabricId });
    }, next);
    draft.forget();
    onChange(withNamed);
    onClose();
  };
  return (
    <DialogForm
      draft={draft}
      title="Cut for another project too"
      verb="Add project"
      canSave={next !== null && named !== undefined}
      onSave={add}
      onClose={onClose}
    >
      {others.length === 0 && <p>There is no other open project.</p>}
      <OptionRows
        legend="Open projects"
        rows={others.map(({ project }) => ({ value: project.id, name: project.name }))}
        chosen={chosen}
        onChoose={setChosen}
      />
      {next !== null && work !== undefined && (
        <p className={layout['quiet']} role="status">
          {foundWords(copiesIn(startingSources(work.sources).flatMap(({ patches }) => patches)))}
        </p>
      )}
    </DialogForm>
  );
}

function foundWords(copies: number): string {
  return copies === 0
    ? 'None of its saved answers lists patches yet. You can add its patches by hand.'
    : `Its saved answers list ${counted(copies, 'patch', 'patches')}.`;
}
