import fc from 'fast-check';
import type {
  ChoiceProblem,
  ChoiceWishes,
  FabricOnShelf,
  FabricRole,
} from '#core/fabric-choice/choice-problem';
import type { ScreenColor } from '#core/units/screen-color';
import { bolt42, INCH, piece } from './cutting-jobs';

export const NO_WISHES: ChoiceWishes = {
  contains: [],
  warmth: 'any',
  prefersLeftovers: false,
  buysNothing: true,
  mostMoney: null,
  leastContrast: 10,
};

/** Squares of this side in inches. */
export function role(name: string, side: number, copies: number): FabricRole {
  return { name, patches: [{ width: side * INCH, length: side * INCH, copies, mayTurn: true }] };
}

/** A fabric with one piece of these inches; `price` in cents for a square yard. */
export function onShelf(
  id: string,
  color: ScreenColor,
  [width, length]: readonly [number, number],
  { isLeftover = false, canBuy = false, price = null as number | null } = {},
): FabricOnShelf {
  return {
    id,
    color,
    isDirectional: false,
    pieces: [{ ...piece(id, width, length), isLeftover }],
    toBuy: canBuy ? bolt42 : undefined,
    price: price === null ? null : { minor: price, area: (36 * INCH) ** 2 },
  };
}

export function choiceProblem(changes: Partial<ChoiceProblem>): ChoiceProblem {
  return {
    roles: [],
    borders: [],
    fabrics: [],
    wishes: NO_WISHES,
    table: { rulerLength: 24 * INCH, matLength: 35 * INCH, mayFold: true },
    ...changes,
  };
}

const channel = fc.integer({ min: 0, max: 255 });

/** A few roles and fabrics: small enough for every choice to be tried. */
export const anySmallChoice: fc.Arbitrary<ChoiceProblem> = fc
  .record({
    roles: fc.array(
      fc.record({ side: fc.integer({ min: 2, max: 8 }), copies: fc.integer({ min: 1, max: 12 }) }),
      {
        minLength: 1,
        maxLength: 4,
      },
    ),
    borders: fc.array(
      fc.record({ one: fc.nat(3), other: fc.nat(3), length: fc.integer({ min: 1, max: 90 }) }),
      {
        maxLength: 4,
      },
    ),
    fabrics: fc.array(
      fc.record({
        color: fc.tuple(channel, channel, channel),
        width: fc.integer({ min: 4, max: 42 }),
        length: fc.integer({ min: 4, max: 36 }),
        isLeftover: fc.boolean(),
        canBuy: fc.boolean(),
        price: fc.option(fc.integer({ min: 100, max: 2000 }), { nil: null }),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    wishes: fc.record({
      contains: fc.array(fc.nat(4), { maxLength: 1 }),
      warmth: fc.constantFrom('any', 'warm', 'cool'),
      prefersLeftovers: fc.boolean(),
      buysNothing: fc.boolean(),
      mostMoney: fc.option(fc.integer({ min: 0, max: 4000 }), { nil: null }),
      leastContrast: fc.integer({ min: 0, max: 40 }),
    }),
  })
  .map(({ roles, borders, fabrics, wishes }) =>
    choiceProblem({
      roles: roles.map(({ side, copies }, index) => role(`role ${String(index)}`, side, copies)),
      borders: borders
        .map(({ one, other, length }) => ({
          roles: [one % roles.length, other % roles.length] as const,
          length,
        }))
        .filter(({ roles: [one, other] }) => one !== other),
      fabrics: fabrics.map(({ color, width, length, ...rest }, index) =>
        onShelf(`fabric ${String(index)}`, color, [width, length], rest),
      ),
      wishes: {
        ...wishes,
        contains: wishes.contains.map((index) => `fabric ${String(index % fabrics.length)}`),
      },
    }),
  );
