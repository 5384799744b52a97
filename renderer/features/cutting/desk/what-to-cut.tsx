import { useState } from 'react';
import type { ProjectSpread } from '#core/contract/projects';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import { Button } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';
import { DeskDialog, type OpenDialog } from './desk-dialog';
import { PatchGroupView } from './patch-group';
import { PatchSourceRow } from './patch-source-row';
import { patchGroups, withOnlyPiece, withoutProject, withPiece } from './setup-changes';
import type { PlanStash } from '../planning/job-of-setup';
import type { WorkAtHand } from '../planning/use-work-at-hand';
import styles from './desk.module.css';

interface WhatToCutProps {
  readonly setup: CuttingSetup;
  readonly work: WorkAtHand;
  readonly stash: PlanStash;
  readonly spotlight: string | null;
  readonly onSpotlight: (key: string | null) => void;
  readonly onChange: (setup: CuttingSetup) => void;
}

/** The patches, project by project and fabric by fabric, and the fabric each is cut from. */
export function WhatToCut(props: WhatToCutProps) {
  const { setup, work, onChange } = props;
  const [open, setOpen] = useState<OpenDialog | null>(null);
  return (
    <section className={styles['what']} aria-label="What to cut">
      {work.spreads.map(({ project }) => (
        <ProjectPatches key={project.id} project={project} onOpen={setOpen} {...props} />
      ))}
      <div className={layout['row']}>
        <Button isSmall onClick={() => setOpen({ about: 'new-line' })}>
          Add patches by hand
        </Button>
        <Button isSmall onClick={() => setOpen({ about: 'project' })}>
          Cut for another project too
        </Button>
        <Button isSmall onClick={() => setOpen({ about: 'table' })}>
          Table and leftovers
        </Button>
      </div>
      {open !== null && (
        <DeskDialog open={open} setup={setup} work={work} onChange={onChange} onClose={() => setOpen(null)} />
      )}
    </section>
  );
}

interface ProjectPatchesProps extends WhatToCutProps {
  readonly project: ProjectSpread['project'];
  readonly onOpen: (dialog: OpenDialog) => void;
}

/** One project: the saved answers that list patches, and the patches by their fabric. */
function ProjectPatches({ project, onOpen, ...props }: ProjectPatchesProps) {
  const { setup, work, stash, spotlight, onSpotlight, onChange } = props;
  return (
    <div className={layout['part']}>
      <div className={layout['partHead']}>
        <h2 className={layout['heading']}>{project.name}</h2>
        {project.id !== setup.projects[0] && (
          <Button look="quiet" isSmall onClick={() => onChange(withoutProject(setup, project.id))}>
            Leave out
          </Button>
        )}
      </div>
      {work.sources
        .filter((source) => source.projectId === project.id)
        .map((source) => (
          <PatchSourceRow
            key={`${source.stageId} ${source.calculator}`}
            source={source}
            setup={setup}
            onChange={onChange}
          />
        ))}
      {patchGroups(setup)
        .filter((group) => group.projectId === project.id)
        .map((group) => (
          <PatchGroupView
            key={group.fabric}
            group={group}
            setup={setup}
            stash={stash}
            spotlight={spotlight}
            onSpotlight={onSpotlight}
            onChangeLine={(line) => onOpen({ about: 'line', line })}
            onChooseFabric={() => onOpen({ about: 'fabric', group })}
            onPiece={(piece, mayBeCut) => onChange(withPiece(setup, piece, mayBeCut))}
            onOnlyPiece={(piece, pieces) => onChange(withOnlyPiece(setup, piece, pieces))}
          />
        ))}
    </div>
  );
}
