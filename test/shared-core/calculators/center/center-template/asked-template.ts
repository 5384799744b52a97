import {
  type CenterTemplate,
  type CenterTemplateInput,
  planCenterTemplate,
} from '#core/calculators/center/center-template/center-template';
import { lengthFromInches as inches } from '#core/units/length';

export const asked: CenterTemplateInput = {
  holeDiameter: inches(6.5),
  seamAllowance: inches(1 / 4),
  part: 'whole',
  paper: 'letter',
};

/** The template of a 6 1/2 in hole on letter paper, changed as said. */
export const plan = (change: Partial<CenterTemplateInput> = {}): CenterTemplate => {
  const result = planCenterTemplate({ ...asked, ...change });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
