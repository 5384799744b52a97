import { useState } from 'react';
import type { Fabric } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/button';
import { Dialog } from '#renderer/ui/dialog';
import { Form } from '#renderer/ui/form';
import { ProblemNotice } from '#renderer/ui/problem-notice';
import { detailsOf } from './fabric-draft';
import { FabricFields } from './fabric-fields';

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
      title={`Change ${fabric.name}`}
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
      <Form id="change-fabric" onSubmit={() => void keep()}>
        <FabricFields details={details} onChange={setDetails} autoFocus />
      </Form>
      <ProblemNotice problem={changing.problem} />
    </Dialog>
  );
}
