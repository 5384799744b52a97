import { type CuttingLine, type CuttingSetup, fabricOf } from '#core/domain/cutting-setup';
import type { FabricId } from '#core/domain/ids';
import { FabricDialog } from './fabric-dialog';
import { LineDialog } from './line-dialog';
import { ProjectDialog } from './project-dialog';
import { type PatchGroup, patchGroups, withFabricChoice, withLine, withoutLine } from './setup-changes';
import { TableDialog } from './table-dialog';
import type { WorkAtHand } from '../planning/use-work-at-hand';

/** Which dialog is open, and what it is about. */
export type OpenDialog =
  | { readonly about: 'new-line' | 'project' | 'table' }
  | { readonly about: 'line'; readonly line: CuttingLine }
  | { readonly about: 'fabric'; readonly group: PatchGroup };

interface DeskDialogProps {
  readonly open: OpenDialog;
  readonly setup: CuttingSetup;
  readonly work: WorkAtHand;
  readonly onChange: (setup: CuttingSetup) => void;
  readonly onClose: () => void;
}

/** Cuts a line from the fabric of its name, unless the maker chose another for it. */
function withNamedFabric(
  setup: CuttingSetup,
  { projectId, fabric }: CuttingLine,
  fabricId: FabricId | null,
): CuttingSetup {
  const isOpen = fabricOf(setup, { projectId, fabric }) === undefined;
  return fabricId !== null && isOpen ? withFabricChoice(setup, { projectId, fabric, fabricId }) : setup;
}

/** The open dialog; each changes the setup of the plan. */
export function DeskDialog({ open, setup, work, onChange, onClose }: DeskDialogProps) {
  const lineDialog = {
    projects: work.spreads.map(({ project }) => project),
    fabrics: patchGroups(setup).map(({ fabric }) => fabric),
    onSave: (line: CuttingLine, fabricId: FabricId | null) =>
      onChange(withNamedFabric(withLine(setup, line), line, fabricId)),
    onClose,
  };
  switch (open.about) {
    case 'new-line':
      return <LineDialog line={null} {...lineDialog} />;
    case 'line':
      return (
        <LineDialog
          line={open.line}
          onDelete={() => onChange(withoutLine(setup, open.line.id))}
          {...lineDialog}
        />
      );
    case 'fabric': {
      const { projectId, fabric } = open.group;
      return (
        <FabricDialog
          group={open.group}
          setup={setup}
          heldFabrics={work.heldFabrics}
          onChoose={(fabricId) => onChange(withFabricChoice(setup, { projectId, fabric, fabricId }))}
          onClose={onClose}
        />
      );
    }
    case 'project':
      return <ProjectDialog setup={setup} onChange={onChange} onClose={onClose} />;
    case 'table':
      return (
        <TableDialog
          table={setup.table}
          onSave={(table) => onChange({ ...setup, table })}
          onClose={onClose}
        />
      );
  }
}
