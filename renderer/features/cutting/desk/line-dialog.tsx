import { boundsOfSchema } from '#core/domain/field-bounds';
import { type CuttingLine, cuttingLineSchema } from '#core/domain/cutting-setup';
import type { FabricId, ProjectId } from '#core/domain/ids';
import type { Length } from '#core/units/length';
import { useFabricNamed, useFabricNames } from '#renderer/shared/fabric-names';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Select } from '#renderer/ui/fields/choice';
import { LengthField } from '#renderer/ui/fields/length-field';
import { NumberField } from '#renderer/ui/fields/number-field';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import { DialogForm } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';

interface LineDialogProps {
  /** The line to change; null for a new one. */
  readonly line: CuttingLine | null;
  readonly projects: readonly { readonly id: ProjectId; readonly name: string }[];
  /** Names of fabrics to suggest. */
  readonly fabrics: readonly string[];
  /** With the fabric of the stash that has the name of the line; null if it is to be bought. */
  readonly onSave: (line: CuttingLine, fabricId: FabricId | null) => void;
  readonly onDelete?: () => void;
  readonly onClose: () => void;
}

/** Patches of one size: a new line entered by hand, or a line of a list to change. */
export function LineDialog({ line, projects, fabrics, onSave, onDelete, onClose }: LineDialogProps) {
  const draft = useFormDraft(`patches ${projects.map(({ id }) => id).join(' ')} ${line?.id ?? 'new'}`);
  const [projectId, setProjectId] = useDraftValue(draft, 'projectId', line?.projectId ?? projects[0]?.id);
  const [fabric, setFabric] = useDraftValue(draft, 'fabric', line?.fabric ?? fabrics[0] ?? '');
  const [size, setSize] = useDraftValue<LineSize>(draft, 'size', {
    width: line?.width ?? null,
    length: line?.length ?? null,
    count: line?.count ?? null,
  });
  const [mayTurn, setMayTurn] = useDraftValue(draft, 'mayTurn', line?.mayTurn ?? true);
  const named = useFabricNamed(fabric);
  const inStash = useFabricNames(fabric);
  const save = () => {
    const { width, length, count } = size;
    if (width === null || length === null || count === null || projectId === undefined) return;
    const id = line?.id ?? `by-hand/${crypto.randomUUID()}`;
    const source = line?.source ?? null;
    draft.forget();
    onSave({ id, projectId, source, fabric: fabric.trim(), width, length, count, mayTurn }, named);
    onClose();
  };
  return (
    <DialogForm
      draft={draft}
      title={line === null ? 'Add patches' : 'Change these patches'}
      onSave={save}
      onClose={onClose}
      className={layout['pair']}
      buttons={onDelete !== undefined && <DeleteButton onDelete={onDelete} onClose={onClose} />}
    >
      {projects.length > 1 && line === null && projectId !== undefined && (
        <div className={layout['whole']}>
          <Select
            label="Project"
            value={projectId}
            options={projects.map(({ id, name }) => ({ value: id, words: name }))}
            onChange={setProjectId}
          />
        </div>
      )}
      <div className={layout['whole']}>
        <TextField
          label="Fabric"
          help={
            named === null
              ? 'Type a few letters to choose it from the stash; a name that is not there is to be bought.'
              : 'It is in the stash.'
          }
          value={fabric}
          maximum={120}
          suggestions={[...new Set([...fabrics, ...inStash])]}
          emptyProblem="Enter the fabric they are cut from."
          onChange={setFabric}
        />
      </div>
      <SizeFields size={size} onChange={(part) => setSize((before) => ({ ...before, ...part }))} />
      <div className={layout['whole']}>
        <Checkbox
          label="OK to turn these sideways"
          help="They have no print or grain to follow."
          isChecked={mayTurn}
          onChange={setMayTurn}
        />
      </div>
    </DialogForm>
  );
}

interface LineSize {
  readonly width: Length | null;
  readonly length: Length | null;
  readonly count: number | null;
}

interface SizeFieldsProps {
  readonly size: LineSize;
  readonly onChange: (part: Partial<LineSize>) => void;
}

const { shape } = cuttingLineSchema.unwrap();

function SizeFields({ size, onChange }: SizeFieldsProps) {
  return (
    <>
      <LengthField
        label="Across the fabric"
        help="Cut size, seam allowance included."
        value={size.width}
        {...limitsOf(shape.width)}
        onCommit={(width) => onChange({ width })}
      />
      <LengthField
        label="Along the fabric"
        value={size.length}
        {...limitsOf(shape.length)}
        onCommit={(length) => onChange({ length })}
      />
      <NumberField
        label="How many"
        value={size.count}
        {...limitsOf(shape.count)}
        isWhole
        onCommit={(count) => onChange({ count })}
      />
    </>
  );
}

function limitsOf(field: Parameters<typeof boundsOfSchema>[0]) {
  const { minimum, maximum } = boundsOfSchema(field);
  return { minimum: minimum ?? undefined, maximum: maximum ?? undefined };
}

function DeleteButton({
  onDelete,
  onClose,
}: {
  readonly onDelete: () => void;
  readonly onClose: () => void;
}) {
  return (
    <Button
      look="quiet"
      onClick={() => {
        onDelete();
        onClose();
      }}
    >
      Delete
    </Button>
  );
}
