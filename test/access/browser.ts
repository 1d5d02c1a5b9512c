/**
 * Stands in for `next/headers`, which only answers while Next handles a request: one browser with its cookies. Used with
 * `vi.mock('next/headers', () => import('./browser.ts'))`.
 */
type CookieOptions = {
  readonly httpOnly: boolean
  readonly sameSite: string
  readonly path: string
  readonly maxAge: number
  readonly secure: boolean
}

let jar = new Map<string, { readonly value: string; readonly options: CookieOptions }>()
let requestHeaders = new Headers()

/** A browser without cookies, whose requests carry these headers. */
export function openBrowser(withHeaders: Record<string, string> = {}): void {
  jar = new Map()
  requestHeaders = new Headers(withHeaders)
}

/** How a cookie was last set, if the browser still has it. */
export function cookieAsSet(name: string): { value: string; options: CookieOptions } | undefined {
  return jar.get(name)
}

export async function headers(): Promise<Headers> {
  return requestHeaders
}

export async function cookies() {
  return {
    get(name: string) {
      const kept = jar.get(name)
      return kept === undefined ? undefined : { name, value: kept.value }
    },
    set(name: string, value: string, options: CookieOptions) {
      if (options.maxAge > 0) {
        jar.set(name, { value, options })
      } else if (jar.get(name)?.options.path === options.path) {
        jar.delete(name)
      }
    },
  }
}
