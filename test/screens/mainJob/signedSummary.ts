import { describe, expect, test } from 'vitest'
import type { StatementFile } from '../../../lib/core/shares/statementFile.ts'
import { type ReadPdf, readPdf, wordsOf } from '../../pdf/readPdf.ts'
import { shownHash } from '../agreeing.ts'
import { detachedByPoppler } from '../popplerReading.ts'
import * as quarry from '../quarryLine.ts'
import { statementPrinted } from '../statementCommand.ts'
import { hourFigures, moneyFigures } from '../statementFigures.ts'
import { downloaded, exported, visit } from '../visiting.ts'
import { sha256 } from './bytes.ts'
import { a, b } from './evening.ts'

export function signedSummarySteps(): void {
  describe('the signed summary', () => {
    const copies = new Map<'a' | 'b', ReadPdf>()
    let bytes: Buffer = Buffer.alloc(0)
    let hash = ''
    let printed: StatementFile

    test('both households take their copy, and it is the same', async () => {
      for (const [key, household] of [
        ['a', a],
        ['b', b],
      ] as const) {
        await visit(household, 'Sign')
        const pdf = await downloaded(household.page, 'Locked copy, revision 1 (PDF)')
        copies.set(key, await readPdf(pdf))
        bytes = pdf
      }
      hash = await shownHash(b.page)

      expect(copies.get('a')).toEqual(copies.get('b'))
    })

    test('has every figure of the statement', async () => {
      printed = await statementPrinted(await exported(b))
      const words = ` ${wordsOf(...(copies.get('a')?.pages ?? []))} `
      const figures = [...moneyFigures(printed), ...hourFigures(printed)]

      // Ten amounts in the heads and at least six in each of the eight items.
      expect(figures.length).toBeGreaterThan(70)
      expect(figures.filter((figure) => !words.includes(` ${figure}`))).toEqual([])
    })

    test('has the revision, the hash and the page’s number on every page', async () => {
      const pages = copies.get('b')?.pages ?? []
      expect(pages.length).toBeGreaterThan(3)
      for (const [index, page] of pages.entries()) {
        const texts = page.texts.map(({ text }) => text)
        expect(texts).toContain('Revision 1')
        expect(texts).toContain(`SHA-256 of agreement.json: ${hash}`)
        expect(texts).toContain(`Page ${index + 1} of ${pages.length}`)
        expect(wordsOf(page)).not.toContain('DRAFT')
      }
    })

    test('has all signatures, and says that a household signs through one link', async () => {
      const words = wordsOf(...(copies.get('a')?.pages ?? []))
      for (const { name } of [...quarry.heading.households.a.parties, quarry.partyOfB])
        expect(words).toContain(`Signed as: ${name}`)
      expect(words).toContain('All parties of one household sign through its one private link.')
      expect(words).toContain('A tenant usually can’t bind the owner of the land.')
      expect(words).toContain('Still open: 1 of 11')
    })

    test('carries the agreement, whose bytes have the printed hash, and the signatures', async () => {
      const attachments = copies.get('a')?.attachments ?? new Map<string, Uint8Array>()
      const kept = JSON.parse(new TextDecoder().decode(attachments.get('signatures.json'))) as {
        typedName: string
        drawing?: string
        sha256: string
      }[]

      expect([...attachments.keys()].sort()).toEqual(['agreement.json', 'signatures.json'])
      expect(sha256(attachments.get('agreement.json') ?? new Uint8Array())).toBe(hash)
      expect(kept.map(({ typedName }) => typedName)).toEqual([
        'Odile Farnsby',
        'Jory Tallåsen',
        quarry.partyOfB.name,
      ])
      expect(kept.map(({ drawing }) => drawing !== undefined)).toEqual([true, false, false])
      expect(new Set(kept.map((one) => one.sha256))).toEqual(new Set([hash]))
    })

    test('is read by poppler too, with the same bytes inside', async () => {
      expect(sha256(await detachedByPoppler(bytes, 'agreement.json'))).toBe(hash)
    })

    test('a page for signing in ink can be printed instead, with the hash on it', async () => {
      const ink = await readPdf(await downloaded(b.page, 'Page for signing in ink (PDF)'))

      expect(wordsOf(...ink.pages)).toContain(`Revision 1. SHA-256 of agreement.json: ${hash}`)
      for (const { name } of [...quarry.heading.households.a.parties, quarry.partyOfB])
        expect(wordsOf(...ink.pages)).toContain(name)
    })
  })
}
