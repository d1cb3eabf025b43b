/** Some work without the stacks of errors: the pure machine builds and drops an error at every step, and the stack is most of its price. */
export function withoutStacks<Outcome>(work: () => Outcome): Outcome {
  const usual = Error.stackTraceLimit;
  Error.stackTraceLimit = 0;
  try {
    return work();
  } finally {
    Error.stackTraceLimit = usual;
  }
}
