import type { SheetPaper } from '#core/domain/paper';
import { useRead } from '#renderer/bridge/query';
import { useOpening } from '#renderer/bridge/workshop';
import { problemWords } from '#renderer/text/problems';
import {
  amountToBuy,
  entriesByShop,
  nameToBuy,
  type ShopEntry,
  shopWords,
  sizeToBuy,
} from '#renderer/text/shopping-words';
import { useDisplay } from '#renderer/ui/base/display';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { Typeset } from '#renderer/ui/answers/typeset';
import { PaperBox } from '../paper/paper-box';
import { RunningSheet } from '../paper/running-sheet';
import { EmptySheet } from '../paper/empty-sheet';
import styles from './shopping-sheet.module.css';
import { defineSheet } from '../sheet';

/** The shopping list on paper: large print, one section for each shop, with boxes to tick by hand. */
function ShoppingSheet({ paper }: { readonly paper: SheetPaper }) {
  const opening = useOpening();
  const { value: list, problem } = useRead('shopping:list', {});
  const { length } = useDisplay();
  if (problem !== null) return <EmptySheet paper={paper}>{problemWords(problem, length)}</EmptySheet>;
  if (list === undefined || opening === undefined) return null;
  const shops = entriesByShop(list.lines, list.own);
  if (shops.length === 0) return <EmptySheet paper={paper}>There is nothing to buy.</EmptySheet>;
  return (
    <SettingsDisplay settings={opening.workshop.settings}>
      <RunningSheet paper={paper} name="Shopping list">
        <h1 className={styles['title']}>Shopping list</h1>
        {shops.map(({ supplier, lines }) => (
          <section key={supplier} className={styles['shop']}>
            <h2>{shopWords(supplier)}</h2>
            <ul>
              {lines.map((entry) => (
                <SheetEntry key={entry.key} entry={entry} />
              ))}
            </ul>
          </section>
        ))}
      </RunningSheet>
    </SettingsDisplay>
  );
}

function SheetEntry({ entry }: { readonly entry: ShopEntry }) {
  const { length } = useDisplay();
  const isOwn = entry.kind === 'own';
  const amount = isOwn ? entry.line.howMuch : amountToBuy(entry.line, length);
  const projects = isOwn
    ? (entry.line.projectName ?? '')
    : [...new Set(entry.line.shares.map(({ need }) => need.projectName))].join(', ');
  return (
    <li className={styles['line']}>
      <PaperBox isTicked={false} />
      <span className={styles['amount']}>
        <Typeset text={amount} />
      </span>
      <span>
        <span className={styles['name']}>{isOwn ? entry.line.words : nameToBuy(entry.line)}</span>
        {!isOwn && (
          <span className={styles['under']}>
            <Typeset text={sizeToBuy(entry.line, length)} />
          </span>
        )}
        {projects !== '' && <span className={styles['under']}>for {projects}</span>}
      </span>
    </li>
  );
}

export const shoppingSheet = defineSheet(({ path }) => (path.length === 0 ? {} : null), ShoppingSheet);
