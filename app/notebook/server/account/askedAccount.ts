import { notFound } from 'next/navigation'
import type { Opened } from '../opened.ts'
import type { FrozenAccount } from './frozenAccounts.ts'

/** The final account that an address asks for by `?number=2`, the newest where it names none; else "not found". */
export function askedAccount(opened: Opened, request: Request): FrozenAccount {
  const asked = new URL(request.url).searchParams.get('number')
  const found =
    asked === null
      ? opened.accounts[0]
      : opened.accounts.find(({ stored }) => String(stored.number) === asked)
  return found ?? notFound()
}
