import { describe, expect, test } from 'vitest'
import { printFonts } from '../../lib/files/printFonts.ts'
import { inkSigningPdf } from '../../lib/pdf/inkSigningPdf.ts'
import { exampleNotebook, notebookWith, sha256Of } from './madeSummary.ts'
import { qpdfCheck } from './pdfTools.ts'
import { readPdf, wordsOf } from './readPdf.ts'

const standing = {
  kind: 'up for signing',
  number: 7,
  sha256: '0123456789abcdef'.repeat(4),
  frozenAt: new Date('2027-03-03T19:12:00Z'),
} as const

const made = (notebook = exampleNotebook().notebook) =>
  inkSigningPdf({ notebook, standing, fonts: printFonts() })

describe('the paper for signing in ink', () => {
  test('names every party with its capacity, the revision and the whole hash on every page', async () => {
    const { pages } = await readPdf(await made())
    const words = wordsOf(...pages)
    for (const who of ['Marnie Oakshott, owner', 'Tobias Oakshott, co-owner', 'Ines Vandermolen, owner'])
      expect(words).toContain(who)
    expect(words).toContain('Signing in ink: revision 7')
    for (const page of pages) {
      expect(wordsOf(page)).toContain('Revision 7')
      expect(wordsOf(page)).toContain(standing.sha256)
    }
  })

  test('has room for signature, date, place and a witness for each party', async () => {
    const words = wordsOf(...(await readPdf(await made())).pages)
    for (const word of ['Signature', 'Name in print', 'Date', 'Place', 'Witness or notary']) {
      expect(words.split(word).length - 1).toBeGreaterThanOrEqual(3)
    }
  })

  test('is the same each time and a sound file', async () => {
    const once = await made()
    expect(sha256Of(await made())).toBe(sha256Of(once))
    expect(await qpdfCheck(once)).toContain('No syntax or stream encoding errors found')
  })

  test('says so where no party has been named', async () => {
    expect(wordsOf(...(await readPdf(await made(notebookWith().notebook))).pages)).toContain(
      'there is nothing to sign',
    )
  })
})
