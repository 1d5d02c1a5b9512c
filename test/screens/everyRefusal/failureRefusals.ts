import type { Page } from '@playwright/test'
import { editNotebook } from '../../../lib/store/notebooks.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { put, trySaving } from '../typing.ts'
import { pressed } from './pressing.ts'
import type { RefusalGroup, RefusalRow, Table } from './refusalRow.ts'
import { notebookOf } from './storeBeside.ts'

/** The document as it was, while what is stored can't be read. */
let readable = ''

/** Something of the install is broken: what is stored is no notebook, until it is put back. */
const brokenStore: Pick<RefusalRow, 'meanwhile' | 'after'> = {
  meanwhile: (table) => write(table, '{'),
  after: (table) => write(table, readable),
}

async function write(table: Table, document: string): Promise<void> {
  await editNotebook({
    id: notebookOf(table),
    household: 'b',
    at: new Date(),
    change: (stored) => {
      if (document !== readable) readable = stored
      return { document, changed: [], kept: undefined }
    },
  })
}

/** What the page sends is never answered. */
async function unanswered(page: Page): Promise<void> {
  await page.route('**/*', (route) =>
    route.request().method() === 'POST' ? route.abort() : route.fallback(),
  )
}

/** What the page sends asks for something that this build of the program does not have, as after it was renewed. */
async function renewed(page: Page): Promise<void> {
  await page.route('**/*', (route) => {
    const headers = route.request().headers()
    const asks = headers['next-action']
    return asks === undefined
      ? route.fallback()
      : route.fallback({ headers: { ...headers, 'next-action': asks.replace(/./g, '0') } })
  })
}

const agreeing = { at: '/item/s1', press: pressed('Agree to this as it stands') }
const saving = {
  at: '/item/s1',
  press: (page: Page) => trySaving(page, 'Save this section'),
  answer: (page: Page) => page.locator('.save-standing'),
  keeps: [['notes', 'Painted green.']],
} as const
const green = (page: Page) => put(page, 'notes', 'Painted green.')

/** What comes to nothing through nobody's fault, or because something else has to be done first. */
export const failureRefusals: RefusalGroup = {
  about: 'a press that comes to nothing',
  notebook: { ...shortNotebook, contributions: [] },
  rows: [
    {
      ...agreeing,
      what: 'a press is not answered',
      refuses: 'failure.lost',
      typed: unanswered,
      says: 'Not done: the connection was lost. Try again.',
    },
    {
      ...agreeing,
      ...brokenStore,
      what: 'a press meets a program that is broken',
      refuses: 'failure.broke',
      says: 'Not done: something went wrong on our side. Try again.',
    },
    {
      ...agreeing,
      what: 'a press meets a program that was renewed meanwhile',
      refuses: 'failure.outdated',
      typed: renewed,
      says: 'Not done: the program was renewed while this page was open. Load the page again.',
    },
    {
      ...saving,
      ...brokenStore,
      what: 'a section is saved by a program that is broken',
      refuses: 'failure.broke',
      typed: green,
      says: 'Not saved: something went wrong on our side. What you typed is still here; press the button again.',
    },
    {
      ...saving,
      what: 'a section is saved by a program that was renewed meanwhile',
      refuses: 'failure.outdated',
      typed: async (page) => {
        await renewed(page)
        await green(page)
      },
      says: 'Not saved: the program was renewed while this page was open. What you typed waits in this browser: load the page again.',
    },
    {
      ...agreeing,
      what: 'somebody agrees while something on the page is typed and not saved',
      refuses: [],
      typed: green,
      says: 'Not done: something on this page is typed and not saved, and would not be in what you agree to. Save it first, or put it back.',
      keeps: [['notes', 'Painted green.']],
    },
  ],
}
