import * as v from 'valibot';

/** Where a shape first fails, and what stands there, in short. */
export function firstFault([issue]: readonly [v.BaseIssue<unknown>, ...v.BaseIssue<unknown>[]]): {
  path: string;
  given: string;
} {
  const given = issue.input === undefined ? 'nothing' : JSON.stringify(issue.input);
  return { path: v.getDotPath(issue) ?? '', given: given.slice(0, 60) };
}
