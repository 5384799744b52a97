import { type DecidedFacts, factField, type FactName } from '#core/domain/project-facts';
import { formatFineLength, formatLength } from '#core/units/format-length';
import { formatMoney } from '#core/units/format-money';
import { lengthFromUnits } from '#core/units/length';
import { type CurrencyCode, moneyFromMinor } from '#core/units/money';
import type { LengthDisplay } from '#core/units/unit-system';
import { choiceWords } from './choice-words';
import { outlineWords } from './project-words';

interface FactDisplay {
  readonly length: LengthDisplay;
  readonly currency: CurrencyCode;
  readonly locale: string;
}

/** One of the facts in words: `14 in`, `no slit`, `Round, 60 in across`. */
export function factWords(fact: FactName, facts: DecidedFacts, display: FactDisplay): string {
  if (fact === 'outline') {
    const { outline } = facts;
    return outline === undefined ? '' : outlineWords({ outline, hole: null, hasSlit: false }, display.length);
  }
  if (fact === 'hole')
    return facts.hole === undefined || facts.hole === null
      ? 'no hole'
      : formatLength(facts.hole.diameter, display.length);
  if (fact === 'hasSlit') return facts.hasSlit === true ? 'a slit' : 'no slit';
  return settingWords(fact, facts[fact], display);
}

/** Smaller than the fractions that sizes are shown in. */
const ERRORS: readonly FactName[] = ['seamOff', 'cutOff'];

function settingWords(fact: FactName, value: string | number | undefined, display: FactDisplay): string {
  if (typeof value !== 'number') return value === undefined ? '' : choiceWords(value);
  const field = factField(fact);
  if (field?.form === 'length') {
    const write = ERRORS.includes(fact) ? formatFineLength : formatLength;
    return write(lengthFromUnits(value), display.length);
  }
  if (field?.form === 'minor') {
    return formatMoney(moneyFromMinor(value, display.currency), display.locale);
  }
  if (field?.form === 'percent') return `${String(value)}%`;
  const unit = field?.form === 'count' ? (field.unit ?? '') : '';
  return `${String(value)} ${unit}`.trim();
}
