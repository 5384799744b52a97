import { useState } from 'react';
import type { FabricPiece } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { PlaceField } from '#renderer/features/stash/place-field';
import styles from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';

interface LieDialogProps {
  readonly piece: FabricPiece;
  readonly onClose: () => void;
}

/** Asks where one piece lies, apart from the rest of its fabric. */
export function LieDialog({ piece, onClose }: LieDialogProps) {
  const [path, setPath] = useState(piece.place);
  const laying = useWrite('piece:lie');
  const lay = async () => {
    const answer = await laying.write({ pieceId: piece.id, path });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title="Where this piece lies"
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="lie" disabled={laying.isWriting}>
            Lay it there
          </Button>
        </>
      }
    >
      <Form id="lie" className={styles['stack']} onSubmit={() => void lay()}>
        <PlaceField
          label="Place"
          help="From the room down, parted by commas. Empty lays it with the rest of its fabric."
          value={path}
          autoFocus
          onChange={setPath}
        />
      </Form>
      <ProblemNotice problem={laying.problem} />
    </Dialog>
  );
}
