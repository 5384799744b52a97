/**
 * A drawing to scale as data, in 1/320 mm with x to the right and y down; screen and paper draw it alike. Parts are drawn in
 * order. `tone` is what a part is, never a color.
 */
export interface Diagram {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly parts: readonly DiagramPart[];
}

/** fabric: fabric; leftover: fabric that remains; cut: a line to cut; seam: a line to sew; fold; mark: a drawn line; plan: not yet there. */
export type Tone =
  'fabric' | 'fabric-alternate' | 'leftover' | 'cut' | 'seam' | 'fold' | 'mark' | 'plan' | 'warning';

export interface DiagramPoint {
  readonly x: number;
  readonly y: number;
}

export type DiagramPart =
  | { readonly part: 'polygon'; readonly points: readonly DiagramPoint[]; readonly tone: Tone }
  | { readonly part: 'line'; readonly from: DiagramPoint; readonly to: DiagramPoint; readonly tone: Tone }
  | { readonly part: 'circle'; readonly center: DiagramPoint; readonly radius: number; readonly tone: Tone }
  | {
      readonly part: 'ellipse';
      readonly center: DiagramPoint;
      readonly radiusX: number;
      readonly radiusY: number;
      readonly tone: Tone;
    }
  /** An arc from `fromDegrees` clockwise to `toDegrees`, 0 being to the right. */
  | {
      readonly part: 'arc';
      readonly center: DiagramPoint;
      readonly radius: number;
      readonly fromDegrees: number;
      readonly toDegrees: number;
      readonly tone: Tone;
    }
  /** Words at a point, drawn at reading size whatever the scale. */
  | {
      readonly part: 'label';
      readonly at: DiagramPoint;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
    }
  /** A dimension line, `offset` away from the measured edge (positive to its left as seen from `from` to `to`); its text is the length. */
  | {
      readonly part: 'dimension';
      readonly from: DiagramPoint;
      readonly to: DiagramPoint;
      readonly offset: number;
      /** The length to be written, in 1/320 mm; the renderer writes it in the project's units. */
      readonly length: number;
    };
