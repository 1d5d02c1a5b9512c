import { describe, expect, test } from 'vitest'
import { plainBlanks } from '../../shownMarkup.ts'
import { expectPage } from '../expectPage.ts'
import * as quarry from '../quarryLine.ts'
import { put, save } from '../typing.ts'
import { panel, visit } from '../visiting.ts'
import { a, b } from './evening.ts'

export function sharingSteps(): void {
  describe('shares in plain words', () => {
    const [asksA, asksB] = [`${quarry.names.a} is asked for`, `${quarry.names.b} for`]

    // Each worked out by hand from what quarryLine.ts types; tax and rounding by rules 1 and 2 of lib/forms/notebook-format.md.
    test.each([
      [
        'Road to the oak',
        // 40 · 18.50 = 740.00; 81 · 6.20 · 1.0725 = 538.6095, so 538.61; 14 · 2.45 = 34.30; less 45.00: 1267.91.
        'Materials. Pay the difference: the basic fence of $900.00 is halved; the $367.91 above it is asked of Larkspur Cottage. ' +
          `So ${asksA} $817.91, ${asksB} $450.00.`,
        // 12 · 25 + 7.5 · 34 + 3 · 41.50 = 679.50.
        `Work. Agreed parts: 60 percent of $679.50 is asked of Larkspur Cottage and 40 percent of The Mill House: ${asksA} $407.70, ${asksB} $271.80.`,
        'Hours. 22.50 are planned, the same work counted in hours: 13.50 fall to Larkspur Cottage and 9.00 to The Mill House.',
        'Given freely. The Mill House gives 5.00 hours that are in no sum. Thank you.',
      ],
      [
        'Oak to the paddock',
        // 620 · 12/20.5 = 362.9268…
        `Materials. $620.00 is shared by length, 12 m for Larkspur Cottage to 8.5 m for The Mill House: ${asksA} $362.93, ${asksB} $257.07. ` +
          'The odd $0.01 goes to Larkspur Cottage, whose exact share has the larger remainder.',
        `Work. $300.00 is shared by benefit, 3 points for Larkspur Cottage to 2 for The Mill House: ${asksA} $180.00, ${asksB} $120.00.`,
      ],
      [
        'Paddock end',
        // (800 + 700 − 500) ÷ 2.
        'Materials and work together. Share the saving: alone Larkspur Cottage would have paid $700.00 (source: an offer of 2 March) and The Mill House $500.00 (source: own reckoning); ' +
          `together it is $800.00, and each keeps half of what that saves: ${asksA} $500.00, ${asksB} $300.00.`,
      ],
      [
        'Orchard gate',
        `Materials. $250.00 is shared by use, 7 passages a week for Larkspur Cottage to 3 for The Mill House: ${asksA} $175.00, ${asksB} $75.00.`,
        `Work. One household: all of $80.00 is asked of The Mill House: ${asksA} $0.00, ${asksB} $80.00.`,
      ],
      [
        'Cart gate',
        `Materials and work together. One household: all of $180.00 is asked of Larkspur Cottage: ${asksA} $180.00, ${asksB} $0.00.`,
      ],
      [
        'Mill gate',
        // 166.67 + 2 · 20 = 206.67.
        'Materials and work together. Pay the difference: the basic fence of $100.00 is halved; the $106.67 above it is asked of The Mill House. ' +
          `So ${asksA} $50.00, ${asksB} $156.67.`,
      ],
      [
        'Survey of the line',
        `Materials. Halves: $385.55 is halved: ${asksA} $192.77, ${asksB} $192.78. The odd $0.01 goes to The Mill House, who had been asked for less up to here.`,
        'Work. Nothing to share yet.',
      ],
      [
        'Auger hire',
        `Materials. Agreed parts: 70 percent of $190.00 is asked of Larkspur Cottage and 30 percent of The Mill House: ${asksA} $133.00, ${asksB} $57.00.`,
      ],
    ])('%s', async (item, ...sentences) => {
      await visit(b, 'Shares')
      const texts = await panel(b.page, item).locator('.share-view > p').allTextContents()
      const shown = texts.map(plainBlanks)

      for (const sentence of sentences) expect(shown).toContain(sentence)
    })

    test('a cap moves what is above it to the other household once that one has marked it, and says so', async () => {
      await visit(b, 'Shares')
      await put(b.page, 'caps.b', quarry.caps.b)
      await save(b.page, 'Save the caps')
      await expectPage(panel(b.page, 'The whole fence')).toContainText(
        'The cap of The Mill House, $1,800.00, would move $160.32 to Larkspur Cottage once Larkspur Cottage marks the caps. Until then it moves nothing.',
      )
      await expectPage(panel(b.page, 'The whole fence').locator('dd.figure')).toHaveText([
        '$2,999.31',
        '$1,960.32',
      ])

      await visit(a, 'Shares')
      await panel(a.page, 'Caps').getByRole('button', { name: 'Agree to this as it stands' }).click()
      const mark = panel(a.page, 'Caps').getByRole('button', { name: 'Take your mark off' })
      await expectPage(mark).toBeVisible()
      await b.page.reload()

      // By hand, the sums of the sentences above: a 2999.31, b 1960.32; b is asked for 160.32 more than its cap.
      await expectPage(panel(b.page, 'The whole fence')).toContainText(
        'The cap of The Mill House moves $160.32 to Larkspur Cottage. Before caps it is $2,999.31 for Larkspur Cottage and $1,960.32 for The Mill House.',
      )
      await expectPage(panel(b.page, 'The whole fence').locator('dd.figure')).toHaveText([
        '$3,159.63',
        '$1,800.00',
      ])
      // All items are marked together later in the evening.
      await mark.click()
      await expectPage(mark).toHaveCount(0)
    })
  })
}
