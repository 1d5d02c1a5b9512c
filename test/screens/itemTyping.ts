import type { Page } from '@playwright/test'
import { expectPage } from './expectPage.ts'
import { choose, field, put, tick } from './typing.ts'

type Row = Readonly<Record<string, string | boolean>>
type Share = Readonly<Record<string, unknown>>

/** One section, gate or common cost, as it is typed. */
export type TypedItem = {
  readonly name: string
  readonly materials: readonly Row[]
  readonly labour: readonly Row[]
  readonly share: Share
  readonly [field: string]: unknown
}

/** Fields that are chosen from a list or among radios; everything else is typed. */
const chosenFields = new Set([
  'measuredFrom',
  'owner',
  'upkeep',
  'stands',
  'suppliedBy',
  'by',
  'capacity',
  'evidence',
  'side',
  'who',
  'kind',
  'household',
  'for',
])

/** Types every field of an item into its form. */
export async function typeItem(page: Page, item: TypedItem): Promise<void> {
  const { materials, labour, share, ...plain } = item
  await typeFields(page, '', plain)
  await typeRows(page, 'materials', 'Add a cost line', materials)
  await typeRows(page, 'labour', 'Add a work line', labour)
  await typeShare(page, share)
}

/** Types texts and chooses choices, also those that lie one level deeper: `height.agreed`. */
export async function typeFields(
  page: Page,
  within: string,
  fields: Readonly<Record<string, unknown>>,
): Promise<void> {
  for (const [key, value] of Object.entries(fields)) {
    const path = `${within}${key}`
    if (typeof value === 'boolean') await tick(page, path, value)
    else if (typeof value !== 'string') await typeFields(page, `${path}.`, value as Row)
    else if (chosenFields.has(key)) await choose(page, path, value)
    else await put(page, path, value)
  }
}

/** Adds a row for each entry and types its fields. */
export async function typeRows(
  page: Page,
  path: string,
  addLabel: string,
  rows: readonly Row[],
): Promise<void> {
  for (const [index, row] of rows.entries()) {
    await field(page, path).getByRole('button', { name: addLabel, exact: true }).click()
    await typeFields(page, `${path}[${index}].`, row)
  }
}

/** Chooses how an item is shared, with all the figures that its principles ask for. */
export async function typeShare(page: Page, share: Share): Promise<void> {
  const together = 'together' in share
  const pots = page.getByRole('radio', {
    name: together ? /^Materials and work together/ : /^Materials and work each/,
  })
  await pots.check()
  for (const [pot, principle] of Object.entries(share)) {
    await typePrinciple(page, `share.${pot}`, principle as Share)
  }
}

async function typePrinciple(page: Page, path: string, { principle, ...figures }: Share): Promise<void> {
  const list = field(page, `${path}.principle`)
  await list.selectOption(String(principle))
  await expectPage(list).toHaveValue(String(principle))
  for (const [key, value] of Object.entries(figures)) {
    if (typeof value !== 'string') await typePrinciple(page, `${path}.${key}`, value as Share)
    else if (key === 'household') await choose(page, `${path}.${key}`, value)
    else await put(page, `${path}.${key}`, value)
  }
}
