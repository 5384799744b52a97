import { z } from 'zod';
import type { PieceKind } from '#core/domain/stash';
import { patchList } from '#core/domain/patch-list';
import { type Length, lengthFromExact, lengthFromUnits, UNITS_PER_MILLIMETER } from '#core/units/length';
import type { FabricNeed, NeedAmount, NeededPatch } from './fabric-need';

/** What is stored of a kept answer, as far as it says what to buy. */
export interface AnswerKept {
  readonly calculator: string;
  readonly input: unknown;
  readonly details: unknown;
  readonly keptAt: number;
}

/** What an answer asks of one fabric, before it is known for which project. */
export type NeedOfAnswer = Pick<
  FabricNeed,
  'name' | 'kind' | 'amount' | 'fabricWidth' | 'extraPercent' | 'package'
>;

const side = z.number().positive();
const percent = z.number().min(0).default(0);

/** Of a stage's answers those that count: the whole top before single patches, and of the ways to a binding the one kept last. */
export function answersThatCount<Answer extends Pick<AnswerKept, 'calculator' | 'keptAt'>>(
  answers: readonly Answer[],
): readonly Answer[] {
  const hasTop = answers.some(({ calculator }) => calculator === 'top');
  const binding = answers
    .filter(({ calculator }) => BINDINGS.includes(calculator))
    .reduce<Answer | null>((last, one) => (last === null || one.keptAt >= last.keptAt ? one : last), null);
  return answers.filter(
    (one) =>
      Object.hasOwn(READERS, one.calculator) &&
      !(hasTop && one.calculator === 'patch-size') &&
      (!BINDINGS.includes(one.calculator) || one === binding),
  );
}

/** What a kept answer says has to be there; nothing where it says nothing of the kind or can no longer be read. Fabric of which no width is said is as wide as usual. */
export function needsOfAnswer(
  { calculator, input, details }: AnswerKept,
  usualWidth: Length,
): readonly NeedOfAnswer[] {
  return READERS[calculator]?.(input, details, usualWidth) ?? [];
}

type Reader = (input: unknown, details: unknown, usualWidth: Length) => readonly NeedOfAnswer[];

const BINDINGS: readonly string[] = ['outer-binding', 'inner-binding', 'continuous-bias', 'bias-strips'];

const READERS: Readonly<Record<string, Reader>> = {
  top: patchesOf,
  'patch-size': patchesOf,
  backing: reader(
    z.object({ fabricWidth: side, mayJoinLast: z.boolean(), safetyExtraPercent: percent }),
    z.object({ ways: ways(), wideWays: ways() }),
    ({ mayJoinLast, safetyExtraPercent }, details) => {
      const pick = (some: z.infer<ReturnType<typeof ways>>) =>
        some.find(({ last }) => mayJoinLast || last === 'whole');
      const own = pick(details.ways);
      const way = own ?? pick(details.wideWays);
      if (way === undefined) return [];
      const panel = { width: way.fabric.width, length: way.panelLength, mayTurn: false };
      const isWhole = way.last === 'whole';
      const rest = { ...panel, length: way.fabricLength - (way.panels - 1) * way.panelLength, count: 1 };
      const patches = [
        { ...panel, count: isWhole ? way.panels : way.panels - 1 },
        ...(isWhole ? [] : [rest]),
      ];
      const need = fabricNeed('Backing', patches, way.fabric.width, safetyExtraPercent);
      return [{ ...need, kind: own === undefined ? 'wide-backing' : 'backing' }];
    },
  ),
  batting: reader(
    z.object({ safetyExtraPercent: percent }),
    z.object({
      width: side,
      length: side,
      packages: z.array(z.object({ name: z.string(), width: side, length: side })),
      rolls: z.array(z.object({ width: side, widths: z.int().min(1), each: side })),
    }),
    ({ safetyExtraPercent }, { width, length, packages, rolls }) => {
      const [[smallest], [roll]] = [packages, rolls];
      if (smallest !== undefined) {
        const sheet = { width, length, count: 1, mayTurn: true };
        const size = { width: whole(smallest.width), length: whole(smallest.length) };
        const need = fabricNeed('Batting', [sheet], smallest.width, 0);
        return [{ ...need, kind: 'batting-package', package: { name: smallest.name, ...size } }];
      }
      if (roll === undefined) return [];
      const widths = { width: roll.width, length: roll.each, count: roll.widths, mayTurn: false };
      return [{ ...fabricNeed('Batting', [widths], roll.width, safetyExtraPercent), kind: 'batting' }];
    },
  ),
  'outer-binding': reader(
    z.object({ fabricWidth: side, stripWidth: side, safetyExtra: percent }),
    z.object({
      needed: side,
      given: side,
      strips: z.int().min(1),
      isBiasNeeded: z.boolean(),
      ways: z.array(z.object({ way: z.string(), pieces: z.int().min(1), width: side, length: side })),
    }),
    ({ fabricWidth, stripWidth, safetyExtra }, { needed, given, strips, isBiasNeeded, ways: all }) => {
      const bias = all.find(({ way }) => way === 'continuous-bias');
      if (isBiasNeeded && bias !== undefined) {
        const squares = { width: bias.width, length: bias.length, count: bias.pieces, mayTurn: true };
        return [fabricNeed('Binding', [squares], fabricWidth, safetyExtra)];
      }
      // What the joins cost is what the strips give less than their lengths together.
      const cost = strips === 1 ? 0 : (strips * fabricWidth - given) / (strips - 1);
      const amount: NeedAmount = { measure: 'strips', strip: stripWidth, needed, cost };
      return [{ ...fabricNeed('Binding', [], fabricWidth, safetyExtra), amount }];
    },
  ),
  'inner-binding': reader(
    z.object({}),
    z.object({ squareForOneStrip: side }),
    (_, { squareForOneStrip }, usualWidth) => [
      fabricNeed('Inner binding', [square(squareForOneStrip, 1)], usualWidth, 0),
    ],
  ),
  'continuous-bias': reader(
    z.object({ fabricWidth: side }),
    z.object({ side, squares: z.int().min(1) }),
    ({ fabricWidth }, details) => [
      fabricNeed('Bias binding', [square(details.side, details.squares)], fabricWidth, 0),
    ],
  ),
  'bias-strips': reader(
    z.object({ fabricWidth: side }),
    z.object({ leastFabricLength: side.nullable() }),
    ({ fabricWidth: width }, { leastFabricLength: length }) =>
      length === null
        ? []
        : [fabricNeed('Bias binding', [{ width, length, count: 1, mayTurn: false }], width, 0)],
  ),
  'machine-thread': reader(
    z.object({}),
    z.object({ byFactor: z.object({ total: side }) }),
    (_, { byFactor }) => [thread('Thread', byFactor.total)],
  ),
  'hand-finish': reader(
    z.object({ threadLength: side }),
    z.object({ threads: z.number().min(0) }),
    ({ threadLength }, { threads }) =>
      threads === 0 ? [] : [thread('Thread for the hand', threads * threadLength)],
  ),
};

