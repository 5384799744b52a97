import type { ProjectPurpose } from '#core/domain/project';
import type { StageState } from '#core/domain/stage';
import type { StageKind } from '#core/domain/stage-kinds';
import type { TripEventKind } from '#core/domain/trip';

/** A project of the demo workshop. Lengths are in inches, money is in cents, and days are counted from today. */
export interface DemoProject {
  readonly name: string;
  readonly purpose: ProjectPurpose;
  readonly forWhom: string;
  readonly dueInDays: number | null;
  readonly startedDaysAgo: number;
  readonly shape: DemoShape;
  readonly hole: number | null;
  readonly hasSlit: boolean;
  readonly plan: 'skirt' | 'topper' | 'runner' | 'throw' | 'mat';
  readonly notes: string;
  /** An outer binding strip changed today, so that the saved answer is out of date. */
  readonly latestStrip?: number;
  /** The project's own inner binding strip, for a hole too tight for the usual width. */
  readonly innerStrip?: number;
  readonly isArchived?: boolean;
  readonly stages: readonly DemoStage[];
  readonly cuts: readonly DemoCut[];
  readonly held?: readonly { readonly fabric: string; readonly length: number }[];
}

export type DemoShape =
  | { readonly shape: 'square'; readonly side: number }
  | { readonly shape: 'rectangle'; readonly width: number; readonly length: number }
  | { readonly shape: 'circle'; readonly diameter: number }
  | { readonly shape: 'hexagon' | 'octagon'; readonly acrossFlats: number };

/** What has happened in a stage so far. Stages not listed are still planned. */
export interface DemoStage {
  readonly kind: StageKind;
  readonly state: StageState;
  readonly daysAgo: number;
  readonly heldUpBy?: string;
  readonly notes?: string;
  readonly ticked?: number;
  readonly photo?: string;
  readonly trip?: DemoTrip;
  readonly work?: readonly DemoWork[];
}

export interface DemoTrip {
  readonly withWhom: string;
  readonly sentDaysAgo: number;
  readonly promisedInDays: number;
  readonly backDaysAgo?: number;
  readonly askedFor: string;
  readonly priceMinor: number | null;
  readonly trackingNumber?: string;
  readonly backing?: string;
  readonly batting?: string;
  readonly thread?: string;
  readonly patternName?: string;
  readonly events?: readonly DemoTripEvent[];
}

/** An entry of the time log. */
export interface DemoWork {
  readonly daysAgo: number;
  readonly minutes: number;
  readonly blocks?: number;
  readonly inchesByHand?: number;
}

/** An update about a trip. */
interface DemoTripEvent {
  readonly kind: TripEventKind;
  readonly daysAgo: number;
  readonly note?: string;
}

export interface DemoCut {
  readonly fabric: string;
  readonly kind: StageKind;
  readonly length: number;
  readonly daysAgo: number;
  readonly leftovers?: readonly { readonly width: number; readonly length: number }[];
}
