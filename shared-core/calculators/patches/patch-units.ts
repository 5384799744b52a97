import { z } from 'zod';
import type { PatchUnit, UnitPlan } from './patch-unit';
import { buttedBorder, buttedBorderSizes } from './units/butted-border';
import { cornerSettingTriangles, cornerSettingTriangleSizes } from './units/corner-setting-triangles';
import { courthouseSteps, courthouseStepsSizes } from './units/courthouse-steps';
import { diamond, diamondSizes } from './units/diamond';
import { eightPointStar, eightPointStarSizes } from './units/eight-point-star';
import { equilateralTriangle, equilateralTriangleSizes } from './units/equilateral-triangle';
import { flyingGeese, flyingGeeseSizes } from './units/flying-geese';
import { geeseStar, geeseStarSizes } from './units/geese-star';
import { halfHexagon, halfHexagonSizes } from './units/half-hexagon';
import { halfRectangleTriangles, halfRectangleTriangleSizes } from './units/half-rectangle-triangles';
import { halfSquareTriangles, halfSquareTriangleSizes } from './units/half-square-triangles';
import { hexagon, hexagonSizes } from './units/hexagon';
import { hourglassStar, hourglassStarSizes } from './units/hourglass-star';
import { kite, kiteSizes } from './units/kite';
import { logCabin, logCabinSizes } from './units/log-cabin';
import { miteredBorder, miteredBorderSizes } from './units/mitered-border';
import { octagonCorners, octagonCornerSizes } from './units/octagon-corners';
import { onPointSet, onPointSetSizes } from './units/on-point-set';
import { quarterSquareTriangles, quarterSquareTriangleSizes } from './units/quarter-square-triangles';
import { rectangle, rectangleSizes } from './units/rectangle';
import { sashing, sashingSizes } from './units/sashing';
import { sideSettingTriangles, sideSettingTriangleSizes } from './units/side-setting-triangles';
import { square, squareSizes } from './units/square';
import { squareInASquare, squareInASquareSizes } from './units/square-in-a-square';

/** The sizes of any unit, distinguished by `unit`; the most common units come first. */
export const unitSizesField = z.discriminatedUnion('unit', [
  squareSizes,
  rectangleSizes,
  halfSquareTriangleSizes,
  quarterSquareTriangleSizes,
  flyingGeeseSizes,
  squareInASquareSizes,
  halfRectangleTriangleSizes,
  octagonCornerSizes,
  logCabinSizes,
  courthouseStepsSizes,
  geeseStarSizes,
  hourglassStarSizes,
  eightPointStarSizes,
  equilateralTriangleSizes,
  diamondSizes,
  hexagonSizes,
  halfHexagonSizes,
  kiteSizes,
  sideSettingTriangleSizes,
  cornerSettingTriangleSizes,
  onPointSetSizes,
  sashingSizes,
  buttedBorderSizes,
  miteredBorderSizes,
]);

export type UnitSizes = z.infer<typeof unitSizesField>;

/** Each kind of unit by its name. A kind of the union above that is missing here does not compile. */
export const patchUnits: Readonly<Record<UnitSizes['unit'], PatchUnit>> = {
  square,
  rectangle,
  'half-square-triangles': halfSquareTriangles,
  'quarter-square-triangles': quarterSquareTriangles,
  'flying-geese': flyingGeese,
  'square-in-a-square': squareInASquare,
  'half-rectangle-triangles': halfRectangleTriangles,
  'octagon-corners': octagonCorners,
  'log-cabin': logCabin,
  'courthouse-steps': courthouseSteps,
  'geese-star': geeseStar,
  'hourglass-star': hourglassStar,
  'eight-point-star': eightPointStar,
  'equilateral-triangle': equilateralTriangle,
  diamond,
  hexagon,
  'half-hexagon': halfHexagon,
  kite,
  'side-setting-triangles': sideSettingTriangles,
  'corner-setting-triangles': cornerSettingTriangles,
  'on-point-set': onPointSet,
  sashing,
  'butted-border': buttedBorder,
  'mitered-border': miteredBorder,
};

/** The unit of these finished sizes with its cut patches. */
export function planUnit(sizes: UnitSizes, seam: number): UnitPlan {
  return patchUnits[sizes.unit].plan(sizes, seam);
}
