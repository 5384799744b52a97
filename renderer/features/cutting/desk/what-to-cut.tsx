import { useState } from 'react';
import type { CuttingLine, CuttingSetup } from '#core/domain/cutting-setup';
import { counted } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { FabricDialog } from './fabric-dialog';
import { PatchGroupView } from './patch-group';
import type { Shelf } from '../planning/job-of-setup';
import { LineDialog } from './line-dialog';
import { copiesIn, type PatchSource } from './patch-sources';
import { ProjectDialog } from './project-dialog';
import {
  type PatchGroup,
  patchGroups,
  isBehind,
  isTaken,
  withStock,
  withLine,
  withOnlyPiece,
  withoutLine,
  withoutProject,
  withoutSource,
  withPiece,
  withSource,
} from './setup-changes';
import { TableDialog } from './table-dialog';
import type { WorkAtHand } from '../planning/use-work-at-hand';
import styles from '../cutting.module.css';

interface WhatToCutProps {
  readonly setup: CuttingSetup;
  readonly work: WorkAtHand;
  readonly shelf: Shelf;
  readonly spotlight: string | null;
  readonly onSpotlight: (key: string | null) => void;
  readonly onChange: (setup: CuttingSetup) => void;
}

type Asking =
  | { readonly about: 'none' | 'new-line' | 'project' | 'table' }
  | { readonly about: 'line'; readonly line: CuttingLine }
  | { readonly about: 'fabric'; readonly group: PatchGroup };

/** The patches, project by project and fabric by fabric, and the fabric each is cut from. */
export function WhatToCut(props: WhatToCutProps) {
  const { setup, work, shelf, onChange } = props;
  const [asking, setAsking] = useState<Asking>({ about: 'none' });
  const close = () => setAsking({ about: 'none' });
  const groups = patchGroups(setup);
  return (
    <section className={styles['what']} aria-label="What to cut">
      {work.spreads.map(({ project }) => (
        <div key={project.id} className={styles['part']}>
          <div className={styles['partHead']}>
            <h2 className={styles['heading']}>{project.name}</h2>
            {project.id !== setup.projects[0] && (
              <Button look="quiet" isSmall onClick={() => onChange(withoutProject(setup, project.id))}>
                Leave out
              </Button>
            )}
          </div>
          {work.sources
            .filter((source) => source.projectId === project.id)
            .map((source) => (
              <Source
                key={`${source.stageId} ${source.calculator}`}
                source={source}
                setup={setup}
                onChange={onChange}
              />
            ))}
          {groups
            .filter((group) => group.projectId === project.id)
            .map((group) => (
              <PatchGroupView
                key={group.fabric}
                group={group}
                setup={setup}
                shelf={shelf}
                spotlight={props.spotlight}
                onSpotlight={props.onSpotlight}
                onChangeLine={(line) => setAsking({ about: 'line', line })}
                onChooseFabric={() => setAsking({ about: 'fabric', group })}
                onPiece={(piece, mayBeCut) => onChange(withPiece(setup, piece, mayBeCut))}
                onOnlyPiece={(piece, pieces) => onChange(withOnlyPiece(setup, piece, pieces))}
              />
            ))}
        </div>
      ))}
      <div className={styles['buttons']}>
        <Button isSmall onClick={() => setAsking({ about: 'new-line' })}>
          Add patches by hand
        </Button>
        <Button isSmall onClick={() => setAsking({ about: 'project' })}>
          Cut for another piece too
        </Button>
        <Button isSmall onClick={() => setAsking({ about: 'table' })}>
          Table and leftovers
        </Button>
      </div>
      {asking.about === 'new-line' && (
        <LineDialog
          line={null}
          projects={work.spreads.map(({ project }) => project)}
          fabrics={groups.map(({ fabric }) => fabric)}
          onKeep={(line) => onChange(withLine(setup, line))}
          onClose={close}
        />
      )}
      {asking.about === 'line' && (
        <LineDialog
          line={asking.line}
          projects={work.spreads.map(({ project }) => project)}
          fabrics={groups.map(({ fabric }) => fabric)}
          onKeep={(line) => onChange(withLine(setup, line))}
          onRemove={() => onChange(withoutLine(setup, asking.line.id))}
          onClose={close}
        />
      )}
      {asking.about === 'fabric' && (
        <FabricDialog
          group={asking.group}
          setup={setup}
          heldFabrics={work.heldFabrics}
          onChoose={(fabricId) =>
            onChange(
              withStock(setup, { projectId: asking.group.projectId, fabric: asking.group.fabric, fabricId }),
            )
          }
          onClose={close}
        />
      )}
      {asking.about === 'project' && <ProjectDialog setup={setup} onChange={onChange} onClose={close} />}
      {asking.about === 'table' && (
        <TableDialog table={setup.table} onKeep={(table) => onChange({ ...setup, table })} onClose={close} />
      )}
    </section>
  );
}

interface SourceProps {
  readonly source: PatchSource;
  readonly setup: CuttingSetup;
  readonly onChange: (setup: CuttingSetup) => void;
}

/** A kept answer whose list is taken or not. */
function Source({ source, setup, onChange }: SourceProps) {
  const label = `${source.title}, as kept with “${source.stageName}”: ${counted(copiesIn(source.patches), 'patch', 'patches')}`;
  return (
    <div className={styles['source']}>
      <Checkbox
        label={label}
        isChecked={isTaken(setup, source)}
        help={source.isOld ? 'The project has changed since; keep the answer anew on its stage.' : undefined}
        onChange={(isChecked) =>
          onChange(isChecked ? withSource(setup, source) : withoutSource(setup, source))
        }
      />
      {isBehind(setup, source) && (
        <p className={styles['quiet']}>
          It was kept anew since this list was taken.{' '}
          <Button look="quiet" isSmall onClick={() => onChange(withSource(setup, source))}>
            Take the new list
          </Button>
        </p>
      )}
    </div>
  );
}
