import type { PieceKind, PrintDirection } from '#core/domain/stash';
import type { FabricLook } from './drawings/fabric';

/** A fabric of the demo workshop. All names are invented; lengths are in inches, costs in cents. */
export interface DemoFabric {
  readonly name: string;
  readonly printWords: string;
  readonly colorWords: string;
  readonly fiber: string;
  readonly direction: PrintDirection;
  readonly width: number;
  readonly isWashed: boolean;
  readonly supplier: string;
  readonly place: string;
  readonly look: FabricLook;
  readonly pieces: readonly DemoFabricPiece[];
}

export interface DemoFabricPiece {
  readonly kind: PieceKind;
  readonly width: number;
  readonly length: number;
  readonly costMinor: number | null;
  readonly daysAgo: number;
}

const MARKET = 'Saltmarsh fabric market';
const WAGON = 'The Tuesday wagon';
const ATTIC = 'Great-aunt Ottoline’s attic';

type Look = readonly [print: FabricLook['print'], ground: string, figure: string, colorWords: string];

function fabric(
  name: string,
  [print, ground, figure, colorWords]: Look,
  pieces: readonly DemoFabricPiece[],
  more: Partial<Omit<DemoFabric, 'name' | 'look' | 'colorWords' | 'pieces'>> = {},
): DemoFabric {
  return {
    name,
    printWords: PRINT_WORDS[print],
    colorWords,
    fiber: 'cotton',
    direction: 'any',
    width: 42,
    isWashed: true,
    supplier: MARKET,
    place: 'Sewing room, shelf 1',
    ...more,
    look: { print, ground, figure },
    pieces,
  };
}

const PRINT_WORDS: Readonly<Record<FabricLook['print'], string>> = {
  plain: 'plain',
  dots: 'dots',
  stripe: 'stripe',
  check: 'check',
  leaf: 'small leaves',
  cross: 'little crosses',
  wave: 'waves',
  speckle: 'speckled',
  chevron: 'chevron',
  ring: 'rings',
};

function yards(length: number, costMinor: number, daysAgo: number, width = 42): DemoFabricPiece {
  return { kind: 'yardage', width, length: length * 36, costMinor, daysAgo };
}

function fatQuarter(daysAgo: number): DemoFabricPiece {
  return { kind: 'fat-quarter', width: 22, length: 18, costMinor: 340, daysAgo };
}

function leftover(width: number, length: number, daysAgo: number): DemoFabricPiece {
  return { kind: 'leftover', width, length, costMinor: null, daysAgo };
}

const SHELF_TWO = { place: 'Sewing room, shelf 2' } as const;
const BIN = { place: 'Hall, leftover bin' } as const;

