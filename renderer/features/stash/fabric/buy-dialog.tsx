import { useState } from 'react';
import type { Fabric } from '#core/domain/stash';
import { useWrite } from '#renderer/bridge/query';
import { BoughtFields } from '#renderer/features/stash/bought-fields';
import { emptyPiece, purchaseOf } from '#renderer/features/stash/fabric-draft';
import { PlaceField } from '#renderer/features/stash/place-field';
import styles from '#renderer/features/stash/stash.module.css';
import { today } from '#renderer/text/dates';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { Form } from '#renderer/ui/fields/form';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { TextField } from '#renderer/ui/fields/text-field';

interface BuyDialogProps {
  readonly fabric: Fabric;
  readonly onClose: () => void;
}

/** Another piece of a fabric. */
export function BuyDialog({ fabric, onClose }: BuyDialogProps) {
  const [piece, setPiece] = useState(() => emptyPiece(today()));
  const buying = useWrite('ledger:buy');
  const buy = async () => {
    const bought = purchaseOf(piece, fabric.id, today());
    if (bought === null) return;
    const answer = await buying.write(bought);
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title="Another piece"
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="buy" disabled={buying.isWriting}>
            Write it down
          </Button>
        </>
      }
    >
      <Form id="buy" className={styles['stack']} onSubmit={() => void buy()}>
        <BoughtFields piece={piece} fabricWidth={fabric.width} autoFocus onChange={setPiece} />
        <PlaceField
          label="Lies elsewhere"
          help="Only where it does not lie with the rest of this fabric."
          value={piece.place}
          onChange={(place) => setPiece({ ...piece, place })}
        />
        <TextField
          label="Note"
          isOptional
          value={piece.note}
          maximum={500}
          onChange={(note) => setPiece({ ...piece, note })}
        />
      </Form>
      <ProblemNotice problem={buying.problem} />
    </Dialog>
  );
}
