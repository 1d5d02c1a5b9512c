import type { Notebook, Party } from '../../core/agreement/notebook.ts'
import { type Household, households } from '../../core/people/household.ts'
import { momentWords } from '../day.ts'
import { capacityWords, householdName, notebookTitle, tenantCaution } from '../labels.ts'
import type { Audience } from './audience.ts'
import type { Block } from './block.ts'
import { householdStart } from './names.ts'
import type { Standing, SummaryInput } from './summaryInput.ts'

/** What the paper is, what it is not, and who the parties are. */
export function openingBlocks(
  { notebook, standing }: SummaryInput,
  audience: Audience = 'the households',
): Block[] {
  return [
    { kind: 'title', text: notebookTitle(notebook), standing: standingWords(standing) },
    { kind: 'paragraph', text: purposeWords(standing, audience) },
    ...partyBlocks(notebook),
  ]
}

export function standingWords(standing: Standing): string {
  if (standing.kind === 'draft') return 'Draft. Not put up for signing.'
  const since = `Revision ${standing.number}, put up for signing on ${momentWords(standing.frozenAt)}`
  return standing.kind === 'signed'
    ? `${since}. Signed by every party.`
    : `${since}. Not signed by every party yet.`
}

function purposeWords(standing: Standing, audience: Audience): string {
  const says = {
    'the households':
      'It says where the fence stands, how it is built, what it costs and who is asked for what.',
    'without costs':
      'It says where the fence stands and how it is built. What it costs and who pays is left out here; the whole record is with the households.',
  }[audience]
  const what = `This paper is a record of what two households agree about the fence between them. ${says} It is not a survey, not a permit and not legal advice. It moves no boundary line.`
  const force = {
    draft: 'This is a draft. It binds nobody, and it can still change.',
    'up for signing': 'It is up for signing. It binds nobody until every party has signed it.',
    signed: 'Every party has signed it.',
  }[standing.kind]
  return `${what} ${force}`
}

function partyBlocks(notebook: Notebook): Block[] {
  const tenants = households.some((household) =>
    notebook.households[household].parties.some((party) => party.capacity === 'tenant'),
  )
  return [
    { kind: 'heading', level: 1, id: 'parties', text: 'The parties' },
    {
      kind: 'paragraph',
      text: `Household a is ${householdName(notebook, 'a')}. Household b is ${householdName(notebook, 'b')}. Each party signs for itself alone. All parties of one household sign through its one private link.`,
    },
    ...households.flatMap((household) => householdTable(notebook, household)),
    ...(tenants
      ? [{ kind: 'caution' as const, title: 'A tenant is among the parties', text: tenantCaution }]
      : []),
  ]
}

function householdTable(notebook: Notebook, household: Household): Block[] {
  const { parties } = notebook.households[household]
  const name = householdStart(notebook, household)
  if (parties.length === 0) return [{ kind: 'paragraph', text: `${name} has named no party yet.` }]
  return [
    {
      kind: 'table',
      caption: `Household ${household}: ${householdName(notebook, household)}`,
      columns: [{ title: 'Name' }, { title: 'Signs as' }, { title: 'Address' }, { title: 'Parcel' }],
      rows: parties.map((party) => ({ cells: partyCells(party) })),
    },
  ]
}

function partyCells(party: Party): string[] {
  const capacity = party.capacity === '' ? notSaid : capacityWords[party.capacity]
  return [
    party.name.trim() || notSaid,
    capacity,
    party.address.trim() || notSaid,
    party.parcel.trim() || notSaid,
  ]
}

const notSaid = 'not said yet'
