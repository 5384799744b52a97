import { type ComponentType, createElement, type ReactElement } from 'react';
import { projectIdSchema, type ProjectId } from '#core/domain/ids';
import type { SheetPaper } from '#core/domain/paper';

/** The rest of an address, after the name of the sheet. */
export interface SheetAddress {
  /** The parts of the path. */
  readonly path: readonly string[];
  readonly search: URLSearchParams;
}

/** A kind of sheet: draws what an address asks for; null when the address does not fit this kind. */
export type Sheet = (address: SheetAddress, paper: SheetPaper) => ReactElement | null;

/** Makes a kind of sheet from a reader of its address and the component that draws it. */
export function defineSheet<Asked extends object>(
  read: (address: SheetAddress) => Asked | null,
  component: ComponentType<Asked & { readonly paper: SheetPaper }>,
): Sheet {
  return (address, paper) => {
    const asked = read(address);
    return asked === null ? null : createElement(component, { ...asked, paper });
  };
}

/** Reads an address that has a project’s id and nothing else. */
export function readProject({ path }: SheetAddress): { readonly projectId: ProjectId } | null {
  const [id, ...more] = path;
  const projectId = projectIdSchema.safeParse(id);
  return projectId.success && more.length === 0 ? { projectId: projectId.data } : null;
}
