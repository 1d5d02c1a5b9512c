import type { Page } from '@playwright/test'
import { field, trySaving } from '../typing.ts'
import { all, rewriting } from './pressing.ts'
import type { RefusalRow } from './refusalRow.ts'

/** How the only party of a household signs on a page, and a signature that is sent otherwise than it was typed. */
export function signaturesOn(at: string, name: string) {
  const form = 'party-0-field'
  const typedName = (page: Page) => field(page, 'typedName', form)
  const signedAs = async (page: Page) => {
    await typedName(page).fill(name)
    await field(page, 'intent', form).check()
  }
  const sign = (page: Page) => trySaving(page, `Sign as ${name}`)
  const sentOtherwise = (
    what: string,
    refuses: string,
    says: string,
    written: string,
    crafted: string,
  ): RefusalRow => ({
    what,
    refuses,
    at,
    typed: all(signedAs, rewriting(written, crafted)),
    press: sign,
    says,
    keeps: [[typedName, name]],
  })
  return { form, typedName, signedAs, sign, sentOtherwise }
}

/** Another hash in the place of the one that was shown. */
export const otherHash = ['"sha256":"', `"sha256":"${'0'.repeat(64)}","was":"`] as const
