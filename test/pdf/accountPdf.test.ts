import { describe, expect, test } from 'vitest'
import { canonicalText } from '../../lib/core/agreement/canonicalText.ts'
import { accountParties, finalAccountOf } from '../../lib/core/ledger/finalAccount.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { type AccountPaper, accountPdf } from '../../lib/pdf/accountPdf.ts'
import { checkRecord } from '../../lib/seal/checkRecord.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { accountIntent, accountNames } from '../../lib/words/account/accountText.ts'
import { recordLines, recordVerdict } from '../../lib/words/recordText.ts'
import { settledDocument } from '../core/ledger/settledBooks.ts'
import { readPdf, wordsOf } from './readPdf.ts'
import { elementsIn, readStructure, textIn, textsOutside } from './readStructure.ts'

const signedAt = new Date('2027-06-01T18:30:00Z')

function paper(changed: Record<string, unknown> = {}, signed = true): AccountPaper {
  const read = readDocument(settledDocument(changed))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  const { notebook } = read.value
  const statement = statementOf(notebook)
  if (!statement.ok) throw new Error('shared')
  const account = finalAccountOf(notebook, statement.value, { number: 2, sha256: 'f'.repeat(64) })
  const sha256 = sha256Hex(canonicalText(account))
  return {
    account,
    number: 1,
    sha256,
    frozenAt: new Date('2027-05-30T09:00:00Z'),
    signatures: signed
      ? accountParties(account).map((place) => ({
          household: place.household,
          partyIndex: place.partyIndex,
          typedName: place.name.toLowerCase(),
          intent: accountIntent(place, accountNames(account)[place.household]),
          ...(place.household === 'a' ? { drawing: 'M40 150L120 40L200 160L320 60' } : {}),
          sha256,
          signedAt,
        }))
      : [],
    signedByAll: signed,
    units: notebook.units,
    fonts: printFonts(),
    madeAt: signedAt,
  }
}

describe('the final account on paper', () => {
  test('is one page for a short fence, and the same bytes each time', async () => {
    const bytes = await accountPdf(paper())
    expect((await readPdf(bytes)).pages).toHaveLength(1)
    expect(Buffer.from(await accountPdf(paper())).equals(Buffer.from(bytes))).toBe(true)
  })

  test('says what was planned, what it came to, what each gave, and that nothing is owed', async () => {
    const words = wordsOf(...(await readPdf(await accountPdf(paper()))).pages)
    for (const said of [
      'Final account 1',
      'in revision 2',
      'Along the gardens $300.00 $304.00 $152.00 $152.00',
      'In all $320.00 $304.00 $152.00 $152.00',
      'Money paid to suppliers $304.00 $0.00',
      'Payments between the two −$152.00 $152.00',
      'by bank $152.00',
      'Still to give $0.00 $0.00',
      'Neither owes the other anything for this fence.',
    ])
      expect(words).toContain(said)
  })

  test('prints every signature, and the hash of its own text on the page', async () => {
    const given = paper()
    const words = wordsOf(...(await readPdf(await accountPdf(given))).pages)
    expect(words).toContain(`SHA-256 of final-account.json: ${given.sha256}`)
    expect(words).toContain('Signed as: marnie oakshott')
    expect(words).toContain('Signed as: ines vandermolen')
    expect(words).toContain('I agree that nothing is owed between the households for this fence')
    expect(words).toContain('Signed by every party.')
    expect(words).not.toContain('agreement.json')
  })

  test('checked as a record is known as a final account: not locked, and to be compared by its hash', async () => {
    const given = paper()
    const findings = await checkRecord(await accountPdf(given))
    expect(findings).toMatchObject({
      holds: false,
      problems: [{ kind: 'no-seal' }, { kind: 'final-account', sha256: given.sha256 }],
    })
    expect(recordVerdict(findings)).toMatch(/^This is a final account\. It is never locked/)
    const lines = recordLines(findings).map(({ text }) => text)
    expect(lines.join(' ')).toContain(`Its SHA-256 must be ${given.sha256}.`)
    expect(lines.join(' ')).toContain('record pack')
  })

  test('shows an empty place for whoever has not signed, and counts no signature for another text', async () => {
    const unsigned = wordsOf(...(await readPdf(await accountPdf(paper({}, false)))).pages)
    expect(unsigned).toContain('Not signed by every party yet.')
    const given = paper()
    const other = {
      ...given,
      signatures: given.signatures.map((one) => ({ ...one, sha256: '0'.repeat(64) })),
    }
    const words = wordsOf(...(await readPdf(await accountPdf(other))).pages)
    expect(words).toContain('Not signed yet.')
    expect(words).not.toContain('Signed as:')
  })

  test('is tagged: title, tables and signatures are read aloud, and nothing stands outside', async () => {
    const read = await readStructure(await accountPdf(paper()))
    expect(textsOutside(read)).toEqual([])
    const [page, ...others] = read.pages
    if (page === undefined) throw new Error('there is a page')
    expect(others).toEqual([])
    const all = textIn(page.tree, page)
    expect(all).toContain('Final account 1')
    expect(all).toContain('Neither owes the other anything for this fence.')
    const roles = elementsIn(page.tree).map(({ role }) => role)
    expect(roles.filter((role) => role === 'Table')).toHaveLength(4)
    // One drawn signature, which is told in words.
    expect(roles.filter((role) => role === 'Figure')).toHaveLength(1)
  })

  test('draws what was spent over time where more than one day stands in the books, still on one page', async () => {
    const [whole, payment] = settledDocument().contributions as [Record<string, unknown>, unknown]
    const [wire, posts] = whole.lines as [unknown, unknown]
    const contributions = [
      { ...whole, amount: '104.00', lines: [wire] },
      { ...whole, amount: '200.00', date: '2027-05-10', lines: [posts] },
      payment,
    ]
    const { pages } = await readStructure(await accountPdf(paper({ contributions }, false)))
    expect(pages).toHaveLength(1)
    const figures = pages.flatMap(({ tree }) => elementsIn(tree).filter(({ role }) => role === 'Figure'))
    expect(figures.map(({ alternative }) => alternative)).toEqual([
      'Steps from 3 May 2027 to 10 May 2027. Spent by then: $304.00, of it $304.00 by No. 12 and $0.00 by No. 14. Planned in all: $320.00.',
    ])
  })

  test('goes on over further pages where there are many items, with the hash on each', async () => {
    const line = { what: 'wire', quantity: '1', unitPrice: '1.00', suppliedBy: 'bought' }
    const common = Array.from({ length: 80 }, (_, at) => ({
      id: `c${at}`,
      name: `Common cost ${at}`,
      materials: [line],
      share: { together: { principle: 'equal' } },
    }))
    const given = paper({ common })
    const { pages } = await readPdf(await accountPdf(given))
    expect(pages.length).toBeGreaterThan(1)
    for (const page of pages) expect(wordsOf(page)).toContain(given.sha256)
  })
})
