// On globalThis, because a server built by Next holds this file several times over.
const shared = globalThis as { mearingSendings?: Map<string, AbortController> }

/** For how long a press waits for a sending that is not known yet, in milliseconds, and how many of one owner's at most. */
const rememberedFor = 30_000
const mostRemembered = 20

/**
 * Runs the adding of a file that its household can stop as long as nothing of it is kept: by `stopSending` with the same
 * name, or by going away. A sending without a name can only be stopped by going away.
 *
 * @param name what the browser calls this sending; `owner` keeps it apart from what others send
 */
export async function whileSending<Result>(
  owner: string,
  name: string | undefined,
  asked: AbortSignal,
  work: (stop: AbortSignal) => Promise<Result>,
): Promise<Result> {
  if (name === undefined) return work(asked)
  shared.mearingSendings ??= new Map()
  const sendings = shared.mearingSendings
  const key = `${owner} ${name}`
  // The press may have been quicker than the last of the bytes.
  const pressed = sendings.get(key) ?? new AbortController()
  sendings.set(key, pressed)
  try {
    return await work(AbortSignal.any([asked, pressed.signal]))
  } finally {
    if (sendings.get(key) === pressed) sendings.delete(key)
  }
}

/**
 * Stops a sending; whether it came in time is what the sending itself answers. One that is not known yet is remembered for a
 * while, a few of each owner, so that none can take the room of another.
 */
export function stopSending(owner: string, name: string): void {
  shared.mearingSendings ??= new Map()
  const sendings = shared.mearingSendings
  const key = `${owner} ${name}`
  const known = sendings.get(key)
  known?.abort()
  const ofOwner = [...sendings.keys()].filter((one) => one.startsWith(`${owner} `)).length
  if (known !== undefined || ofOwner >= mostRemembered) return
  const early = new AbortController()
  early.abort()
  sendings.set(key, early)
  setTimeout(() => sendings.delete(key), rememberedFor).unref()
}
