import { describe, expect, it } from 'vitest';
import { fabricDetails } from '#core/domain/stash';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';
import {
  detailsOf,
  emptyDraft,
  isNewFabricDraft,
  kindOfSize,
  withFabric,
} from '#renderer/features/stash/fabric-draft';
import { fabricId } from '#core/domain/ids';

const inches = lengthFromInches;
const start = emptyDraft(inches(42), calendarDate('2027-02-28'));
const size = (width: number, length: number) => ({ width: inches(width), length: inches(length) });

describe('the form of a new fabric', () => {
  it('lacks nothing but a name', () => {
    expect(fabricDetails.safeParse(start.fabric).success).toBe(false);
    expect(fabricDetails.safeParse({ ...start.fabric, name: 'Kettle blue' }).success).toBe(true);
  });

  it('is taken back as it was stored, and nothing else is', () => {
    const filled = { ...start, piece: { ...start.piece, size: size(22, 18), costMinor: 375 } };
    expect(isNewFabricDraft(JSON.parse(JSON.stringify(filled)))).toBe(true);
    expect(isNewFabricDraft({ fabric: start.fabric })).toBe(false);
    expect(isNewFabricDraft({ ...start, piece: { ...start.piece, on: 'yesterday' } })).toBe(false);
  });

  it('widens with its fabric what was measured off the whole width, and no other piece', () => {
    const wider = { ...start.fabric, width: inches(44) };
    const offTheRoll = { ...start, piece: { ...start.piece, size: size(42, 45) } };
    expect(withFabric(offTheRoll, wider).piece.size).toEqual(size(44, 45));
    const leftover = { ...start, piece: { ...start.piece, size: size(10, 45) } };
    expect(withFabric(leftover, wider).piece.size).toEqual(size(10, 45));
  });

  it('opens a fabric that exists and gives back just what can be changed of it', () => {
    const fabric = { ...start.fabric, name: 'Kettle blue', photoId: null, createdAt: 5 };
    const known = { ...fabric, id: fabricId.parse('00000000-0000-4000-8000-000000000001') };
    expect(detailsOf(known)).toEqual({ ...start.fabric, name: 'Kettle blue' });
  });
});

describe('the kind a size speaks for', () => {
  it('is a fat quarter or a fat eighth where no other kind was chosen', () => {
    expect(kindOfSize('yardage', size(22, 18))).toBe('fat-quarter');
    expect(kindOfSize('yardage', size(22, 9))).toBe('fat-eighth');
    expect(kindOfSize('yardage', size(42, 18))).toBe('yardage');
    expect(kindOfSize('leftover', size(22, 18))).toBe('leftover');
  });
});
