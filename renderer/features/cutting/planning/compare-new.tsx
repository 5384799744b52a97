import { useMemo, useState } from 'react';
import type { CuttingJob, JobPiece, JobPlan } from '#core/cutting/tree/cutting-job';
import { formatArea } from '#core/units/format-area';
import { formatLength, formatYardage } from '#core/units/format-length';
import { asLength, counted } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { type Display, useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import { fabricTaken } from './cutting-plan-words';
import { usePlanning } from './use-planning';
import styles from './compare-new.module.css';
import layout from '#renderer/ui/page/layout.module.css';

interface CompareNewProps {
  readonly job: CuttingJob;
  /** The plan that uses the stash. */
  readonly plan: JobPlan;
}

/** On request, compares the plan with one for which all fabric is bought; nothing when all is bought anyway. */
export function CompareNew({ job, plan }: CompareNewProps) {
  const [isOpen, setIsOpen] = useState(false);
  if (plan.pieces.every(({ piece }) => piece === undefined)) return null;
  return (
    <section className={layout['part']} aria-label="Your stash or new fabric">
      {isOpen && <Comparison job={job} plan={plan} />}
      <div>
        <Button isSmall aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
          {isOpen ? 'Close the comparison' : 'Compare with buying it all new'}
        </Button>
      </div>
    </section>
  );
}

function Comparison({ job, plan }: CompareNewProps) {
  const allNew = useMemo(
    () => ({
      ...job,
      fabrics: job.fabrics.map((fabric) => ({ ...fabric, pieces: fabric.pieces.flatMap(onlyWhatIsCut) })),
    }),
    [job],
  );
  const { answer } = usePlanning(allNew);
  const bought = answer && (plan.rule === '2-stage' ? answer.simplestCuts : answer.leastFabric);
  const display = useDisplay();
  return (
    <>
      <h2 className={layout['heading']}>Your stash or new fabric</h2>
      <table className={styles['compare']}>
        <thead>
          <tr>
            <td />
            <th scope="col">From your stash</th>
            <th scope="col">All bought new</th>
          </tr>
        </thead>
        <tbody>
          {ROWS.map(([name, words]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {[plan, bought].map((one, index) => (
                <td key={index}>{one === null ? '…' : <Typeset text={words(one, display)} />}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** What is already cut counts in both plans; the rest of a piece is not used. */
function onlyWhatIsCut(piece: JobPiece): readonly JobPiece[] {
  const length = piece.lockedParts.reduce((sum, { height }) => sum + height, 0);
  return length === 0 ? [] : [{ ...piece, length }];
}

type Row = readonly [name: string, words: (plan: JobPlan, display: Display) => string];

const ROWS: readonly Row[] = [
  [
    'To buy',
    ({ purchases }, { length }) =>
      purchases.length === 0
        ? 'nothing'
        : formatYardage(asLength(purchases.reduce((sum, one) => sum + one.length, 0)), length),
  ],
  ['Length of fabric cut', (plan, { length }) => formatLength(asLength(fabricTaken(plan)), length, 'up')],
  ['Fabric used', ({ totals }, { length }) => formatArea(totals.usedArea, length)],
  ['Pieces cut into', ({ totals }) => String(totals.pieces)],
  ['Cuts', ({ totals }) => counted(totals.cuts, 'cut')],
];
