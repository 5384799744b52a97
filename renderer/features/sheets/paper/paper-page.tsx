import type { ReactNode } from 'react';
import { UNITS_PER_MILLIMETER } from '#core/units/length';
import styles from './paper.module.css';

/** The printed page is slightly narrower than its nominal size; a wider sheet would be shrunk as a whole. */
const HAIR = 0.4 * UNITS_PER_MILLIMETER;

interface PaperPageProps {
  /** Nominal size of the paper, 1/320 mm. */
  readonly width: number;
  readonly height: number;
  readonly label: string;
  readonly children: ReactNode;
}

/** One page of a sheet that draws its pages itself, at true size. */
export function PaperPage({ width, height, label, children }: PaperPageProps) {
  return (
    <section
      className={styles['page']}
      style={{ width: cssMillimeters(width - HAIR), height: cssMillimeters(height - HAIR) }}
      aria-label={label}
    >
      {children}
    </section>
  );
}

/** A length in 1/320 mm for a style sheet, which keeps it true to size on paper. */
export function cssMillimeters(units: number): string {
  return `${String(units / UNITS_PER_MILLIMETER)}mm`;
}
