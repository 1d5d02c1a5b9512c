// On globalThis, because a server built by Next holds this file several times over, and each would have a queue of its own.
const shared = globalThis as { mearingFileQueue?: Promise<unknown> }

/**
 * Runs work when all that was asked for before is done: a photo unpacked may fill hundreds of megabytes, so only one is
 * at a time, and what is counted before a file is added still holds when it is.
 */
export function oneAtATime<Result>(work: () => Promise<Result>): Promise<Result> {
  const turn = (shared.mearingFileQueue ?? Promise.resolve()).then(work)
  // Whoever comes next waits for the end of this work, good or bad.
  shared.mearingFileQueue = turn.catch(() => undefined)
  return turn
}