function reader<Input, Details>(
  input: z.ZodType<Input>,
  details: z.ZodType<Details>,
  read: (input: Input, details: Details, usualWidth: Length) => readonly NeedOfAnswer[],
): Reader {
  return (rawInput, rawDetails, usualWidth) => {
    const [given, found] = [input.safeParse(rawInput), details.safeParse(rawDetails)];
    return given.success && found.success ? read(given.data, found.data, usualWidth) : [];
  };
}

/** A fabric for each name of the patch list. */
function patchesOf(...kept: Parameters<Reader>): readonly NeedOfAnswer[] {
  return reader(
    z.object({ fabricWidth: side, safetyExtraPercent: percent }),
    z.object({ patchList }),
    ({ fabricWidth, safetyExtraPercent }, { patchList: list }) =>
      [...new Set(list.map(({ fabric }) => fabric))].map((name) =>
        fabricNeed(
          name,
          list.filter(({ fabric }) => fabric === name),
          fabricWidth,
          safetyExtraPercent,
        ),
      ),
  )(...kept);
}

function fabricNeed(
  name: string,
  patches: readonly NeededPatch[],
  width: number,
  extraPercent: number,
): NeedOfAnswer & { readonly kind: PieceKind } {
  const asked = patches.filter(({ length, count }) => length > 0 && count > 0).map(sizeOf);
  const amount = { measure: 'patches', patches: asked } as const;
  return { name, kind: 'yardage', amount, fabricWidth: whole(width), extraPercent, package: null };
}

function sizeOf({ width, length, count, mayTurn }: NeededPatch): NeededPatch {
  return { width: whole(width), length: whole(length), count, mayTurn };
}

function square(across: number, count: number): NeededPatch {
  return { width: across, length: across, count, mayTurn: true };
}

function thread(name: string, length: number): NeedOfAnswer {
  const none = { fabricWidth: lengthFromUnits(UNITS_PER_MILLIMETER), extraPercent: 0, package: null };
  return { name, kind: 'thread', amount: { measure: 'thread', length }, ...none };
}

function whole(exact: number): Length {
  return lengthFromExact(exact, 'up');
}

function ways() {
  const cut = z.object({ width: side });
  return z.array(
    z.object({
      fabric: cut,
      panels: z.int().min(1),
      panelLength: side,
      last: z.enum(['whole', 'along', 'across']),
      fabricLength: side,
    }),
  );
}
