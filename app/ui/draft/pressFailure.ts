'use client'

import { failureOf } from './failure.ts'
import { formWords } from './formWords.ts'

const words = {
  lost: formWords.pressLost,
  broke: formWords.pressBroke,
  outdated: formWords.pressOutdated,
} as const

/** Why a press came to nothing, in words. Next's own signals, a redirect for one, are thrown on. */
export function pressFailure(error: unknown): string {
  return words[failureOf(error)]
}
