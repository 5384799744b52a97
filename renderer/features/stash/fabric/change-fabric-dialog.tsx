import { useState } from 'react';
import type { Fabric } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { detailsOf } from '#renderer/features/stash/fabric-draft';
import styles from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { LooksFields, MoreFields } from './fabric-fields';

interface ChangeFabricDialogProps {
  readonly fabric: Fabric;
  readonly onClose: () => void;
}

/** Changes what was said of a fabric; its pieces stay as they were measured. */
export function ChangeFabricDialog({ fabric, onClose }: ChangeFabricDialogProps) {
  const [details, setDetails] = useState(() => detailsOf(fabric));
  const changing = useWrite('fabric:change');
  const keep = async () => {
    const answer = await changing.write({ fabricId: fabric.id, details });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title="Change this fabric"
      isWide
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Leave it as it was</Button>
          <Button look="main" type="submit" form="change-fabric" disabled={changing.isWriting}>
            Keep the changes
          </Button>
        </>
      }
    >
      <Form id="change-fabric" className={styles['parts']} onSubmit={() => void keep()}>
        <LooksFields details={details} onChange={setDetails} />
        <MoreFields details={details} onChange={setDetails} />
      </Form>
      <ProblemNotice problem={changing.problem} />
    </Dialog>
  );
}
