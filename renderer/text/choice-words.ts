/** Words for choices whose code does not read well. All other codes are shown as they are spelled. */
const WORDS: Readonly<Record<string, string>> = {
  inch: 'Inches',
  metric: 'Centimeters and meters',
  '4': 'Quarters',
  '8': 'Eighths',
  '16': 'Sixteenths',
  '1': 'Every minute',
  '5': '5 minutes',
  '10': '10 minutes',
  '15': 'A quarter of an hour',
  '30': 'Half an hour',
  circle: 'Round',
  ellipse: 'Oval',
  sides: 'Sides as measured',
  longarm: 'Quilting, sent out',
  'four-sides': 'Four sides and the diagonals',
  diameters: 'Round: four diameters',
  'edge-points': 'Round: points on the edge, from three pins',
  chords: 'Round: chords and their heights',
  corners: 'Any shape: corners from three pins',
  folding: 'Any shape: folded in halves',
  'half-square-triangles': 'Half-square triangles',
  'quarter-square-triangles': 'Quarter-square triangles',
  'half-rectangle-triangles': 'Half-rectangle triangles',
};

/** `half-square` as `Half square`. */
export function choiceWords(value: string | number): string {
  const own = WORDS[String(value)];
  if (own !== undefined) return own;
  const spaced = String(value).replaceAll('-', ' ');
  return spaced.charAt(0).toUpperCase() + spaced.slice(1);
}
