import { useState } from 'react';
import type { FabricPage } from '#core/contract/stash';
import { costAgain } from '#core/stash/replacement';
import { useWrite } from '#renderer/bridge/query';
import { shopUnit } from '#renderer/features/stash/shop-unit';
import styles from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { Form } from '#renderer/ui/fields/form';
import { MoneyField } from '#renderer/ui/fields/money-field';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';

interface PriceDialogProps {
  readonly opened: FabricPage;
  readonly onClose: () => void;
}

/** What a shop asks for the fabric now; left empty, what was paid last counts again. */
export function PriceDialog({ opened: { fabric, price }, onClose }: PriceDialogProps) {
  const unit = shopUnit(useDisplay().length);
  const [minor, setMinor] = useState(price === null ? null : costAgain(unit.length * fabric.width, price));
  const pricing = useWrite('fabric:set-price');
  const keep = async () => {
    const told = minor === null || minor === 0 ? null : { minor, length: unit.length };
    const answer = await pricing.write({ fabricId: fabric.id, price: told });
    if (answer.ok) onClose();
  };
  return (
    <Dialog
      title={`What ${fabric.name} costs now`}
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>Not yet</Button>
          <Button look="main" type="submit" form="price" disabled={pricing.isWriting}>
            Keep the price
          </Button>
        </>
      }
    >
      <Form id="price" className={styles['stack']} onSubmit={() => void keep()}>
        <MoneyField
          label={`Price of a ${unit.word}`}
          help="Across the usable width. Left empty, what was paid last counts."
          value={minor}
          maximum={100_000_000}
          isOptional
          autoFocus
          onCommit={setMinor}
        />
      </Form>
      <ProblemNotice problem={pricing.problem} />
    </Dialog>
  );
}
