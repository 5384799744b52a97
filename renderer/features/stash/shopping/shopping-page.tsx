import { useState } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { ShoppingList } from '#core/contract/shopping';
import type { KeptShoppingLine } from '#core/domain/shopping';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import { useRead, useWrite } from '#renderer/bridge/query';
import { entriesByShop, type ShopEntry, shopWords } from '#renderer/text/shopping-words';
import { Button } from '#renderer/ui/page/button';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { PrintSheetButton } from '#renderer/ui/page/print-sheet-button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { ChooseFabricDialog } from './choose-fabric-dialog';
import { OwnLineDialog } from './own-line-dialog';
import { ShopBuyDialog } from './shop-buy-dialog';
import { NeededLine, OwnLine } from './shopping-line';
import styles from './shopping.module.css';

type Asked =
  | { readonly kind: 'buy'; readonly entry: ShopEntry }
  | { readonly kind: 'own'; readonly line: KeptShoppingLine | null }
  | { readonly kind: 'fabric'; readonly need: FabricNeed };

/** What has to be bought for all open pieces, shop by shop, and what the maker wrote down herself; with `?project=ID` for one. */
export function ShoppingPage() {
  const { value: list, problem } = useRead('shopping:list', {});
  const [asked, setAsked] = useState<Asked | null>(null);
  const printing = useWrite('shell:print-sheet');
  const choosing = useWrite('shopping:choose');
  const removing = useWrite('shopping:remove');
  const only = useSearchParams()[0].get('project');
  const shops = list === undefined ? [] : entriesByShop(...linesFor(list, only));
  const leaveOut = ({ projectId, source, name }: FabricNeed) =>
    void choosing.write({ projectId, source, name, choice: { kind: 'leave-out' } });
  const close = () => setAsked(null);
  return (
    <Page
      title="Shopping"
      under="What the open pieces need and the stash does not hold, in lengths that shops cut."
      action={
        <Button look="main" onClick={() => setAsked({ kind: 'own', line: null })}>
          Add a line
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
      <ProblemNotice problem={problem ?? choosing.problem ?? removing.problem} />
      {only !== null && (
        <p>
          Only what one piece needs is shown. <Link to="/shopping">The whole list</Link>
        </p>
      )}
      {list !== undefined && shops.length === 0 && (
        <EmptyState title="Nothing to buy">
          <p>
            Keep an answer on a stage, such as its backing or its binding, or a cutting plan, and what the
            stash does not hold for it stands here. A line of your own can be added too.
          </p>
        </EmptyState>
      )}
      {shops.map(({ supplier, lines }) => (
        <section key={supplier} className={styles['shop']} aria-label={shopWords(supplier)}>
          <h2>{shopWords(supplier)}</h2>
          <ul className={styles['lines']}>
            {lines.map((entry) =>
              entry.kind === 'needed' ? (
                <NeededLine
                  key={entry.key}
                  line={entry.line}
                  onBuy={() => setAsked({ kind: 'buy', entry })}
                  onChoose={(need) => setAsked({ kind: 'fabric', need })}
                  onLeaveOut={leaveOut}
                />
              ) : (
                <OwnLine
                  key={entry.key}
                  line={entry.line}
                  onBuy={() => setAsked({ kind: 'buy', entry })}
                  onChange={() => setAsked({ kind: 'own', line: entry.line })}
                  onRemove={() => void removing.write({ lineId: entry.line.id })}
                />
              ),
            )}
          </ul>
        </section>
      ))}
      {list !== undefined && list.leftOut.length > 0 && (
        <LeftOut
          needs={list.leftOut}
          onPutBack={({ projectId, source, name }) =>
            void choosing.write({ projectId, source, name, choice: null })
          }
        />
      )}
      {asked?.kind === 'buy' && <ShopBuyDialog entry={asked.entry} onClose={close} />}
      {asked?.kind === 'own' && <OwnLineDialog line={asked.line} onClose={close} />}
      {asked?.kind === 'fabric' && <ChooseFabricDialog need={asked.need} onClose={close} />}
    </Page>
  );
}

/** The lines that one piece has a share in; all of them where none is named. */
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
  readonly onPutBack: (need: FabricNeed) => void;
}

function LeftOut({ needs, onPutBack }: LeftOutProps) {
  return (
    <details className={styles['leftOut']}>
      <summary>Left off the list ({needs.length})</summary>
      <ul className={styles['lines']}>
        {needs.map((need) => (
          <li key={`${need.projectId} ${need.source} ${need.name}`} className={styles['left']}>
            <span>
              {need.name} <span className={styles['quiet']}>for {need.projectName}</span>
            </span>
            <Button
              look="quiet"
              isSmall
              aria-label={`Put ${need.name} for ${need.projectName} back on the list`}
              onClick={() => onPutBack(need)}
            >
              Put it back
            </Button>
          </li>
        ))}
      </ul>
    </details>
  );
}
