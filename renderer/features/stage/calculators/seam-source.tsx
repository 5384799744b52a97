import type { Calculator } from '#core/calculators/calculator';
import { factFields } from '#core/calculators/fact-fields';
import type { Measurements } from '#core/domain/measurements';
import { usualSeams } from '#core/learned/usual-seams';
import { useRead } from '#renderer/bridge/query';
import { seamSourceWords } from '#renderer/text/seam-words';
import layout from '#renderer/ui/page/layout.module.css';

interface SeamSourceProps {
  readonly calculator: Calculator;
  readonly measurements: Measurements;
  /** The fields the maker set. */
  readonly own: Readonly<Record<string, unknown>>;
}

/** Says whether the errors of seams and cuts are learned, and from how many projects; nothing where the maker or the project set them. */
export function SeamSource({ calculator, measurements, own }: SeamSourceProps) {
  const fields = [...factFields(calculator, measurements)].filter(
    ([field, fact]) => (fact === 'seamOff' || fact === 'cutOff') && !Object.hasOwn(own, field),
  );
  const { value: checks } = useRead('workshop:seam-checks', {}, { isOn: fields.length > 0 });
  if (fields.length === 0 || checks === undefined) return null;
  const usual = usualSeams(checks);
  const { seamOff, cutOff } = measurements.settings;
  const isOfProject =
    usual.inUse !== null && (usual.inUse.seamOff !== seamOff || usual.inUse.cutOff !== cutOff);
  return isOfProject ? null : <p className={layout['quiet']}>{seamSourceWords(usual)}</p>;
}
