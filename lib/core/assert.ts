/** For what only a mistake in the program can break; never for what a person typed. */
export function assert(condition: unknown, message: string): asserts condition {
  if (!condition) throw new Error(`broken promise in the core: ${message}`)
}

/** Ends an exhaustive switch: the compiler refuses a forgotten case. */
export function never(value: never): never {
  throw new Error(`a case that no switch knows: ${JSON.stringify(value)}`)
}
