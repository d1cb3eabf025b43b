import type { Act, StepId } from '../../procedure/step';
import type { Formats } from '../formats';
import type { StepWords } from '../text';
import { stepsFerment } from './steps-ferment';
import { stepsFinish } from './steps-finish';
import { stepsStart } from './steps-start';

/** The words of every step, given its act: a step without words does not compile. */
export type Steps = { [Step in StepId]: (act: Act, formats: Formats) => StepWords };

export const steps: Steps = { ...stepsStart, ...stepsFerment, ...stepsFinish };