export const DEMO_FABRICS: readonly DemoFabric[] = [
  fabric(
    'Moss pebble',
    ['speckle', '#5f6f4a', '#93a074', 'moss green'],
    [yards(3, 3_450, 120), leftover(11, 24, 40)],
  ),
  fabric('Rook feather', ['leaf', '#2d3138', '#59616d', 'near black, slate'], [yards(2.5, 2_875, 115)], {
    direction: 'one-way',
  }),
  fabric('Kettle blue', ['plain', '#4b6a88', '#4b6a88', 'blue'], [yards(5, 5_250, 110), leftover(42, 7, 30)]),
  fabric(
    'Quince jelly',
    ['dots', '#c9803a', '#ecc07f', 'orange, amber'],
    [yards(1.5, 1_800, 96), fatQuarter(96)],
  ),
  fabric('Butter dish', ['wave', '#e6c87c', '#f4e3b3', 'yellow, cream'], [yards(2, 2_300, 96)]),
  fabric('Oat straw', ['stripe', '#e9dec6', '#cdbb94', 'cream, straw'], [yards(6, 6_000, 140)], {
    direction: 'two-way',
  }),
  fabric(
    'Chimney brick',
    ['check', '#8f3f31', '#a9584a', 'brick red'],
    [yards(2.25, 2_600, 88), leftover(18, 13, 21)],
  ),
  fabric('Harbor rope', ['chevron', '#d8cdb8', '#7a8c99', 'sand, gray blue'], [yards(3, 3_600, 84)], {
    direction: 'two-way',
  }),
  fabric('Midnight hedge', ['leaf', '#27334d', '#5d7a6b', 'navy, green'], [yards(4, 4_900, 80)], {
    direction: 'one-way',
  }),
  fabric(
    'Beet saucer',
    ['ring', '#a85a7c', '#d9a3b8', 'pink, plum'],
    [yards(1.75, 2_100, 78), fatQuarter(78)],
  ),
  fabric('Milk jug', ['plain', '#f3eee2', '#f3eee2', 'white, off white'], [yards(8, 7_200, 150)], SHELF_TWO),
  fabric('Slate roof', ['stripe', '#59606b', '#737c88', 'gray'], [yards(2, 2_200, 71)], {
    ...SHELF_TWO,
    direction: 'two-way',
  }),
  fabric('Bottle crate', ['plain', '#33524a', '#33524a', 'dark green'], [yards(3.5, 3_800, 70)], SHELF_TWO),
  fabric(
    'Crab apple',
    ['dots', '#9c2f37', '#e2b7a6', 'red'],
    [yards(2.5, 2_900, 66), leftover(42, 5.5, 12)],
    SHELF_TWO,
  ),
  fabric(
    'Icehouse door',
    ['cross', '#c8d6dc', '#f1f5f5', 'ice blue, white'],
    [yards(3, 3_300, 64)],
    SHELF_TWO,
  ),
  fabric(
    'Toffee tin',
    ['check', '#7c5738', '#9a7450', 'brown'],
    [yards(1, 1_150, 61), fatQuarter(61), leftover(9, 30, 33)],
    SHELF_TWO,
  ),
  fabric(
    'Marigold bed',
    ['leaf', '#d9982b', '#8a5a1d', 'gold, brown'],
    [fatQuarter(58), fatQuarter(58)],
    SHELF_TWO,
  ),
  fabric('Washing day', ['wave', '#a9c3d4', '#6d93ad', 'light blue'], [yards(2.75, 3_025, 55)], {
    supplier: WAGON,
  }),
  fabric('Coal scuttle', ['speckle', '#26262a', '#6a6a72', 'black'], [yards(1.5, 1_725, 52)], {
    supplier: WAGON,
  }),
  fabric('Jam label', ['stripe', '#b25a5a', '#7f9a63', 'red, green'], [yards(1.25, 1_440, 50)], {
    supplier: WAGON,
    direction: 'two-way',
  }),
  fabric(
    'Hen house',
    ['cross', '#e2d2b0', '#9c6b3d', 'cream, brown'],
    [yards(2, 2_200, 47), leftover(20, 10, 9)],
    { supplier: WAGON },
  ),
  fabric('Plum stone', ['plain', '#5b3450', '#5b3450', 'plum'], [yards(2.5, 2_750, 44)], { supplier: WAGON }),
  fabric('Pump handle', ['ring', '#3f7a7d', '#9fc5b8', 'teal'], [yards(1.75, 2_100, 41)], {
    supplier: WAGON,
    isWashed: false,
  }),
  fabric(
    'Candle end',
    ['dots', '#efe3c4', '#c7953f', 'cream, gold'],
    [fatQuarter(38), fatQuarter(38), fatQuarter(38)],
    { supplier: WAGON },
  ),
  fabric(
    'Grandfather’s shirt',
    ['stripe', '#b9c4c9', '#4c5f73', 'blue, gray'],
    [leftover(26, 31, 90), leftover(14, 19, 90)],
    { ...BIN, supplier: ATTIC, direction: 'two-way' },
  ),
  fabric('Curtain of 1974', ['chevron', '#b8763e', '#e0b878', 'orange, gold'], [leftover(33, 40, 90)], {
    ...BIN,
    supplier: ATTIC,
    fiber: 'cotton, linen',
    direction: 'one-way',
  }),
  fabric('Flour sack', ['plain', '#e4dcc9', '#e4dcc9', 'natural'], [leftover(36, 22, 90)], {
    ...BIN,
    supplier: ATTIC,
    fiber: 'linen',
  }),
  fabric(
    'Wide oatmeal',
    ['speckle', '#ddd2bb', '#c4b594', 'natural, cream'],
    [{ kind: 'wide-backing', width: 108, length: 144, costMinor: 8_400, daysAgo: 60 }],
    { place: 'Under the stairs', width: 108 },
  ),
  fabric(
    'Backing gray',
    ['wave', '#8a8f92', '#a3a8aa', 'gray'],
    [{ kind: 'backing', width: 42, length: 216, costMinor: 5_400, daysAgo: 60 }],
    { place: 'Under the stairs' },
  ),
  fabric(
    'Loft batting',
    ['plain', '#f4f1ea', '#f4f1ea', 'white'],
    [{ kind: 'batting', width: 90, length: 300, costMinor: 11_500, daysAgo: 60 }],
    { place: 'Under the stairs', fiber: 'cotton batting', width: 90 },
  ),
];
