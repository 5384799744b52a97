import { assertNever } from '#core/assert-never';
import type { FieldFault, InputProblem } from '#core/contract/problem';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import type { LengthDisplay } from '#core/units/unit-system';

interface FieldName {
  /** How a sentence calls the field: `Fill in the name.` */
  readonly called: string;
  /** What its limits are measured in; a plain number unless said. */
  readonly measure?: 'length' | 'percent' | 'money' | 'minutes';
}

const length = (called: string): FieldName => ({ called, measure: 'length' });
const money = (called: string): FieldName => ({ called, measure: 'money' });

/** The fields of the contract that a maker types, by their own name. */
const FIELD_NAMES: Readonly<Record<string, FieldName>> = {
  acrossFlats: length('the size from side to side'),
  amount: { called: 'the amount' },
  askedFor: { called: 'what you asked for' },
  atLeast: money('the lowest price'),
  atMost: money('the highest price'),
  backCover: length('how far the binding covers the back'),
  backOn: { called: 'the day it came back' },
  backing: { called: 'the backing' },
  backingOverhang: length('the extra backing on each side'),
  backingSeam: length('the backing seam'),
  batting: { called: 'the batting' },
  bindingOverlap: length('the length for joining the binding'),
  bindingStripWidth: length('the binding strip'),
  boughtFrom: { called: 'the first day' },
  boughtUntil: { called: 'the last day' },
  caption: { called: 'the caption' },
  code: { called: 'the code' },
  color: { called: 'the color' },
  colorWords: { called: 'the colors' },
  cornerRadius: length('the radius of the corners'),
  costMinor: money('the cost'),
  count: { called: 'how many' },
  diameter: length('the diameter'),
  cutOff: length('how far your cuts are off'),
  dueOn: { called: 'the due day' },
  estimateMinutes: { called: 'the estimate', measure: 'minutes' },
  fabric: { called: 'the fabric' },
  fabricWidth: length('the fabric width'),
  fabrics: { called: 'the fabrics' },
  fiber: { called: 'the fiber' },
  forWhom: { called: 'who it is for' },
  freeAtLeast: length('the length of one piece'),
  freeInAll: length('the length in all'),
  handStitchPerHour: length('how much you sew by hand in an hour'),
  heldUpBy: { called: 'what it is waiting for' },
  hourRateMinor: money('your hourly rate'),
  howMuch: { called: 'how much' },
  innerStripWidth: length('the inner binding strip'),
  length: length('the length'),
  listText: { called: 'the cutting list' },
  longarmMinimumMinor: money('the longarm minimum'),
  longarmRateMinor: money('the longarm rate'),
  minimumMinor: money('the minimum price'),
  minor: money('the price'),
  minutes: { called: 'the time', measure: 'minutes' },
  name: { called: 'the name' },
  note: { called: 'the note' },
  notes: { called: 'the notes' },
  on: { called: 'the day' },
  passGateWhy: { called: 'why you start anyway' },
  path: { called: 'the place' },
  page: { called: 'the page' },
  patternName: { called: 'the pattern' },
  percent: { called: 'the percentage', measure: 'percent' },
  place: { called: 'the place' },
  priceAskedMinor: money('the price asked'),
  priceMinor: money('the price'),
  print: { called: 'the print' },
  promisedDays: { called: 'the promised days' },
  promisedOn: { called: 'the day it is promised back' },
  quiltThickness: length('the thickness of the quilt'),
  rate: money('the rate'),
  rateMinor: money('the rate'),
  reach: { called: 'how to reach them' },
  role: { called: 'the fabric of the list' },
  safetyExtraPercent: { called: 'the extra for safety', measure: 'percent' },
  says: { called: 'the description' },
  rows: { called: 'how many rows to show' },
  seamAllowance: length('the seam allowance'),
  seamOff: length('how far your seams are off'),
  search: { called: 'the search' },
  sentAlong: { called: 'what was sent along' },
  sentOn: { called: 'the day it was sent' },
  side: length('the side'),
  sides: length('one of the sides'),
  silentDays: { called: 'the days without news' },
  supplier: { called: 'the shop' },
  text: { called: 'the text' },
  there: length('what is there'),
  thread: { called: 'the thread' },
  trackingNumber: { called: 'the tracking number' },
  turnaroundDays: { called: 'the days at the quilter' },
  washAcrossPercent: { called: 'the shrinkage across', measure: 'percent' },
  washAlongPercent: { called: 'the shrinkage along', measure: 'percent' },
  unitLength: length('the length of one'),
  width: length('the width'),
  withWhom: { called: 'who has it' },
  words: { called: 'what to buy' },
};

/** What to say of the first wrong field of an input that the maker can mend. */
export function inputProblemWords(fields: readonly InputProblem[], display: LengthDisplay): string {
  for (const { path, fault } of fields) {
    const field = fieldNameOf(path);
    if (field !== null) return faultWords(field, fault, display);
  }
  return 'Something in this form can’t be read. Check it and try again.';
}

/** The name of the innermost field on a path; null for a field that nobody types. */
export function fieldNameOf(path: InputProblem['path']): FieldName | null {
  const name = path.findLast((part) => typeof part === 'string');
  return name !== undefined && Object.hasOwn(FIELD_NAMES, name) ? (FIELD_NAMES[name] ?? null) : null;
}

function faultWords(field: FieldName, fault: FieldFault, display: LengthDisplay): string {
  const { called } = field;
  switch (fault.code) {
    case 'empty':
      return `Fill in ${called}.`;
    case 'text-too-long':
      return `Shorten ${called} to ${String(fault.maximum)} characters or fewer.`;
    case 'too-small':
      return field.measure === 'money'
        ? `Too small: ${called}. Enter a larger amount.`
        : `Too small: ${called}. Enter ${limitWords(field, fault.minimum, display)} or more.`;
    case 'too-large':
      return field.measure === 'money'
        ? `Too large: ${called}. Enter a smaller amount.`
        : `Too large: ${called}. Enter ${limitWords(field, fault.maximum, display)} or less.`;
    case 'too-few':
      return `Too few: ${called}. Enter ${String(fault.minimum)} or more.`;
    case 'too-many':
      return `Too many: ${called}. Enter ${String(fault.maximum)} or fewer.`;
    case 'not-whole':
      return `Enter a whole number: ${called}.`;
    case 'zero-character':
      return `There is a character in ${called} that can’t be saved. Type it again.`;
    case 'unreadable':
      return `Check ${called}: it can’t be read.`;
    default:
      return assertNever(fault);
  }
}

function limitWords({ measure }: FieldName, limit: number, display: LengthDisplay): string {
  if (measure === 'length') return formatLength(lengthFromUnits(limit), { ...display, inchStep: 64 });
  if (measure === 'percent') return `${String(limit)}%`;
  return measure === 'minutes' ? `${String(limit)} minutes` : String(limit);
}
