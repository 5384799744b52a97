import { useId, useState } from 'react';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import { useRead } from '#renderer/bridge/query';
import { counted } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { copiesIn, startingSources } from './patch-sources';
import { patchGroups, withStock, withProject } from './setup-changes';
import { useFabricsNamed, useWorkAtHand } from '../planning/use-work-at-hand';
import styles from '../cutting.module.css';

interface ProjectDialogProps {
  readonly setup: CuttingSetup;
  readonly onChange: (setup: CuttingSetup) => void;
  readonly onClose: () => void;
}

/** Which other open piece is cut at the same time: patches of both then share the fabric. */
export function ProjectDialog({ setup, onChange, onClose }: ProjectDialogProps) {
  const [chosen, setChosen] = useState<ProjectId | null>(null);
  const { value: list } = useRead('project:list', { archived: false });
  const work = useWorkAtHand(chosen === null ? [] : [chosen]);
  const name = useId();
  const others = (list?.items ?? []).filter(({ project }) => !setup.projects.includes(project.id));
  const next = chosen === null || work === undefined ? null : withProject(setup, chosen, work.sources);
  const groups = patchGroups(next ?? { lines: [] }).filter(({ projectId }) => projectId === chosen);
  const named = useFabricsNamed(groups.map(({ fabric }) => fabric));
  const add = () => {
    if (next === null || named === undefined) return;
    const withNamed = groups.reduce((so, { projectId, fabric }) => {
      const fabricId = named.get(fabric.toLowerCase());
      return fabricId === undefined ? so : withStock(so, { projectId, fabric, fabricId });
    }, next);
    onChange(withNamed);
    onClose();
  };
  return (
    <Dialog
      title="Cut for another piece too"
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not now</Button>
          <Button look="main" disabled={next === null || named === undefined} onClick={add}>
            Cut for it too
          </Button>
        </>
      }
    >
      {others.length === 0 && <p>There is no other open piece.</p>}
      <fieldset className={styles['options']}>
        <legend className={styles['quiet']}>Open pieces</legend>
        {others.map(({ project }) => (
          <label key={project.id} className={styles['option']}>
            <input
              type="radio"
              name={name}
              checked={project.id === chosen}
              onChange={() => setChosen(project.id)}
            />
            <span className={styles['groupName']}>
              <strong>{project.name}</strong>
            </span>
          </label>
        ))}
      </fieldset>
      {next !== null && work !== undefined && (
        <p className={styles['quiet']} role="status">
          {foundWords(copiesIn(startingSources(work.sources).flatMap(({ patches }) => patches)))}
        </p>
      )}
    </Dialog>
  );
}

function foundWords(copies: number): string {
  return copies === 0
    ? 'No answer of it says what to cut yet; its patches can be added by hand.'
    : `Its answers say ${counted(copies, 'patch', 'patches')}.`;
}
