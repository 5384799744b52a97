import { useState } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { ShoppingList } from '#core/contract/shopping';
import type { SavedShoppingLine } from '#core/domain/shopping';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import { useRead, useWrite } from '#renderer/bridge/query';
import { entriesByShop, type ShopEntry, shopWords } from '#renderer/text/shopping-words';
import { Button } from '#renderer/ui/page/button';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { PrintSheetButton } from '#renderer/ui/page/print-sheet-button';
import layout from '#renderer/ui/page/layout.module.css';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { ChooseFabricDialog } from './choose-fabric-dialog';
import { OwnLineDialog } from './own-line-dialog';
import { ShopBuyDialog } from './shop-buy-dialog';
import { NeededLine, OwnLine } from './shopping-line';
import styles from './shopping.module.css';

type OpenDialog =
  | { readonly kind: 'buy'; readonly entry: ShopEntry }
  | { readonly kind: 'own'; readonly line: SavedShoppingLine | null }
  | { readonly kind: 'fabric'; readonly need: FabricNeed };

/** What to buy for all open projects, shop by shop, and the maker's own lines; with `?project=ID` for one project. */
export function ShoppingPage() {
  const { value: list, problem } = useRead('shopping:list', {});
  const [dialog, setDialog] = useState<OpenDialog | null>(null);
  const printing = useWrite('shell:print-sheet');
  const choosing = useWrite('shopping:choose');
  const deleting = useWrite('shopping:delete-line');
  const only = useSearchParams()[0].get('project');
  const shops = list === undefined ? [] : entriesByShop(...linesFor(list, only));
  const leaveOut = ({ projectId, source, name }: FabricNeed) =>
    void choosing.write({ projectId, source, name, choice: { kind: 'leave-out' } });
  return (
    <Page
      title="Shopping"
      under="What your open projects need and your stash doesn’t have, in lengths that shops cut."
      action={
        <Button look="main" onClick={() => setDialog({ kind: 'own', line: null })}>
          Add an item
        </Button>
      }
      aside={
        shops.length > 0 && (
          <PrintSheetButton printing={printing} sheet="shopping" name="Shopping list" look="quiet">
            Print the list
          </PrintSheetButton>
        )
      }
    >
      <ProblemNotice problem={problem ?? choosing.problem ?? deleting.problem} />
      {only !== null && (
        <p>
          Showing one project only. <Link to="/shopping">Show the whole list</Link>
        </p>
      )}
      {list !== undefined && shops.length === 0 && (
        <EmptyState title="Nothing to buy">
          <p>
            Save a backing, binding or cutting plan for a project, and anything your stash is short of shows
            up here. You can add your own items too.
          </p>
        </EmptyState>
      )}
      {shops.map(({ supplier, lines }) => (
        <section key={supplier} className={styles['shop']} aria-label={shopWords(supplier)}>
          <h2>{shopWords(supplier)}</h2>
          <ul className={layout['lines']}>
            {lines.map((entry) =>
              entry.kind === 'needed' ? (
                <NeededLine
                  key={entry.key}
                  line={entry.line}
                  onBuy={() => setDialog({ kind: 'buy', entry })}
                  onChoose={(need) => setDialog({ kind: 'fabric', need })}
                  onLeaveOut={leaveOut}
                />
              ) : (
                <OwnLine
                  key={entry.key}
                  line={entry.line}
                  onBuy={() => setDialog({ kind: 'buy', entry })}
                  onChange={() => setDialog({ kind: 'own', line: entry.line })}
                  onDelete={() => void deleting.write({ lineId: entry.line.id })}
                />
              ),
            )}
          </ul>
        </section>
      ))}
      {list !== undefined && list.leftOut.length > 0 && (
        <LeftOut
          needs={list.leftOut}
          onRestore={({ projectId, source, name }) =>
            void choosing.write({ projectId, source, name, choice: null })
          }
        />
      )}
      {dialog !== null && <ShoppingDialog dialog={dialog} onClose={() => setDialog(null)} />}
    </Page>
  );
}

interface ShoppingDialogProps {
  readonly dialog: OpenDialog;
  readonly onClose: () => void;
}

function ShoppingDialog({ dialog, onClose }: ShoppingDialogProps) {
  switch (dialog.kind) {
    case 'buy':
      return <ShopBuyDialog entry={dialog.entry} onClose={onClose} />;
    case 'own':
      return <OwnLineDialog line={dialog.line} onClose={onClose} />;
    case 'fabric':
      return <ChooseFabricDialog need={dialog.need} onClose={onClose} />;
  }
}

/** The lines that one project has a share in; all lines without a project. */
function linesFor(
  { lines, own }: ShoppingList,
  projectId: string | null,
): [ShoppingList['lines'], ShoppingList['own']] {
  if (projectId === null) return [lines, own];
  return [
    lines.filter(({ shares }) => shares.some(({ need }) => need.projectId === projectId)),
    own.filter((line) => line.projectId === projectId),
  ];
}

interface LeftOutProps {
  readonly needs: readonly FabricNeed[];
  readonly onRestore: (need: FabricNeed) => void;
}

function LeftOut({ needs, onRestore }: LeftOutProps) {
  return (
    <details className={styles['leftOut']}>
      <summary>Left out ({needs.length})</summary>
      <ul className={layout['lines']}>
        {needs.map((need) => (
          <li key={`${need.projectId} ${need.source} ${need.name}`} className={styles['left']}>
            <span>
              {need.name} <span className={layout['quiet']}>for {need.projectName}</span>
            </span>
            <Button
              look="quiet"
              isSmall
              aria-label={`Restore ${need.name} for ${need.projectName}`}
              onClick={() => onRestore(need)}
            >
              Restore
            </Button>
          </li>
        ))}
      </ul>
    </details>
  );
}
