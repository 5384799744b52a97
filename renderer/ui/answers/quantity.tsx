import type { Figure, Quantity } from '#core/calculators/explanation';
import { classes } from '../base/classes';
import { ExactText, QuantityText } from './typeset';
import styles from './quantity.module.css';

/** The main figure: its rounded value is the largest text on the page, its exact value is small below it. */
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

/** The figures beside the main one, one per line. */
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
