import { useState } from 'react';
import type { CuttingLine } from '#core/domain/cutting-setup';
import type { ProjectId } from '#core/domain/ids';
import type { Length } from '#core/units/length';
import { Button } from '#renderer/ui/page/button';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Select } from '#renderer/ui/fields/choice';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { LengthField } from '#renderer/ui/fields/length-field';
import { NumberField } from '#renderer/ui/fields/number-field';
import { TextField } from '#renderer/ui/fields/text-field';
import styles from '../cutting.module.css';

interface LineDialogProps {
  /** The line to change; null for a new one. */
  readonly line: CuttingLine | null;
  readonly projects: readonly { readonly id: ProjectId; readonly name: string }[];
  readonly fabrics: readonly string[];
  readonly onKeep: (line: CuttingLine) => void;
  readonly onRemove?: () => void;
  readonly onClose: () => void;
}

const WIDEST = 10 * 320_000;
const NARROWEST = 127;

/** Patches of one size: entered by hand, or a line of a list put right. */
export function LineDialog({ line, projects, fabrics, onKeep, onRemove, onClose }: LineDialogProps) {
  const [projectId, setProjectId] = useState(line?.projectId ?? projects[0]?.id);
  const [fabric, setFabric] = useState(line?.fabric ?? fabrics[0] ?? '');
  const [width, setWidth] = useState<Length | null>(line?.width ?? null);
  const [length, setLength] = useState<Length | null>(line?.length ?? null);
  const [count, setCount] = useState<number | null>(line?.count ?? null);
  const [mayTurn, setMayTurn] = useState(line?.mayTurn ?? true);
  const keep = () => {
    if (width === null || length === null || count === null || projectId === undefined) return;
    const id = line?.id ?? `by-hand/${crypto.randomUUID()}`;
    onKeep({
      ...{ id, projectId, fabric: fabric.trim(), width, length, count, mayTurn },
      source: line?.source ?? null,
    });
    onClose();
  };
  return (
    <Dialog
      title={line === null ? 'Add patches' : 'Change these patches'}
      onClose={onClose}
      foot={
        <>
          {onRemove !== undefined && (
            <Button
              look="quiet"
              onClick={() => {
                onRemove();
                onClose();
              }}
            >
              Do not cut them
            </Button>
          )}
          <Button onClick={onClose}>Not now</Button>
          <Button look="main" type="submit" form="cutting-line">
            {line === null ? 'Add them' : 'Change them'}
          </Button>
        </>
      }
    >
      <Form id="cutting-line" className={styles['form']} onSubmit={keep}>
        {projects.length > 1 && line === null && projectId !== undefined && (
          <div className={styles['whole']}>
            <Select
              label="For which piece"
              value={projectId}
              options={projects.map(({ id, name }) => ({ value: id, words: name }))}
              onChange={setProjectId}
            />
          </div>
        )}
        <div className={styles['whole']}>
          <TextField
            label="Fabric"
            help="As the list calls it; which fabric of the stash it is can be chosen afterwards."
            value={fabric}
            maximum={120}
            suggestions={[...new Set(fabrics)]}
            emptyProblem="Write which fabric they are cut from."
            onChange={setFabric}
          />
        </div>
        <LengthField
          label="Across the fabric"
          help="Cut size, seam allowance included."
          value={width}
          minimum={NARROWEST}
          maximum={WIDEST}
          onCommit={setWidth}
        />
        <LengthField
          label="Along the fabric"
          value={length}
          minimum={NARROWEST}
          maximum={WIDEST}
          onCommit={setLength}
        />
        <NumberField
          label="How many"
          value={count}
          minimum={1}
          maximum={1_000_000}
          isWhole
          onCommit={setCount}
        />
        <div className={styles['whole']}>
          <Checkbox
            label="They may be turned"
            help="No print or grain on them has to run along the fabric."
            isChecked={mayTurn}
            onChange={setMayTurn}
          />
        </div>
      </Form>
    </Dialog>
  );
}
