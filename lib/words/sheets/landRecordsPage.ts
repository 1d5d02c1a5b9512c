import { signingParties } from '../../core/agreement/revision.ts'
import { householdName, notebookTitle } from '../labels.ts'
import { householdStart, itemTitle } from '../summary/names.ts'
import { standingWords } from '../summary/openingBlocks.ts'
import type { SummaryInput } from '../summary/summaryInput.ts'
import { unbroken } from '../summary/unbroken.ts'
import { ownedAndKept } from '../upkeepText.ts'
import { partyTable } from './partyTable.ts'
import type { SheetBlock } from './sheetBlock.ts'

/**
 * A page fit for the land records, for those who want one: who made the agreement about which parcels, what it says about
 * owning and keeping, and room for what only title, a lawyer and a notary can fill in.
 */
export function landRecordsPage({ notebook, standing }: SummaryInput): SheetBlock[] {
  const { line, sections, gates } = notebook
  const kept = [
    ...sections.map(
      ({ name, from, to, owner, upkeep }, index) =>
        `${itemTitle('section', index, name)}${from === '' || to === '' ? '' : `, ${unbroken(from)} to ${unbroken(to)}`}: ${ownedAndKept(notebook, { owner, upkeep })}`,
    ),
    ...gates.map(
      ({ name, at, owner, upkeep }, index) =>
        `${itemTitle('gate', index, name)}${at === '' ? '' : `, at ${unbroken(at)}`}: ${ownedAndKept(notebook, { owner, upkeep })}`,
    ),
  ]
  return [
    {
      kind: 'title',
      text: 'Memorandum of a fence agreement',
      standing: standingWords(standing),
    },
    {
      kind: 'caution',
      title: 'Ask a lawyer before you record this',
      text: 'Each land records office has rules of its own for form, wording, margins, witnesses and fees. A page that is recorded can bind land for a long time. This page is a beginning for a lawyer, and no legal advice.',
    },
    {
      kind: 'paragraph',
      text: `${householdStart(notebook, 'a')} and ${householdName(notebook, 'b')} have made an agreement about the fence between their parcels, called “${notebookTitle(notebook)}”. The line runs from ${line.start.trim() || 'a start that is not described'} to ${line.end.trim() || 'an end that is not described'}. This page moves no boundary.`,
    },
    partyTable(notebook),
    { kind: 'list', items: kept },
    ...(['a', 'b'] as const).flatMap((household): SheetBlock[] => [
      {
        kind: 'room',
        title: `Names as on title, and legal description of the parcel of ${householdName(notebook, household)}`,
        lines: 3,
      },
    ]),
    ...signingParties(notebook).map(
      ({ name }): SheetBlock => ({
        kind: 'room',
        title: `Signature of ${name.trim() || 'a party'}, day and place`,
        lines: 1,
      }),
    ),
    { kind: 'room', title: 'Notary or recording officer: who appeared, how known, day, seal', lines: 3 },
  ]
}
