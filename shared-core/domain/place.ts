import { z } from 'zod';
import type { PlaceId } from './ids';

/** One place of the workshop: a room, a shelf in it, a bin on that, as deep as the maker wants. */
export interface Place {
  readonly id: PlaceId;
  readonly parentId: PlaceId | null;
  readonly name: string;
  /** Every name from the room down, as in `Sewing room, shelf 2`. */
  readonly path: string;
}

/** The names of a place's path from the room down, trimmed; empty for a path that names nothing. */
export function placeNames(path: string): readonly string[] {
  return path
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
}

/** The path of a place by its names from the room down; empty for none. */
export function placePathOf(names: readonly string[]): string {
  return names.join(', ');
}

/** Whether the path of one place is another's, or leads through it. */
export function isInPlace(path: string, other: string): boolean {
  return path === other || path.startsWith(placePathOf([other, '']));
}

/** A path as it was typed: levels parted by commas, at most 120 characters; empty for no place. */
export const placePathSchema = z
  .string()
  .trim()
  .max(120)
  .transform((path) => placePathOf(placeNames(path))) as unknown as z.ZodType<string, string>;

/** The name of one place; a comma would split it in two. */
export const placeNameSchema = z
  .string()
  .trim()
  .min(1)
  .max(60)
  .regex(/^[^,]*$/);
