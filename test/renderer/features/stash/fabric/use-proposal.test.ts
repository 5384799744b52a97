import { describe, expect, it } from 'vitest';
import { proposedProject } from '#renderer/features/stash/fabric/use-proposal';
import { addStock, addProject, inches, openWorkshop, TODAY } from '#test/helpers/workshop';

function threeProjects() {
  const workshop = openWorkshop();
  const ids = ['First due', 'Second', 'Third'].map((name) => addProject(workshop, { name }).projectId);
  const fabric = addStock(workshop);
  const booked = { pieceId: fabric.pieceId, on: TODAY, note: '' };
  const propose = (more: { running?: (typeof ids)[number]; open?: typeof ids } = {}) => {
    const { ledger } = workshop.get('fabric:open', { fabricId: fabric.fabricId });
    const running = more.running === undefined ? null : { projectId: more.running };
    return proposedProject({ open: more.open ?? ids, running, ledger, pieceId: fabric.pieceId });
  };
  const [first, second, third] = ids;
  if (first === undefined || second === undefined || third === undefined) throw new Error('Three');
  return { workshop, booked, propose, first, second, third };
}

describe('the proposed project for a piece of fabric', () => {
  it('is the first due without other hints, and none without an open project', () => {
    const { propose, first } = threeProjects();
    expect(propose()).toBe(first);
    expect(propose({ open: [] })).toBeNull();
  });

  it('is the one with the running clock, then the last one cut for, then one with fabric set aside', () => {
    const { workshop, booked, propose, first, second, third } = threeProjects();
    workshop.get('ledger:set-aside', { ...booked, projectId: third, length: inches(9) });
    expect(propose()).toBe(third);
    const cut = { ...booked, length: inches(5), stageId: null, leftovers: [], knowingly: false };
    const { bookingId } = workshop.get('ledger:cut', { ...cut, projectId: second });
    expect(propose()).toBe(second);
    expect(propose({ running: first })).toBe(first);
    expect(propose({ open: [first, third] })).toBe(third);
    workshop.get('ledger:undo', { bookingId, on: TODAY });
    expect(propose()).toBe(third);
  });

  it('is never a project that is not open', () => {
    const { propose, second, third } = threeProjects();
    expect(propose({ running: third, open: [second] })).toBe(second);
  });
});
