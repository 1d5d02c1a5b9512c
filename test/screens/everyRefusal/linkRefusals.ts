import type { Page } from '@playwright/test'
import { inject } from 'vitest'
import { documentText } from '../../../lib/forms/parts.ts'
import { claimInvitation, issueInvitation } from '../../../lib/store/entryKeys.ts'
import { createNotebook } from '../../../lib/store/notebooks.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { pressed, rewriting } from './pressing.ts'
import type { RefusalGroup, Table } from './refusalRow.ts'
import { letIn, linksTo } from './seatedByTheStore.ts'
import { notebookOf } from './storeBeside.ts'

let links: Awaited<ReturnType<typeof linksTo>>
let id = ''
let notebook = ''
let claimed = { token: '' }

/** A notebook that the first household of the table is in, with an address of its own. */
async function another(
  table: Table,
  kept: { readonly alone: boolean; readonly example: boolean },
): Promise<string> {
  const at = new Date()
  const document = documentText({ ...shortNotebook, title: 'The other bank' } as never)
  id = (await createNotebook({ document, example: kept.example, at })).id
  links = await linksTo(id, at, kept.alone)
  await letIn(table.a.page.context(), id, links.a)
  return `${inject('baseUrl')}/notebook/${id}/links`
}

async function claimedNow(): Promise<{ readonly token: string }> {
  const invited = await issueInvitation({ notebookId: id, at: new Date() })
  const made = 'token' in invited ? await claimInvitation({ token: invited.token, at: new Date() }) : invited
  if (!('token' in made)) throw new Error('Somebody has come in already.')
  return made
}

/** Invitations, and the change of sides in the example. */
export const linkRefusals: RefusalGroup = {
  about: 'a press on the page of links',
  notebook: shortNotebook,
  rows: [
    {
      what: 'somebody is invited after the second household came in meanwhile',
      refuses: 'linkRefusals.nobodyLeft',
      at: (table) => another(table, { alone: true, example: false }),
      meanwhile: claimedNow,
      press: pressed('Make an invitation'),
      says: 'The second household has come in already. Nobody is left to invite.',
    },
    {
      what: 'somebody is invited by a browser that came in as the second household since',
      refuses: 'linkRefusals.onlyFirstInvites',
      at: (table) => another(table, { alone: true, example: false }),
      meanwhile: async () => {
        claimed = await claimedNow()
      },
      typed: (page: Page) => letIn(page.context(), id, claimed.token),
      press: pressed('Make an invitation'),
      says: 'Only the first household invites; you are in as the second.',
    },
    {
      what: 'sides are changed in a notebook that is no example',
      refuses: 'linkRefusals.onlyInExample',
      at: async (table) => {
        notebook = notebookOf(table)
        return another(table, { alone: false, example: true })
      },
      typed: (page) => rewriting(id, notebook)(page),
      press: pressed(/^See it as /),
      says: 'Only in the example can one browser change sides.',
    },
  ],
}
