import { randomBytes } from 'node:crypto'

/** What is held between two requests of one browser, and for whom. */
export type Held = 'import' | 'record pack'

/** How long anything is held, in milliseconds: the second request follows the first by itself. */
const heldFor = 120_000

/**
 * Of each kind this much is held at once, in all and of one owner, whose oldest leaves first. Choices of this program. Who
 * sends a notebook file is not known, so there none leaves for another.
 */
const most: Readonly<Record<Held, { readonly inAll: number; readonly ofOwner: number }>> = {
  import: { inAll: 20, ofOwner: Number.POSITIVE_INFINITY },
  'record pack': { inAll: 8, ofOwner: 2 },
}

type Holding = {
  readonly kind: Held
  readonly owner: string
  readonly what: unknown
  readonly until: number
}

// On globalThis, because a server built by Next holds this file several times over.
const shared = globalThis as { mearingHeldBriefly?: Map<string, Holding> }

/**
 * Holds something in memory for two minutes: what was made ready or checked, and not yet asked for. Answers with the
 * token under which its owner finds it. Nothing of it is on disk, so that nothing stays where nobody comes for it.
 * Undefined where there is no room: what is held for others never leaves early, and whoever asks does without.
 */
export function holdBriefly(kind: Held, owner: string, what: unknown, now = Date.now()): string | undefined {
  shared.mearingHeldBriefly ??= new Map()
  const holds = shared.mearingHeldBriefly
  forgetOld(holds, now)
  const ofKind = [...holds].filter(([, one]) => one.kind === kind)
  const own = ofKind.filter(([, one]) => one.owner === owner)
  const leaving = own.slice(0, Math.max(0, own.length + 1 - most[kind].ofOwner))
  if (ofKind.length - leaving.length >= most[kind].inAll) return undefined
  for (const [token] of leaving) holds.delete(token)
  const token = randomBytes(32).toString('hex')
  holds.set(token, { kind, owner, what, until: now + heldFor })
  const timer = setTimeout(() => holds.delete(token), heldFor)
  timer.unref()
  return token
}

/** What is held under a token for this owner; undefined once its time is over. */
export function heldUnder(kind: Held, owner: string, token: unknown, now = Date.now()): unknown {
  const held = typeof token === 'string' ? shared.mearingHeldBriefly?.get(token) : undefined
  return held?.kind === kind && held.owner === owner && held.until > now ? held.what : undefined
}

function forgetOld(holds: Map<string, Holding>, now: number): void {
  for (const [token, { until }] of holds) if (until <= now) holds.delete(token)
}
