import type { Notebook, Section } from '../../../lib/core/agreement/notebook.ts'
import { moneyText } from '../../../lib/core/amounts/money.ts'
import { basicFenceSums } from '../../../lib/core/shares/basicFence.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { readyBuildUps } from '../../../lib/core/takeoff/readyBuildUps.ts'
import { isObject, type NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import type { BasicSums } from '../forms/DifferenceFields.tsx'
import type { BuildUpOffers } from '../forms/StartingBuildUps.tsx'
import { keptFor } from './keptBuildUps.ts'

/** What a basic fence can begin from: a ready build-up, one that a household keeps, or that of the section itself. */
export function basicOffers(
  document: NotebookDocument,
  section: { readonly buildUp?: unknown },
): BuildUpOffers {
  const own = isObject(section.buildUp)
    ? [{ label: 'As this section is built', buildUp: section.buildUp }]
    : []
  return {
    ready: readyBuildUps.map((one) => ({ label: String(one.section.name), buildUp: one.section })),
    own: [...own, ...keptFor(document, 'section')],
  }
}

/** Where a section's basic fence is described, and what it comes to as a form would type it; a sum below zero is no cost. */
export function basicFenceOf(
  notebookId: string,
  notebook: Notebook,
  { id, basicFence }: Section,
): { readonly href: string; readonly sums: BasicSums | undefined } {
  const href = `/notebook/${notebookId}/basic-fence/${encodeURIComponent(id)}`
  if (basicFence === undefined) return { href, sums: undefined }
  const digits = digitsOf(notebook)
  const { materials, labour, both } = basicFenceSums(basicFence, digits)
  if (materials < 0n || labour < 0n) return { href, sums: undefined }
  const money = (minor: bigint) => moneyText(minor, digits)
  return { href, sums: { materials: money(materials), labour: money(labour), together: money(both) } }
}
