import { Link } from 'react-router';
import type { FabricGlance } from '#core/contract/stash';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useRead } from '#renderer/bridge/query';
import { useDisplay } from '#renderer/ui/display';
import { Typeset } from '#renderer/ui/typeset';
import { ClothSample } from './cloth-sample';
import { freeWords, overbookedWords, stockWords, thereOf } from './cloth-words';
import styles from './stash.module.css';

/** How many fabrics are fetched at once, as the list is scrolled to them. */
export const LINES_AT_ONCE = 100;

interface FabricLineProps {
  readonly search: string;
  /** Its place in what was found, from 0. */
  readonly index: number;
}

/** One line of the list; it fetches the lines around it together with them. */
export function FabricLine({ search, index }: FabricLineProps) {
  const offset = index - (index % LINES_AT_ONCE);
  const lines = useRead('fabric:list', { search, offset, limit: LINES_AT_ONCE }, { keepsPrevious: true });
  const glance = lines.value?.items[index - offset];
  return glance === undefined ? (
    <div className={styles['line']} />
  ) : (
    <FabricRow glance={glance} search={search} />
  );
}

function FabricRow({ glance, search }: { readonly glance: FabricGlance; readonly search: string }) {
  const { fabric, pieces, valueMinor } = glance;
  const { length, currency, locale } = useDisplay();
  const said = [fabric.colorWords, fabric.print, fabric.place].filter((words) => words !== '');
  const back = search === '' ? '' : `?search=${encodeURIComponent(search)}`;
  const there = stockWords(thereOf(pieces), length);
  const free = freeWords(pieces, length);
  const [over] = pieces.flatMap((piece) => overbookedWords(piece, length) ?? []);
  return (
    <div className={styles['line']}>
      <ClothSample fabric={fabric} />
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
