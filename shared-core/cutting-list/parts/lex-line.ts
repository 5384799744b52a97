import { lengthUnitFromText } from '#core/units/length-unit';
import type { Token } from './token';

const FRACTION_SIGNS = '½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒';
const NUMBER = new RegExp(
  [
    String.raw`\d+(?:[ \u00a0]+|[-‐‑])\d+ ?[/⁄]\d+`,
    String.raw`\d+(?:[ \u00a0]*|[-‐‑])[${FRACTION_SIGNS}]`,
    String.raw`\d+[ \u00a0]?[⁰¹²³⁴-⁹]+[/⁄][₀-₉]+`,
    `[${FRACTION_SIGNS}]`,
    String.raw`[⁰¹²³⁴-⁹]+[/⁄][₀-₉]+`,
    String.raw`\d+[/⁄]\d+`,
    String.raw`\d+[.,]\d+`,
    String.raw`\.\d+`,
    String.raw`\d+`,
  ].join('|'),
  'uy',
);
/** A letter with a number is the name of a patch or block: `A1`. An x before a number is a times sign. */
const LABEL = /(?![xX]\d)[A-Za-z]\d{1,2}(?![\d.,/⁄½⅓⅔¼¾⅛⅜⅝⅞"”″])/uy;
const WORD = /\p{L}[\p{L}\p{M}]*(?:['’](?!')\p{L}+)?/uy;
const UNIT =
  /(?:[-‐‑]|[ \u00a0]{0,3})(?:''|′′|’’|["”“″]|(?:inches|inch|ins|in|cms?|centimet(?:er|re)s?|mms?|millimet(?:er|re)s?|yards?|yds?|met(?:er|re)s?|feet|foot|ft|m)(?![\p{L}])\.?)/iuy;
const BULLET = /^\s*(?:[•·▪◦‣*☐□✓–—-]\s*|\[\s?\]\s*|\d{1,2}[.)]\s+(?=[\p{L}(])|step \d{1,2}[.:)]\s*)/iu;

/** The tokens of one line, in time that grows with its length alone. A bullet or number before a step is left out. */
export function lexLine(line: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = BULLET.exec(line)?.[0].length ?? 0;
  while (at < line.length) {
    const before = tokens.at(-1);
    const token =
      (before?.kind === 'number' ? unitAt(line, at) : null) ??
      numberAt(line, at) ??
      wordTokenAt(line, at) ??
      markAt(line, at);
    if (token !== null) tokens.push(token);
    at = token?.to ?? at + 1;
  }
  return tokens;
}

function unitAt(line: string, at: number): Token | null {
  const text = matchAt(UNIT, line, at);
  if (text === null) return null;
  const spelling = plainUnit(text);
  const unit = lengthUnitFromText(spelling);
  return unit === undefined ? null : { kind: 'unit', from: at, to: at + text.length, text: unit, unit };
}

function plainUnit(text: string): string {
  const unit = text
    .replace(/^[-‐‑ \u00a0]+/u, '')
    .replace(/["”“″]|''|′′|’’/u, 'in')
    .replace(/\.$/u, '')
    .toLowerCase();
  return unit.replace('metre', 'meter').replace(/^(cm|mm)s$/u, '$1');
}

function numberAt(line: string, at: number): Token | null {
  const text = matchAt(NUMBER, line, at);
  if (text === null) return null;
  const whole = /^\d{1,6}$/u.test(text) ? Number(text) : null;
  return { kind: 'number', from: at, to: at + text.length, text, whole };
}

function wordTokenAt(line: string, at: number): Token | null {
  const text = matchAt(LABEL, line, at) ?? matchAt(WORD, line, at);
  if (text === null) return null;
  const to = at + text.length;
  const word = text.toLowerCase().replace('’', "'");
  return word === 'x'
    ? { kind: 'mark', from: at, to, text: 'x' }
    : { kind: 'word', from: at, to, text: word };
}

const PLAIN_MARKS: Readonly<Record<string, string>> = {
  '×': 'x',
  '✕': 'x',
  '✖': 'x',
  '–': '-',
  '—': '-',
  '−': '-',
  '‐': '-',
  '‑': '-',
};

/** A hyphen within a word is none: `half-square` is two words. */
function markAt(line: string, at: number): Token | null {
  const code = line.codePointAt(at) ?? 0;
  const sign = String.fromCodePoint(code);
  if (/[\s\u00ad\u200b\ufeff]/u.test(sign) && sign !== '\t') return null;
  const text = PLAIN_MARKS[sign] ?? sign;
  const isWithinWord =
    text === '-' && /\p{L}/u.test(line.charAt(at - 1)) && /\p{L}/u.test(line.charAt(at + 1));
  return isWithinWord ? null : { kind: 'mark', from: at, to: at + sign.length, text };
}

function matchAt(pattern: RegExp, line: string, at: number): string | null {
  pattern.lastIndex = at;
  return pattern.exec(line)?.[0] ?? null;
}
