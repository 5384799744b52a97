import type { Figure, Quantity } from '#core/calculators/explanation';
import { classes } from '../base/classes';
import { ExactText, QuantityText } from './typeset';
import styles from './quantity.module.css';

/** The figure of the moment: the rounded value is the largest thing on the page, the exact one stands quietly below. */
export function HeroFigure({ figure }: { readonly figure: Figure }) {
  const isWords = figure.quantity.kind === 'words';
  return (
    <div className={styles['hero']}>
      <span className={styles['label']}>{figure.label}</span>
      <strong className={classes(styles['value'], isWords && styles['words'])}>
        <QuantityText quantity={figure.quantity} />
      </strong>
      <ExactLine quantity={figure.quantity} />
    </div>
  );
}

/** Figures that stand beside the hero, one a line. */
export function FigureList({ figures }: { readonly figures: readonly Figure[] }) {
  return (
    <dl>
      {figures.map((figure) => (
        <div key={figure.label} className={styles['pair']}>
          <dt className={styles['label']}>{figure.label}</dt>
          <dd className={styles['pairValue']}>
            <QuantityText quantity={figure.quantity} />
            <span className={styles['pairExact']}>
              <ExactText quantity={figure.quantity} />
            </span>
          </dd>
        </div>
      ))}
    </dl>
  );
}

function ExactLine({ quantity }: { readonly quantity: Quantity }) {
  return (
    <span className={styles['exact']}>
      <ExactText quantity={quantity} />
    </span>
  );
}
