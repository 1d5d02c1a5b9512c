import { keptBooks, on, places, withEntry } from './keptBooks.ts'
import { button, documentAt, entryFields, opened, pressed, sending, sends } from './pressing.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { meanwhile, withList } from './storeBeside.ts'

/** What was entered, taken back, entered again and confirmed. */
export const bookRefusals: RefusalGroup = {
  about: 'what is pressed in the book of money and hours',
  notebook: keptBooks,
  rows: [
    {
      what: 'an entry is taken back without a word why',
      refuses: 'takeBackRefusals.why',
      at: '/money',
      typed: opened('Take back'),
      press: pressed('Take this entry back'),
      says: 'Why: needed, in a few words (at most 500 characters), such as “entered twice”.',
    },
    {
      what: 'an entry is taken back that was taken back in another window',
      refuses: 'takeBackRefusals.changed',
      at: '/money',
      ...meanwhile(
        withList(
          'contributions',
          withEntry(0, (one) => ({ ...one, struck: { on, by: 'a', why: 'once more' } })),
        ),
      ),
      typed: async (page) => {
        await opened('Take back')(page)
        await page.locator('#why-0').fill('it came twice')
      },
      press: pressed('Take this entry back'),
      says: 'This entry was changed or taken back in the meantime',
      keeps: [[(page) => page.locator('#why-0'), 'it came twice']],
    },
    {
      what: 'a payment is taken back that the other household has confirmed meanwhile',
      refuses: 'takeBackRefusals.confirmed',
      at: '/money',
      ...meanwhile(
        withList(
          'contributions',
          withEntry(places.paidByA, ({ waits: _no, ...one }) => ({ ...one, confirmed: { on, by: 'b' } })),
        ),
      ),
      typed: async (page) => {
        const entry = page.locator(`#book-entry-${places.paidByA}`)
        await entry.locator('summary').click()
        await entry.locator('input[name=why]').fill('not paid after all')
      },
      press: (page) =>
        page
          .locator(`#book-entry-${places.paidByA}`)
          .getByRole('button', { name: 'Take this entry back' })
          .click(),
      says: 'The other household has confirmed this payment, so it stays in the book.',
      keeps: [[(page) => page.locator(`#why-${places.paidByA}`), 'not paid after all']],
    },
    {
      what: 'goods of the other household are taken back that both have marked',
      refuses: 'booksRefusals.valueStays',
      at: '/money',
      typed: async (page) => {
        await opened('Take back')(page)
        const { contributions } = await documentAt(page)
        const named = entryFields(contributions, places.loftTiles)
        await sends(button(page, 'Take this entry back'), { ...named, why: 'they went back' })
      },
      press: pressed('Take this entry back'),
      says: 'and it is the other household’s, so one alone can’t take it back. Goods that went back are entered as received back.',
      keeps: [[(page) => page.locator('#why-0'), 'they went back']],
    },
    {
      what: 'what was taken back is entered again after it was in another window',
      refuses: 'againRefusals.stands',
      at: '/money',
      ...meanwhile(
        withList('contributions', (entries) => {
          const { struck: _once, ...again } = entries[places.struck] as Record<string, unknown>
          return [...entries, again]
        }),
      ),
      press: pressed('Enter it again'),
      says: 'Nothing was entered: an entry that says the same stands in the book after this one.',
    },
    {
      what: 'what was never taken back is entered again',
      refuses: 'againRefusals.gone',
      at: '/money',
      typed: sending('Enter it again', { index: '0' }),
      press: pressed('Enter it again'),
      says: 'Nothing was entered: this entry is not one that you took back, or the book has changed since.',
    },
    {
      what: 'a payment is confirmed that was confirmed in another window',
      refuses: 'confirmingRefusal.confirmed already',
      at: '/money',
      ...meanwhile(
        withList(
          'contributions',
          withEntry(places.paidByB, ({ waits: _no, ...one }) => ({ ...one, confirmed: { on, by: 'a' } })),
        ),
      ),
      press: pressed('We received it: confirm'),
      says: 'Heron House confirmed this payment already, on 20 May 2026. It was not confirmed a second time, and counts once.',
    },
    {
      what: 'a payment is confirmed that was taken back meanwhile',
      refuses: 'confirmingRefusal.taken back',
      at: '/money',
      ...meanwhile(
        withList(
          'contributions',
          withEntry(places.paidByB, (one) => ({ ...one, struck: { on, by: 'b', why: 'not yet paid' } })),
        ),
      ),
      press: pressed('We received it: confirm'),
      says: 'This payment was taken back in the meantime, so there is nothing to confirm. Load the page again.',
    },
    {
      what: 'a household confirms the payment that it made itself',
      refuses: 'confirmingRefusal.not the receiver',
      at: '/money',
      typed: sending('We received it: confirm', { index: String(places.paidByA) }),
      press: pressed('We received it: confirm'),
      says: 'Only Bank Cottage can confirm it, since it is said to have received the money.',
    },
    {
      what: 'a receipt is confirmed as if it were a payment',
      refuses: 'confirmingRefusal.not a payment',
      at: '/money',
      typed: sending('We received it: confirm', { index: '0' }),
      press: pressed('We received it: confirm'),
      says: 'This entry is no payment between you. Load the page again.',
    },
  ],
}
