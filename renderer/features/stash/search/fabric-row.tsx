import { memo } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { FabricGlance } from '#core/contract/stash';
import type { StashGroup, StashSearch } from '#core/domain/stash-filter';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useRead } from '#renderer/bridge/query';
import { FabricSample } from '#renderer/features/stash/fabric-sample';
import { freeWords, overbookedWords, stockWords, thereOf } from '#renderer/features/stash/fabric-words';
import styles from '#renderer/features/stash/stash.module.css';
import { useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';

/** How many fabrics are fetched at once, as the list is scrolled to them. */
export const LINES_AT_ONCE = 100;

interface FabricAtProps {
  readonly query: StashSearch;
  /** The group it is listed in, where there are groups. */
  readonly group: StashGroup | null;
  /** Its place in what was found, or in its group, from 0. */
  readonly index: number;
}

/** The fabric at a place of what was found; those around it are fetched together with it. */
export function useFabricAt({ query, group, index }: FabricAtProps): FabricGlance | undefined {
  const offset = index - (index % LINES_AT_ONCE);
  const asked = { ...listed(query, group), offset, limit: LINES_AT_ONCE };
  const lines = useRead('fabric:list', asked, { keepsPrevious: true });
  return lines.value?.items[index - offset];
}

/** A search as the list is asked: how it is shown is the page's own affair. */
export function listed({ search, filter, order }: StashSearch, group: StashGroup | null) {
  return { search, filter, order, ...(group === null ? {} : { inGroup: group }) };
}

/** One line of the list. Kept as it is while the list is scrolled past it, or every frame would draw all lines anew. */
export const FabricLine = memo(function FabricLine(props: FabricAtProps) {
  const glance = useFabricAt(props);
  return glance === undefined ? <div className={styles['line']} /> : <FabricRow glance={glance} />;
});

/** One picture of the shelf: the fabric as it looks, its name, and what there is of it. Kept as a line is. */
export const FabricCard = memo(function FabricCard(props: FabricAtProps) {
  const glance = useFabricAt(props);
  const { length } = useDisplay();
  const back = useBackSearch();
  if (glance === undefined) return <div className={styles['card']} />;
  const { fabric, pieces } = glance;
  const there = stockWords(thereOf(pieces), length);
  return (
    <div className={styles['card']}>
      <FabricSample fabric={fabric} />
      <Link to={`/stash/${fabric.id}${back}`} className={styles['name']}>
        {fabric.name}
      </Link>
      <p className={styles['quiet']}>
        <Typeset text={there === '' ? 'Used up' : there} />
      </p>
    </div>
  );
});

function FabricRow({ glance }: { readonly glance: FabricGlance }) {
  const { fabric, pieces, valueMinor } = glance;
  const { length, currency, locale } = useDisplay();
  const said = [fabric.colorWords, fabric.print, fabric.place].filter((words) => words !== '');
  const back = useBackSearch();
  const there = stockWords(thereOf(pieces), length);
  const free = freeWords(pieces, length);
  const [over] = pieces.flatMap((piece) => overbookedWords(piece, length) ?? []);
  return (
    <div className={styles['line']}>
      <FabricSample fabric={fabric} />
      <div className={styles['lineWords']}>
        <Link to={`/stash/${fabric.id}${back}`} className={styles['name']}>
          {fabric.name}
        </Link>
        <p className={styles['quiet']}>
          <Typeset text={said.join(' · ')} />
        </p>
      </div>
      <div className={styles['lineWords']}>
        <p className={styles['stock']}>
          <Typeset text={there === '' ? 'Used up' : there} />
        </p>
        {there !== '' && free !== null && (
          <p className={styles['quiet']}>
            <Typeset text={free} />
          </p>
        )}
        {over !== undefined && (
          <p className={styles['over']}>
            <Typeset text={over} />
          </p>
        )}
      </div>
      <p className={styles['value']}>
        {valueMinor === 0 ? '' : formatMoney(moneyFromMinor(valueMinor, currency), locale)}
      </p>
    </div>
  );
}

/** The query of the list, carried along so that the way back leads to the list as it was. */
function useBackSearch(): string {
  const params = new URLSearchParams(useSearchParams()[0]);
  params.delete('new');
  return params.size === 0 ? '' : `?${params.toString()}`;
}
