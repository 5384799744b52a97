import { useId } from 'react';
import type { FabricFit } from '#core/contract/shopping';
import type { FabricId } from '#core/domain/ids';
import { formatArea } from '#core/units/format-area';
import { formatLength } from '#core/units/format-length';
import { stockWords, stockOf } from '#renderer/features/stash/fabric-words';
import { Typeset } from '#renderer/ui/answers/typeset';
import { useDisplay } from '#renderer/ui/base/display';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './shopping.module.css';

interface FabricFitsProps {
  readonly fits: readonly FabricFit[];
  readonly chosen: FabricFit | undefined;
  readonly onPick: (id: FabricId) => void;
}

/** The fabrics that fit a need, one of them chosen. */
export function FabricFits({ fits, chosen, onPick }: FabricFitsProps) {
  const group = useId();
  return (
    <fieldset className={styles['found']}>
      <legend className={layout['quiet']}>Fabrics in your stash</legend>
      {fits.map((fit) => (
        <label key={fit.fabric.id} className={styles['option']}>
          <input type="radio" name={group} checked={fit === chosen} onChange={() => onPick(fit.fabric.id)} />
          <span className={styles['swatch']} style={{ backgroundColor: fit.fabric.swatch }} />
          <FitFabric fit={fit} />
          <FitVerdict fit={fit} />
        </label>
      ))}
    </fieldset>
  );
}

function FitFabric({ fit }: { readonly fit: FabricFit }) {
  const { length } = useDisplay();
  const { fabric, pieces, isHeld } = fit;
  const places = [...new Set([...pieces.map(({ place }) => place), fabric.place])].filter(
    (one) => one !== '',
  );
  const under = [
    stockWords(stockOf(pieces), length),
    places.length === 0 ? 'no place' : places.join('; '),
    ...(isHeld ? ['set aside for this project'] : []),
  ];
  return (
    <span>
      <strong>{fabric.name}</strong>
      <br />
      <span className={layout['quiet']}>
        <Typeset text={under.join(' · ')} />
      </span>
    </span>
  );
}

function FitVerdict({ fit }: { readonly fit: FabricFit }) {
  const { length } = useDisplay();
  const { verdict, leftOver, shortBy, takes } = fit;
  if (verdict === 'short') {
    const words = shortBy === null ? 'Too narrow' : `Short by ${formatLength(shortBy, length, 'up')}`;
    return (
      <span className={styles['short']}>
        <Typeset text={words} />
      </span>
    );
  }
  const from = verdict === 'one-piece' ? 'Enough in one piece' : `Enough from ${String(takes.length)} pieces`;
  return (
    <span>
      <span className={styles['fit']}>{from}</span>
      <span className={layout['quiet']}>
        <Typeset text={`leaves ${formatArea(leftOver, length)}`} />
      </span>
    </span>
  );
}
