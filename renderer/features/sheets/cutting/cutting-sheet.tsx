import { CAUTIONS } from '#core/domain/cautions';
import type { SheetPaper } from '#core/domain/paper';
import type { CuttingPlanPage } from '#core/contract/cutting';
import { planOfKept } from '#core/cutting/tree/kept-plan';
import { listNameOf } from '#core/domain/cutting-setup';
import { fabricIdSchema, type ProjectId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { formatLength, formatYardage } from '#core/units/format-length';
import { useRead, useReadEach } from '#renderer/bridge/query';
import { useOpening } from '#renderer/bridge/workshop';
import { asLength } from '#renderer/text/cut-words';
import { problemWords } from '#renderer/text/problems';
import { useDisplay } from '#renderer/ui/base/display';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { PatchKey } from '#renderer/ui/drawings/patch-key';
import { Typeset } from '#renderer/ui/answers/typeset';
import { CuttingSheetPiece, type NamedFabric } from './cutting-sheet-piece';
import { RunningSheet } from '../paper/running-sheet';
import { EmptySheet } from '../paper/empty-sheet';
import styles from './cutting-sheet.module.css';
import shared from '../paper/sheet.module.css';
import { defineSheet, readProject } from '../sheet';

interface CuttingSheetProps {
  readonly projectId: ProjectId;
  readonly paper: SheetPaper;
}

/** A project’s cutting plan on paper: every piece of fabric drawn, and its cuts in order to tick by hand. */
function CuttingSheet({ projectId, paper }: CuttingSheetProps) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  const { value: saved } = useRead('cutting:open', { projectId });
  const opening = useOpening();
  const { length } = useDisplay();
  if (problem !== null) return <EmptySheet paper={paper}>{problemWords(problem, length)}</EmptySheet>;
  if (spread === undefined || saved === undefined || opening === undefined) return null;
  if (saved === null)
    return <EmptySheet paper={paper}>No cutting plan is saved for this project yet.</EmptySheet>;
  const { settings } = measurementsOfProject(spread.project, opening.workshop.settings);
  return (
    <SettingsDisplay settings={settings}>
      <WholePlan saved={saved} name={spread.project.name} paper={paper} />
    </SettingsDisplay>
  );
}

interface WholePlanProps {
  readonly saved: CuttingPlanPage;
  readonly name: string;
  readonly paper: SheetPaper;
}

function WholePlan({ saved, name, paper }: WholePlanProps) {
  const plan = planOfKept(saved);
  const fabrics = useFabrics(plan.pieces.map(({ fabric }) => fabric));
  if (fabrics === undefined) return null;
  const { setup } = saved.plan;
  const nameOf = (key: string) => fabrics.get(key)?.name ?? listNameOf(setup, key) ?? 'fabric';
  return (
    <RunningSheet paper={paper} name={name}>
      <h1>Cutting plan</h1>
      <PatchKey lines={setup.lines} className={styles['patches']} />
      <ToBuy purchases={plan.purchases} nameOf={nameOf} />
      <section className={shared['cautions']}>
        <h3>Caution</h3>
        <ul>
          <li>{CAUTIONS.rotaryBlade}</li>
          <li>{CAUTIONS.usedBlades}</li>
          <li>{CAUTIONS.cuttingTable}</li>
        </ul>
      </section>
      {saved.plan.pieces.map((piece, index) => {
        const planned = plan.pieces[index];
        return planned === undefined ? null : (
          <CuttingSheetPiece
            key={`${piece.fabric} ${piece.pieceId ?? 'new'}`}
            piece={piece}
            plan={planned}
            saved={saved}
            name={nameOf(piece.fabric)}
            fabric={fabrics.get(piece.fabric)}
          />
        );
      })}
    </RunningSheet>
  );
}

interface ToBuyProps extends Pick<CuttingPlanPage['plan'], 'purchases'> {
  readonly nameOf: (key: string) => string;
}

function ToBuy({ purchases, nameOf }: ToBuyProps) {
  const { length } = useDisplay();
  if (purchases.length === 0) return null;
  return (
    <section className={shared['fabric']}>
      <h2>To buy</h2>
      <ul>
        {purchases.map((one) => (
          <li key={one.fabric}>
            <Typeset
              text={`${formatYardage(asLength(one.length), length)} of ${nameOf(one.fabric)}, ${formatLength(asLength(one.width), length)} wide`}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The fabrics of the stash among the planner’s fabrics, by the planner’s key; undefined until they are read. */
function useFabrics(keys: readonly string[]): ReadonlyMap<string, NamedFabric> | undefined {
  const ids = [...new Set(keys)].flatMap((key) => {
    const id = fabricIdSchema.safeParse(key);
    return id.success ? [id.data] : [];
  });
  const pages = useReadEach(
    'fabric:open',
    ids.map((id) => ({ fabricId: id })),
  );
  if (pages === undefined) return undefined;
  return new Map(
    pages
      .filter((page) => page !== null)
      .map(({ fabric, pieces }): [string, NamedFabric] => [fabric.id, { ...fabric, pieces }]),
  );
}

export const cuttingSheet = defineSheet(readProject, CuttingSheet);
