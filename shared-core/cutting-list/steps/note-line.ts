import type { OpenLine, OpenList } from '../list/open-list';

const FRACTION = String.raw`[\d¼⅛⅜½ ./⁄-]+`;
const UNIT = String.raw`(?:"|”|″|''|in|inch|cm|mm)\.?`;
const NOTES: readonly RegExp[] = [
  new RegExp(
    String.raw`^(?:all |the )*(?:measurements|sizes|cut sizes|cutting sizes|dimensions|cuts|pieces|patches|cutting instructions)(?: all)? (?:already )?include[sd]?(?: a| the)? ?(?:${FRACTION}[ -]?${UNIT}[ -]?)?(?:wide )?seam allowances?\.?$`,
    'u',
  ),
  /^(?:(?:wof|width of fabric|hst|hsts|half[- ]square triangles?|qst|qsts|quarter[- ]square triangles?|sq|square)[\s=:,;.()-]*)+$/u,
  new RegExp(
    String.raw`^(?:wof|width of fabric)(?: is| =)? (?:assumed to be |at least |based on )?${FRACTION}${UNIT}$`,
    'u',
  ),
];
const ACROSS =
  /^(?:cut all strips|all strips(?: are)?(?: cut)?|strips are(?: cut)?)(?: across)?(?: the)?(?: full)?(?: width of(?: the)? fabric| wof| by wof| x wof| selvage to selvage| from selvage to selvage)(?: \(wof\))?(?: unless noted| unless stated)?\.?$/u;
const IN_UNIT =
  /^(?:all |the )*(?:measurements|sizes|dimensions|cut sizes|numbers)(?: are)?(?: all)?(?: given)? in (inches|centimeters|cm|millimeters|mm)\.?$/u;

/** A line that is left out (`# …`), and sentences that change no patch of their own: what sizes include, what a short form means, how strips run, the unit of sizes. */
export function noteLine(line: OpenLine, list: OpenList): boolean {
  if (line.text.trimStart().startsWith('#')) {
    line.kind = 'note';
    return true;
  }
  // A note is a short sentence; a long line is not searched for one.
  if (line.text.length > 160) return false;
  const text = line.text
    .trim()
    .replace(/^[•*-]\s*/u, '')
    .replace(/\s+/gu, ' ')
    .toLowerCase();
  const unit = IN_UNIT.exec(text)?.[1];
  const isAcross = ACROSS.test(text);
  if (unit === undefined && !isAcross && !NOTES.some((note) => note.test(text))) return false;
  if (unit !== undefined) list.bareUnit = bareUnitOf(unit);
  if (isAcross) list.stripsAreAcross = true;
  line.kind = 'note';
  return true;
}

function bareUnitOf(unit: string): OpenList['bareUnit'] {
  if (unit === 'inches') return 'in';
  return unit === 'cm' || unit === 'centimeters' ? 'cm' : 'mm';
}
