import styles from './sheet.module.css';

/** A box to tick by hand, printed ticked if it is ticked in the notebook. */
export function PaperBox({ isTicked }: { readonly isTicked: boolean }) {
  return (
    <svg
      width="15"
      height="15"
      viewBox="0 0 15 15"
      role="img"
      aria-label={isTicked ? 'checked' : 'not checked'}
    >
      <rect x="1" y="1" width="13" height="13" className={styles['box']} />
      {isTicked && <path d="M 3.5 8 L 6.5 11.5 L 12 3.5" className={styles['tick']} />}
    </svg>
  );
}
