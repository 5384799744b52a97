/**
 * A drawing to scale as data, in 1/320 mm with x to the right and y down. Screen and paper draw it the same. Parts are drawn in
 * order. `tone` says what a part is, not its color.
 */
export interface Diagram {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly parts: readonly DiagramPart[];
}

/** leftover: fabric that remains. cut: a line to cut. seam: a line to sew. mark: a line to draw. plan: not made yet. */
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
  /** Text at a point, always at reading size. */
  | {
      readonly part: 'label';
      readonly at: DiagramPoint;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
    }
  /** A dimension line with its length. `offset` is its distance from the edge, positive to the left when you look from `from` to `to`. */
  | {
      readonly part: 'dimension';
      readonly from: DiagramPoint;
      readonly to: DiagramPoint;
      readonly offset: number;
      /** In 1/320 mm; the renderer writes it in the project's units. */
      readonly length: number;
    };
