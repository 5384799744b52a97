import type { ChannelInput } from '#core/contract/channels';
import type { FabricPieceId } from '#core/domain/ids';
import { addDays } from '#core/units/calendar-date';
import { type Length, lengthFromInches } from '#core/units/length';
import { DEMO_CONTACTS } from './demo-contacts';
import { DEMO_FABRICS, type DemoFabric, type DemoFabricPiece } from './demo-fabrics';
import { DEMO_FLAT_PROJECTS } from './demo-flat-projects';
import type { DemoCut, DemoProject } from './demo-project';
import { DEMO_RINGS } from './demo-rings';
import { type DemoShelf, type DemoStore, madeBefore, type Moment } from './demo-store';
import { projectMoments } from './demo-story';
import { paintFabric } from './drawings/fabric';

/** Fills an empty store with the demo workshop, in the order in which things happened. */
export function fillDemo(store: DemoStore): void {
  const { workshop } = store.call('workshop:opening', {});
  store.call('workshop:change', { workshop: { ...workshop, name: 'The Quince Loft' } });
  for (const details of DEMO_CONTACTS) store.call('contact:save', { contactId: null, details });
  const shelf: DemoShelf = { fabrics: new Map(), pieces: new Map(), projects: new Map() };
  const projects = [...DEMO_RINGS, ...DEMO_FLAT_PROJECTS];
  const moments = [
    ...DEMO_FABRICS.flatMap((fabric) => fabricMoments(store, shelf, fabric)),
    ...projects.flatMap((project) => projectMoments(store, shelf, project)),
    ...projects.flatMap((project) => ledgerMoments(store, shelf, project)),
  ];
  for (const moment of moments.toSorted((a, b) => b.daysAgo - a.daysAgo)) {
    store.setClock(moment.daysAgo);
    moment.happen();
  }
  store.setClock(0);
}

function fabricMoments(store: DemoStore, shelf: DemoShelf, fabric: DemoFabric): readonly Moment[] {
  const first = Math.max(...fabric.pieces.map((piece) => piece.daysAgo));
  const create: Moment = {
    daysAgo: first,
    happen: () => {
      const { fabricId } = store.call('fabric:create', { details: fabricDetailsOf(fabric) });
      store.call('fabric:set-photo', { fabricId, bytes: paintFabric(fabric.look) });
      shelf.fabrics.set(fabric.name, fabricId);
    },
  };
  return [create, ...fabric.pieces.map((piece) => purchase(store, shelf, fabric, piece))];
}

function fabricDetailsOf(fabric: DemoFabric): ChannelInput<'fabric:create'>['details'] {
  return {
    name: fabric.name,
    print: fabric.printWords,
    colorWords: fabric.colorWords,
    fiber: fabric.fiber,
    direction: fabric.direction,
    width: lengthFromInches(fabric.width),
    isWashed: fabric.isWashed,
    supplier: fabric.supplier,
    place: fabric.place,
    swatch: fabric.look.ground,
    notes: '',
  };
}

function purchase(store: DemoStore, shelf: DemoShelf, fabric: DemoFabric, piece: DemoFabricPiece): Moment {
  return {
    daysAgo: piece.daysAgo,
    happen: () => {
      const { pieceId } = store.call('ledger:buy', {
        fabricId: madeBefore(shelf.fabrics, fabric.name),
        kind: piece.kind,
        size: { width: lengthFromInches(piece.width), length: lengthFromInches(piece.length) },
        costMinor: piece.costMinor,
        on: addDays(store.today, -piece.daysAgo),
        note: '',
      });
      const pieces = shelf.pieces.get(fabric.name) ?? [];
      shelf.pieces.set(fabric.name, [...pieces, { id: pieceId, left: piece.length }]);
    },
  };
}

function ledgerMoments(store: DemoStore, shelf: DemoShelf, project: DemoProject): readonly Moment[] {
  const aside = (project.held ?? []).map(({ fabric, length }) => ({
    daysAgo: 1,
    happen: () => {
      store.call('ledger:set-aside', {
        pieceId: pieceFor(shelf, fabric, length).id,
        projectId: madeBefore(shelf.projects, project.name),
        length: lengthFromInches(length),
        on: addDays(store.today, -1),
        note: '',
      });
    },
  }));
  return [...project.cuts.map((cut) => cutMoment(store, shelf, project, cut)), ...aside];
}

function cutMoment(store: DemoStore, shelf: DemoShelf, project: DemoProject, cut: DemoCut): Moment {
  return {
    daysAgo: cut.daysAgo,
    happen: () => {
      const projectId = madeBefore(shelf.projects, project.name);
      const piece = pieceFor(shelf, cut.fabric, cut.length);
      const { stages } = store.call('project:open', { projectId });
      store.call('ledger:cut', {
        pieceId: piece.id,
        projectId,
        stageId: stages.find((stage) => stage.kind === cut.kind)?.id ?? null,
        length: lengthFromInches(cut.length),
        leftovers: (cut.leftovers ?? []).map(sizeOf),
        knowingly: false,
        on: addDays(store.today, -cut.daysAgo),
        note: '',
      });
      piece.left -= cut.length;
    },
  };
}

function sizeOf(size: { readonly width: number; readonly length: number }): {
  width: Length;
  length: Length;
} {
  return { width: lengthFromInches(size.width), length: lengthFromInches(size.length) };
}

function pieceFor(
  shelf: DemoShelf,
  fabric: string,
  length: number,
): { readonly id: FabricPieceId; left: number } {
  const piece = shelf.pieces.get(fabric)?.find(({ left }) => left >= length);
  if (piece === undefined) throw new Error(`The demo has no ${length} in of ${fabric}`);
  return piece;
}
