import {
  formatExactQuantity,
  formatInline,
  formatQuantity,
  formatSentence,
} from '#core/calculators/format-quantity';
import type { Quantity, Sentence } from '#core/calculators/explanation';
import { formatLength } from '#core/units/format-length';
import type { Length } from '#core/units/length';
import type { RoundingDirection } from '#core/units/rounding';
import { type Display, useDisplay } from '../base/display';
import styles from './typeset.module.css';

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** A mixed number or a fraction alone: `9½`, `9 13/16`, `⅞`. Not a date, not a path. */
const MIXED = /(?<![\d/.,])(?:(\d+) ?)?(?:([½¼¾⅛⅜⅝⅞])|(?<![\d/])(\d+\/\d+))(?![\d/])/gu;

interface TypesetRun {
  readonly at: number;
  readonly plain: string;
  /** Empty if the run is plain text. */
  readonly fraction: string;
}

/** Plain text whose fractions the typeface draws as real ones. A screen reader and the clipboard get `9 1/2`. */
export function Typeset({ text }: { readonly text: string }) {
  return typesetRuns(text).map(({ at, plain, fraction }) =>
    fraction === '' ? (
      plain
    ) : (
      <span key={at} className={styles['whole']}>
        {plain}
        {plain !== '' && <span className={styles['gap']}> </span>}
        <span className={styles['fraction']}>{fraction}</span>
      </span>
    ),
  );
}

/** The same inside an SVG `text`. */
export function TypesetSvg({ text }: { readonly text: string }) {
  return typesetRuns(text).map(({ at, plain, fraction }) =>
    fraction === '' ? (
      plain
    ) : (
      <tspan key={at}>
        {plain}
        {plain !== '' && <tspan className={styles['gap']}> </tspan>}
        <tspan className={styles['fraction']}>{fraction}</tspan>
      </tspan>
    ),
  );
}

function typesetRuns(text: string): readonly TypesetRun[] {
  const runs: TypesetRun[] = [];
  let from = 0;
  for (const match of text.matchAll(MIXED)) {
    const [all, whole, character = '', typed = ''] = match;
    if (match.index > from) runs.push({ at: from, plain: text.slice(from, match.index), fraction: '' });
    const fraction = FRACTIONS[character] ?? typed;
    runs.push({ at: match.index, plain: whole ?? '', fraction });
    from = match.index + all.length;
  }
  if (from < text.length) runs.push({ at: from, plain: text.slice(from), fraction: '' });
  return runs;
}

interface LengthTextProps {
  readonly length: Length;
  readonly rounding?: RoundingDirection;
}

/** A length in the reader's units. */
export function LengthText({ length, rounding = 'nearest' }: LengthTextProps) {
  return <Measured text={formatLength(length, useDisplay().length, rounding)} />;
}

/** The rounded value of a quantity, its unit small beside it. */
export function QuantityText({ quantity }: { readonly quantity: Quantity }) {
  const text = formatQuantity(quantity, quantityStyle(useDisplay()));
  return quantity.kind === 'words' ? <Typeset text={text} /> : <Measured text={text} />;
}

/** A quantity without its exact value beside it, such as in a table: written finer where the reader's step is too coarse. */
export function InlineQuantity({ quantity }: { readonly quantity: Quantity }) {
  const text = formatInline(quantity, quantityStyle(useDisplay()));
  return quantity.kind === 'words' ? <Typeset text={text} /> : <Measured text={text} />;
}

/** The exact value, small; nothing if rounding changed nothing. */
export function ExactText({ quantity }: { readonly quantity: Quantity }) {
  const exact = formatExactQuantity(quantity, quantityStyle(useDisplay()));
  return exact === null ? null : <Typeset text={exact} />;
}

/** A sentence with its quantities written in the reader's units. */
export function SentenceText({ sentence }: { readonly sentence: Sentence }) {
  return <Typeset text={formatSentence(sentence, quantityStyle(useDisplay()))} />;
}

/** The style that the formatters of shared-core take. */
export function quantityStyle(display: Display) {
  return { display: display.length, currency: display.currency, locale: display.locale };
}

/** A number and its unit: the unit is everything after the last space, if the text has a number. */
function Measured({ text }: { readonly text: string }) {
  const unit = /\d.*?|[½¼¾⅛⅜⅝⅞]/u.test(text) ? (/ [^\d\s½¼¾⅛⅜⅝⅞]+$/u.exec(text)?.[0] ?? '') : '';
  return (
    <span className={styles['whole']}>
      <Typeset text={unit === '' ? text : text.slice(0, -unit.length)} />
      {unit !== '' && <span className={styles['unit']}>{`\u00a0${unit.trim()}`}</span>}
    </span>
  );
}
