import { describe, expect, test } from 'vitest'
import { countPassages } from '../countingPassages.ts'
import { expectPage } from '../expectPage.ts'
import { typeFields, typeItem, typeRows } from '../itemTyping.ts'
import * as quarry from '../quarryLine.ts'
import { field, readingOf, save, trySaving } from '../typing.ts'
import { panel, visit, visitItem } from '../visiting.ts'
import { a, b } from './evening.ts'

export function layingOutSteps(): void {
  describe('the line, its sections, gates and costs', () => {
    test('a length is read back as it is understood, however it is typed', async () => {
      const { page } = a
      await visit(a, 'The line')
      await page.getByRole('link', { name: 'Open ends and stations' }).click()
      const { stations, ...ends } = quarry.line
      await typeFields(page, 'line.', ends)
      await typeRows(page, 'line.stations', 'Add a station', stations as never)

      // By hand: 1.75 in · 25.4 = 44.45 mm; 24.5 m ÷ 25.4 mm = 964.567 in = 80 ft 4.567 in, and 0.567 · 16 = 9.07 sixteenths.
      expect(await readingOf(page, 'line.stations[0].setback.distance')).toBe('= 1 3/4 in = 0.044 m')
      expect(await readingOf(page, 'line.stations[1].at')).toBe('= 40 ft 6 in = 12.344 m')
      expect(await readingOf(page, 'line.stations[2].at')).toBe('= 80 ft 4 9/16 in')
      await save(page, 'Save the line')
    })

    test.each(quarry.sections)('a section with all its lines: $name', async (section) => {
      const { page } = a
      await visit(a, 'The line')
      await page.getByRole('link', { name: 'Add a section' }).click()
      await typeItem(page, section as never)
      // By hand: 70.25 in · 25.4 = 1784.35 mm; 1830 mm ÷ 25.4 = 72.047 in; 4 ft = 1219.2 mm.
      const readings: Record<string, string> = {
        '5\' 10-1/4"': '= 5 ft 10 1/4 in = 1.784 m',
        '1.83 m': '= 6 ft 1/16 in',
        '4 ft': '= 1.219 m',
      }
      expect(await readingOf(page, 'height.agreed')).toBe(readings[section.height.agreed])
      await trySaving(page, 'Save this section')
      await expectPage(page.getByRole('heading', { level: 1, name: section.name })).toBeVisible()
    })

    test.each(quarry.gates)('a gate for each household and one on the line: $name', async (gate) => {
      const { page } = b
      await visit(b, 'The line')
      await page.getByRole('link', { name: 'Add a gate' }).click()
      const { uses: _countedLater, ...typed } = gate
      await typeItem(page, typed as never)
      await trySaving(page, 'Save this gate')
      await expectPage(page.getByRole('heading', { level: 1, name: gate.name })).toBeVisible()
    })

    test.each(quarry.gates)('both count the passages of a gate, apart and alike: $name', async (gate) => {
      for (const household of [b, a]) {
        await visitItem(household, gate.name)
        await countPassages(household.page, gate.uses)
      }
      await expectPage(panel(a.page, 'Passages a week')).toContainText('Both counted the same.')
    })

    test.each([...quarry.common, quarry.skipHire])('a common cost: $name', async (cost) => {
      const { page } = b
      await visit(b, 'The line')
      await page.getByRole('link', { name: 'Add a common cost' }).click()
      await typeItem(page, cost as never)
      await trySaving(page, 'Save this common cost')
      await expectPage(page.getByRole('heading', { level: 1, name: cost.name })).toBeVisible()
    })

    test('an item is removed only after a question', async () => {
      const { page } = b
      await visitItem(b, quarry.skipHire.name)
      await page.getByRole('button', { name: 'Remove this common cost' }).click()
      await page.getByRole('button', { name: 'No, leave it' }).click()
      await page.getByRole('button', { name: 'Remove this common cost' }).click()
      await page.getByRole('button', { name: 'Yes: remove this common cost' }).click()

      await expectPage(page.getByRole('heading', { level: 1, name: 'The line' })).toBeVisible()
      await expectPage(page.locator('#common .item-row')).toHaveCount(2)
      await expectPage(page.locator('.item-rows').getByText(quarry.skipHire.name)).toHaveCount(0)
    })

    test('an item is moved up in its list', async () => {
      const { page } = a
      await visit(a, 'The line')
      await page.getByText('Put in another order').click()
      await page.getByRole('button', { name: /^Move up ?: Survey of the line$/ }).click()

      await expectPage(page.locator('#common .item-row').first()).toContainText('Survey of the line')
    })

    test('rows of an item are moved and removed, and put back', async () => {
      const { page } = a
      await visitItem(a, 'Road to the oak')
      await page.getByRole('button', { name: 'Move “post caps” up' }).click()
      expect(await field(page, 'materials[1].what').inputValue()).toBe('post caps')
      await page.getByRole('button', { name: 'Move “post caps” down' }).click()
      await page.getByRole('button', { name: 'Remove “mesh, 6 ft high”' }).click()
      expect(await field(page, 'materials[1].what').inputValue()).toBe('post caps')
      await page.getByRole('button', { name: 'Put it back' }).click()
      expect(await field(page, 'materials[1].what').inputValue()).toBe('mesh, 6 ft high')
      expect(await field(page, 'materials[1].taxPercent').inputValue()).toBe('7.25')
      await save(page, 'Save this section')
    })
  })
}
