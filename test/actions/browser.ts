import { NextResponse } from 'next/server.js'

/**
 * Stands in for `next/headers`, which only answers while Next handles a request: one browser with its cookies, and what
 * the server told it to keep, written out by Next itself. Used with `vi.mock('next/headers', () => import('./browser.ts'))`.
 */
let jar = new Map<string, string>()
let requestHeaders = new Headers()
let told: string[] = []

/** A browser that sends these cookies, whatever their path: a hostile one sends any cookie anywhere. */
export function openBrowser(
  sends: Readonly<Record<string, string>> = {},
  withHeaders: Record<string, string> = {},
): void {
  jar = new Map(Object.entries(sends))
  requestHeaders = new Headers(withHeaders)
  told = []
}

/** Every `Set-Cookie` header that the browser was sent since it was opened, in order. */
export function setCookieHeaders(): readonly string[] {
  return told
}

/** The cookies that the browser keeps now. */
export function keptCookies(): Readonly<Record<string, string>> {
  return Object.fromEntries(jar)
}

export async function headers(): Promise<Headers> {
  return requestHeaders
}

type CookieOptions = NonNullable<Parameters<NextResponse['cookies']['set']>[2]>

export async function cookies() {
  return {
    get(name: string) {
      const value = jar.get(name)
      return value === undefined ? undefined : { name, value }
    },
    set(name: string, value: string, options: CookieOptions) {
      const response = new NextResponse()
      response.cookies.set(name, value, options)
      told.push(...response.headers.getSetCookie())
      if (options.maxAge === 0) jar.delete(name)
      else jar.set(name, value)
    },
  }
}
