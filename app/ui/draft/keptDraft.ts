/** What was typed and not saved, as it waits in the browser. */
export type KeptDraft = {
  readonly draft: unknown
  /** The version that it was made from. */
  readonly opened: { readonly draft: unknown; readonly base: string }
  /** When it was last typed in: milliseconds since 1970. */
  readonly at: number
  /** It was sent and no answer came: it may have arrived all the same. */
  readonly sent: boolean
}

/** Where drafts wait: `localStorage`, or what a test puts in its place. */
export type DraftShelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>

const shelfMark = 'mearing draft 1'

/**
 * The name under which a form's draft waits: whose it is (a notebook and a household of it), the page's address and the
 * form on it. Two households that share a browser never find each other's.
 */
export function keptName(owner: string, address: string, form: string): string {
  return [shelfMark, owner, address, form].join(' ')
}

/** The draft that waits under a name; undefined where none does, or where what stands there is no draft. */
export function readKept(shelf: DraftShelf, name: string): KeptDraft | undefined {
  try {
    const stored: unknown = JSON.parse(shelf.getItem(name) ?? 'null')
    return isKept(stored) ? stored : undefined
  } catch {
    return undefined
  }
}

/** Lets a draft wait; false where the browser keeps nothing, or has no room. */
export function writeKept(shelf: DraftShelf, name: string, kept: KeptDraft): boolean {
  try {
    shelf.setItem(name, JSON.stringify(kept))
    return true
  } catch {
    return false
  }
}

/** Takes a draft off the shelf. */
export function forgetKept(shelf: DraftShelf, name: string): void {
  try {
    shelf.removeItem(name)
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}

function isKept(value: unknown): value is KeptDraft {
  if (typeof value !== 'object' || value === null) return false
  const { draft, opened, at, sent } = value as Record<string, unknown>
  return (
    typeof draft === 'object' &&
    draft !== null &&
    typeof opened === 'object' &&
    opened !== null &&
    typeof (opened as Record<string, unknown>).base === 'string' &&
    typeof at === 'number' &&
    typeof sent === 'boolean'
  )
}

/** The browser's own shelf; undefined where it allows none. */
export function browserShelf(): DraftShelf | undefined {
  try {
    return window.localStorage
  } catch {
    return undefined
  }
}
