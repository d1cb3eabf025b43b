import * as v from 'valibot';

/** Where a shape first fails, and what stands there, in short. */
export function firstFault([issue]: readonly [v.BaseIssue<unknown>, ...v.BaseIssue<unknown>[]]): {
  path: string;
  given: string;
} {
  return { path: v.getDotPath(issue) ?? '', given: (JSON.stringify(issue.input) ?? 'nothing').slice(0, 60) };
}
