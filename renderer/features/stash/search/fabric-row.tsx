import { memo } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { FabricGlance } from '#core/contract/stash';
import type { StashGroup, StashSearch } from '#core/domain/stash-filter';
import { useRead } from '#renderer/bridge/query';
import { FabricSample } from '#renderer/features/stash/fabric-sample';
import { freeWords, overbookedWords, stockWords, stockOf } from '#renderer/features/stash/fabric-words';
import { useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import { loneCostWords } from '#renderer/text/cost-words';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './search.module.css';

/** How many fabrics are fetched at once while the list is scrolled. */
export const LINES_AT_ONCE = 100;

interface FabricAtProps {
  readonly query: StashSearch;
  /** The group it is listed in; null without groups. */
  readonly group: StashGroup | null;
  /** Its position in the result or in its group, from 0. */
  readonly index: number;
}

/** The fabric at a position of the result. The fabrics around it are fetched with it. */
function useFabricAt({ query, group, index }: FabricAtProps): FabricGlance | undefined {
  const offset = index - (index % LINES_AT_ONCE);
  const input = { ...listInput(query, group), offset, limit: LINES_AT_ONCE };
  const lines = useRead('fabric:list', input, { keepsPrevious: true });
  return lines.value?.items[index - offset];
}

/** The part of a search that the store answers; how it is shown concerns only the page. */
export function listInput({ search, filter, order }: StashSearch, group: StashGroup | null) {
  return { search, filter, order, ...(group === null ? {} : { inGroup: group }) };
}

/** One line of the list. Memoized, or every frame of scrolling would redraw all lines. */
export const FabricLine = memo(function FabricLine(props: FabricAtProps) {
  const glance = useFabricAt(props);
  return glance === undefined ? <div className={styles['line']} /> : <FabricRow glance={glance} />;
});

/** One card of the picture view: the fabric, its name and its stock. Memoized like a line. */
export const FabricCard = memo(function FabricCard(props: FabricAtProps) {
  const glance = useFabricAt(props);
  const { length } = useDisplay();
  const back = useBackSearch();
  if (glance === undefined) return <div className={styles['card']} />;
  const { fabric, pieces } = glance;
  const there = stockWords(stockOf(pieces), length);
  return (
    <div className={styles['card']}>
      <FabricSample fabric={fabric} size="square" />
      <Link to={`/stash/${fabric.id}${back}`} className={layout['name']}>
        {fabric.name}
      </Link>
      <p className={layout['quiet']}>
        <Typeset text={there === '' ? 'Used up' : there} />
      </p>
    </div>
  );
});

function FabricRow({ glance }: { readonly glance: FabricGlance }) {
  const { fabric, pieces, value } = glance;
  const display = useDisplay();
  const { length } = display;
  const details = [fabric.colorWords, fabric.print, fabric.place].filter((words) => words !== '');
  const back = useBackSearch();
  const there = stockWords(stockOf(pieces), length);
  const free = freeWords(pieces, length);
  const [over] = pieces.flatMap((piece) => overbookedWords(piece, length) ?? []);
  return (
    <div className={styles['line']}>
      <FabricSample fabric={fabric} />
      <div className={styles['lineWords']}>
        <Link to={`/stash/${fabric.id}${back}`} className={layout['name']}>
          {fabric.name}
        </Link>
        <p className={layout['quiet']}>
          <Typeset text={details.join(' · ')} />
        </p>
      </div>
      <div className={styles['lineWords']}>
        <p className={styles['stock']}>
          <Typeset text={there === '' ? 'Used up' : there} />
        </p>
        {there !== '' && free !== null && (
          <p className={layout['quiet']}>
            <Typeset text={free} />
          </p>
        )}
        {over !== undefined && (
          <p className={layout['alert']}>
            <Typeset text={over} />
          </p>
        )}
      </div>
      <p className={styles['value']}>{loneCostWords(value, display)}</p>
    </div>
  );
}

/** The query of the list, kept in the link so that the way back leads to the same list. */
function useBackSearch(): string {
  const params = new URLSearchParams(useSearchParams()[0]);
  params.delete('new');
  return params.size === 0 ? '' : `?${params.toString()}`;
}
