import { ProblemError, type DeviceProblem } from '../domain/problem';

/** Some work with a device. What the device refuses is told like any other problem; a bug stays an error. */
export async function orProblem<Outcome>(
  work: () => Promise<Outcome>,
  told: (problem: DeviceProblem) => Outcome,
): Promise<Outcome> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof ProblemError) return told(error.problem);
    throw error;
  }
}
