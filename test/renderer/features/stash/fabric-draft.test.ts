import { describe, expect, it } from 'vitest';
import { fabricDetailsSchema } from '#core/domain/stash';
import { lengthFromInches } from '#core/units/length';
import {
  boughtPiece,
  detailsOf,
  emptyDraft,
  isNewFabricDraft,
  kindOfSize,
  withFabric,
} from '#renderer/features/stash/fabric-draft';
import { fabricIdSchema } from '#core/domain/ids';

const inches = lengthFromInches;
const start = emptyDraft(inches(42));
const size = (width: number, length: number) => ({ width: inches(width), length: inches(length) });

describe('the form of a new fabric', () => {
  it('needs nothing but a name', () => {
    expect(fabricDetailsSchema.safeParse(start.fabric).success).toBe(false);
    expect(fabricDetailsSchema.safeParse({ ...start.fabric, name: 'Kettle blue' }).success).toBe(true);
  });

  it('is read back as it was stored; anything else is refused', () => {
    const filled = { ...start, piece: { ...start.piece, size: size(22, 18), costMinor: 375 } };
    expect(isNewFabricDraft(JSON.parse(JSON.stringify(filled)))).toBe(true);
    expect(isNewFabricDraft({ ...start, piece: { ...start.piece, on: '2024-03' } })).toBe(true);
    expect(isNewFabricDraft({ fabric: start.fabric })).toBe(false);
    expect(isNewFabricDraft({ ...start, piece: { ...start.piece, on: 'yesterday' } })).toBe(false);
  });

  it('changes the width of a full-width piece with its fabric, and of no other piece', () => {
    const wider = { ...start.fabric, width: inches(44) };
    const byTheYard = { ...start, piece: { ...start.piece, size: size(42, 45) } };
    expect(withFabric(byTheYard, wider).piece.size).toEqual(size(44, 45));
    const leftover = { ...start, piece: { ...start.piece, size: size(10, 45) } };
    expect(withFabric(leftover, wider).piece.size).toEqual(size(10, 45));
  });

  it('gives the details of a saved fabric that can be changed', () => {
    const fabric = { ...start.fabric, name: 'Kettle blue', photoId: null, createdAt: 5 };
    const known = { ...fabric, id: fabricIdSchema.parse('00000000-0000-4000-8000-000000000001') };
    expect(detailsOf(known)).toEqual({ ...start.fabric, name: 'Kettle blue' });
  });
});

describe('a purchase of which nothing was written but its size', () => {
  it('costs nothing known and was bought on no known day', () => {
    const piece = { ...start.piece, size: size(42, 36) };
    expect(boughtPiece(piece)).toMatchObject({ costMinor: null, on: null });
    expect(boughtPiece({ ...piece, costMinor: 0 })).toMatchObject({ costMinor: 0 });
  });
});

describe('the kind a size implies', () => {
  it('is a fat quarter or fat eighth if no other kind was chosen', () => {
    expect(kindOfSize('yardage', size(22, 18))).toBe('fat-quarter');
    expect(kindOfSize('yardage', size(22, 9))).toBe('fat-eighth');
    expect(kindOfSize('yardage', size(42, 18))).toBe('yardage');
    expect(kindOfSize('leftover', size(22, 18))).toBe('leftover');
  });
});
