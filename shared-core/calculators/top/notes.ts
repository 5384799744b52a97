import type { Note } from '../explanation';
import { PIECING_CAUTIONS } from '../patches/piecing-cautions';
import { areaQuantity } from '../quantities';
import type { CountedBlock, TopWork } from './work';

export function topNotes({ assembly, counted, input, needed }: TopWork): readonly Note[] {
  return [
    ...assembly.misfits,
    ...counted.flatMap(blockMisfit),
    ...unlistedFabrics(needed.strips, input.fabrics),
    ...PIECING_CAUTIONS,
  ];
}

/** Parts that cover more or less than the block do not make it; a hair of rounding does not count. */
function blockMisfit({ block, make }: CountedBlock): readonly Note[] {
  if (block.parts.length === 0) {
    const says = `${block.name} has no parts yet: no fabric is counted for it.`;
    return [{ kind: 'warning', says, values: {} }];
  }
  const off = make.area - block.width * block.length;
  if (Math.abs(off) < 2 * (block.width + block.length)) return [];
  const says =
    off > 0
      ? `The parts of ${block.name} cover {off} more than the block has.`
      : `The parts of ${block.name} leave {off} of the block uncovered.`;
  return [{ kind: 'warning', says, values: { off: areaQuantity(Math.abs(off)) } }];
}

function unlistedFabrics(
  strips: readonly { readonly fabric: string }[],
  fabrics: readonly { readonly label: string }[],
): readonly Note[] {
  const used = new Set(strips.map(({ fabric }) => fabric));
  const listed = new Set(fabrics.map(({ label }) => label));
  return [...used]
    .filter((fabric) => !listed.has(fabric))
    .map((fabric) => ({
      kind: 'tip',
      says: `${fabric} is not in the list of fabrics: its patches are taken as free to turn.`,
      values: {},
    }));
}
