import { describe, expect, test } from 'vitest'
import { startingChecks } from '../../../lib/words/startingChecks.ts'
import { standing } from '../agreeing.ts'
import { expectPage } from '../expectPage.ts'
import { typeFields, typeRows } from '../itemTyping.ts'
import * as quarry from '../quarryLine.ts'
import { field, save, tick } from '../typing.ts'
import { visit } from '../visiting.ts'
import { a, b, fileNow } from './evening.ts'

/** As it is in the file: what says nothing is left out. */
function asKept(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(asKept)
  if (value === null || typeof value !== 'object') return value
  const kept = Object.entries(value).filter(
    ([, one]) => one !== '' && !(Array.isArray(one) && one.length === 0),
  )
  return Object.fromEntries(kept.map(([key, one]) => [key, asKept(one)]))
}

export function settlingSteps(): void {
  describe('terms, decisions and whom to ask first', () => {
    test('the starting terms are there to be edited, and nobody has agreed to them', async () => {
      await visit(a, 'Terms')

      await expectPage(standing(a.page).getByText('has not marked it yet')).toHaveCount(2)
      await expectPage(a.page.getByText(/^This touches rights in land\./).first()).toBeVisible()
    })

    test('terms are reworded, replaced by another wording, taken out and added', async () => {
      const { page } = a
      const { ownWords, otherWording, takenOut, added } = quarry.termEdits
      const rowOf = (topic: string) =>
        field(page, 'terms').locator('li.row', {
          has: page.getByRole('button', { name: `Remove “${topic}”` }),
        })
      for (const topic of [ownWords.topic, otherWording.topic])
        await rowOf(topic).getByText(`Change “${topic}”`).click()
      await rowOf(ownWords.topic).getByLabel('What you settle').fill(ownWords.text)
      await rowOf(otherWording.topic).getByRole('button', { name: otherWording.label }).click()
      await page.getByRole('button', { name: `Remove “${takenOut}”` }).click()
      await page.getByRole('button', { name: 'Add a topic of your own' }).click()
      const last = field(page, 'terms').locator('li.row').last()
      await last.getByLabel('Topic').fill(added.topic)
      await last.getByLabel('What you settle').fill(added.text)
      await save(page, 'Save the terms')

      expect((await fileNow()).terms).toEqual(quarry.editedTerms())
    })

    test('decisions are written down', async () => {
      await visit(b, 'Terms')
      await typeRows(b.page, 'decisions', 'Add a decision', quarry.decisions)
      await save(b.page, 'Save the decisions')

      await expectPage(b.page.getByRole('heading', { name: 'Decided on 12 February 2027' })).toBeVisible()
    })

    test('checks are answered; one is left open', async () => {
      const { page } = b
      await visit(b, 'Ask first')
      const permit = startingChecks.findIndex((what) => what.startsWith('Permit office'))
      await typeFields(page, `checks[${permit}].`, quarry.permitAnswer)
      for (const index of startingChecks.keys()) {
        if (index !== quarry.openCheck) await tick(page, `checks[${index}].done`, true)
      }
      await field(page, 'checks')
        .getByRole('button', { name: /^Remove “Pools/ })
        .click()
      await save(page, 'Save the checks')

      await expectPage(page.locator('.lead')).toContainText('1 still open.')
    })

    test('the open check is in sight on every page, of both households', async () => {
      for (const household of [a, b]) {
        for (const name of [
          'The line',
          'Materials',
          'Work',
          'Shares',
          'Money and hours',
          'Terms',
          'Ask first',
          'Sign',
          'Record',
        ]) {
          await visit(household, name)
          await expectPage(household.page.locator('.open-matters')).toContainText(
            '1 question under “Ask first” still open',
          )
        }
      }
    })

    test('the notebook file holds exactly what was typed', async () => {
      const file = await fileNow()
      const [auger, survey] = quarry.common
      const numbered = (letter: string, items: readonly object[]) =>
        items.map((item, index) => ({ id: `${letter}${index + 1}`, ...item }))
      const checks = startingChecks.flatMap((what, index) => {
        if (index === quarry.checkTakenOut) return []
        const answered = what.startsWith('Permit office') ? quarry.permitAnswer : {}
        return [{ what, ...answered, ...(index === quarry.openCheck ? {} : { done: true }) }]
      })

      expect(file).toEqual(
        asKept({
          format: 'mearing-notebook',
          version: 1,
          ...quarry.heading,
          households: {
            a: quarry.heading.households.a,
            b: { name: quarry.names.b, parties: [quarry.partyOfB] },
          },
          line: quarry.line,
          sections: numbered('s', quarry.sections),
          gates: numbered('g', quarry.gates),
          common: [
            { id: 'c2', ...survey },
            { id: 'c1', ...auger },
          ],
          caps: quarry.caps,
          terms: quarry.editedTerms(),
          checks,
          decisions: quarry.decisions,
        }),
      )
    })
  })
}
