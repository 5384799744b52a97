import type { Hole, Outline, OutlineShape } from '#core/domain/outline';
import type { ProjectPurpose } from '#core/domain/project';
import { formatLength } from '#core/units/format-length';
import type { LengthDisplay } from '#core/units/unit-system';
import { sidesWords } from './size-words';

export const SHAPE_WORDS: Readonly<Record<OutlineShape, string>> = {
  square: 'Square',
  rectangle: 'Rectangle',
  rounded: 'Rounded corners',
  circle: 'Round',
  ellipse: 'Oval',
  hexagon: 'Hexagon',
  octagon: 'Octagon',
  sides: 'Sides as measured',
};

export const PURPOSE_WORDS: Readonly<Record<ProjectPurpose, string>> = {
  gift: 'Gift',
  commission: 'Commission',
  own: 'For myself',
};

/** `60 in across`, `14 × 42 in`, `48 in across the flats`. */
function outlineSizeWords(outline: Outline, display: LengthDisplay): string {
  const text = (length: Parameters<typeof formatLength>[0]) => formatLength(length, display);
  switch (outline.shape) {
    case 'square':
      return `${text(outline.side)} square`;
    case 'rectangle':
    case 'ellipse':
      return sidesWords(text(outline.width), text(outline.length));
    case 'rounded':
      return `${sidesWords(text(outline.width), text(outline.length))}, corners of ${text(outline.cornerRadius)}`;
    case 'circle':
      return `${text(outline.diameter)} across`;
    case 'hexagon':
    case 'octagon':
      return `${text(outline.acrossFlats)} across the flats`;
    case 'sides':
      return `${String(outline.sides.length)} sides, ${sidesWords(text(outline.width), text(outline.length))}`;
  }
}

/** A project's shape and size in one line: `Round, 60 in across, 6 in hole, slit`. */
export function outlineWords(
  project: { readonly outline: Outline; readonly hole: Hole | null; readonly hasSlit: boolean },
  display: LengthDisplay,
): string {
  const shape = SHAPE_WORDS[project.outline.shape];
  const size = outlineSizeWords(project.outline, display);
  const first = project.outline.shape === 'square' ? capital(size) : `${shape}, ${size}`;
  const hole = project.hole === null ? '' : `, ${formatLength(project.hole.diameter, display)} hole`;
  return `${first}${hole}${project.hasSlit ? ', slit' : ''}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
