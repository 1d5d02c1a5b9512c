import { renameSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import type { BrowserContext, Page } from '@playwright/test'
import { inject } from 'vitest'
import { madePdf, madePng, movingPicture, vastPicture } from '../../files/madePictures.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { filesTakenAway, onRecord } from './filesOnRecord.ts'
import { all, pressed, sending } from './pressing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'
import { meanwhile, withKeys } from './storeBeside.ts'

type Made = () => Uint8Array | Promise<Uint8Array>

const add = /^Add$/
const caption = 'the bank from the willow'
const captionField = (page: Page) => page.locator('#upload-caption')
const refusedFile = (page: Page) => page.locator('.upload[data-standing=refused] .upload-standing')

/** Chooses a file on the page of photos and papers, and says what it shows. */
const chosen = (name: string, made: Made) => async (page: Page) => {
  const buffer = Buffer.from(await made())
  await page.locator('#upload-file').setInputFiles({ name, mimeType: 'image/jpeg', buffer })
  await page.locator('#upload-kind').selectOption('survey')
  await captionField(page).fill(caption)
}

type More = Partial<RefusalRow> & { readonly besides?: (page: Page) => Promise<unknown> }

/** A file that is not added, with the reason at its row. */
function file(
  what: string,
  kind: string,
  [name, made]: readonly [string, Made],
  says: string,
  { besides, ...more }: More = {},
): RefusalRow {
  const typed = chosen(name, made)
  return {
    what,
    refuses: `fileRefusal.${kind}`,
    at: '/files',
    typed: besides === undefined ? typed : all(typed, besides),
    press: pressed(add),
    answer: refusedFile,
    says: [`“${name}” was not added.`, says],
    keeps: [[captionField, caption]],
    ...more,
  }
}

const survey = ['survey.pdf', () => madePdf()] as const
const folder = () => path.join(inject('dataFolder'), 'files')
let cookies: Parameters<BrowserContext['addCookies']>[0] = []

/** Photos and papers that are sent. */
export const sentFileRefusals: RefusalGroup = {
  about: 'a photo or a paper that is not added',
  notebook: shortNotebook,
  rows: [
    file('nothing in it', 'empty', ['empty.jpg', () => new Uint8Array()], 'There is nothing in it.'),
    file(
      'a bigger one than is taken',
      'too-large',
      ['large.pdf', () => new Uint8Array()],
      'A file can have 20 MB at most. Save a smaller copy of it',
      {
        besides: async (page) => {
          const large = path.join(inject('dataFolder'), 'large.pdf')
          writeFileSync(large, '')
          truncateSync(large, 20_000_001)
          await page.locator('#upload-file').setInputFiles(large)
        },
      },
    ),
    file(
      'a text',
      'not-taken',
      ['letter.txt', () => Buffer.from('Dear neighbours')],
      'It is a text file. Print it to a PDF. Then add that.',
    ),
    file(
      'half a picture',
      'broken',
      ['half.png', async () => (await madePng()).subarray(0, 60)],
      'It begins as a PNG picture but can’t be read to its end.',
    ),
    file(
      'a vast picture',
      'too-many-pixels',
      ['vast.png', vastPicture],
      'The picture has more than 110 million pixels. Save a smaller copy of it.',
    ),
    file(
      'a moving picture',
      'moving-picture',
      ['dance.webp', movingPicture],
      'It is a moving picture. Choose a still photo.',
    ),
    file(
      'what is there already',
      'there-already',
      survey,
      'The same file is here already, with the same kind and item.',
      { given: (table) => onRecord(table), after: filesTakenAway },
    ),
    file(
      'one more than a notebook shows',
      'too-many-files',
      survey,
      'A notebook can show 200 files at most. Take one away first.',
      { given: (table) => onRecord(table, { count: 200, name: 'sheet.pdf' }), after: filesTakenAway },
    ),
    file(
      'one that the disk does not take',
      'not-written',
      survey,
      'The install could not write it to its disk. Nothing was lost. Ask whoever runs the install',
      {
        // A file lies where the folder was.
        meanwhile: async () => {
          renameSync(folder(), `${folder()}-away`)
          writeFileSync(folder(), '')
        },
        after: async () => {
          rmSync(folder())
          renameSync(`${folder()}-away`, folder())
        },
      },
    ),
    file('one that shows nothing known', 'no-such-kind', survey, 'Choose what it shows.', {
      besides: sending(add, { kind: 'a song' }),
    }),
    file(
      'one for a gate that was removed meanwhile',
      'no-such-item',
      survey,
      'The item that it should belong to is not in the notebook any more. Choose another.',
      {
        ...meanwhile(withKeys({ gates: [] })),
        besides: (page) => page.locator('#upload-item').selectOption('g1'),
      },
    ),
    file(
      'a caption as long as a letter',
      'caption-too-long',
      survey,
      'The caption can have 500 characters at most. Make it shorter.',
      { besides: sending(add, { caption: 'o'.repeat(501) }), keeps: [[captionField, 'o'.repeat(501)]] },
    ),
    file(
      'words about it that can’t be read',
      'unreadable-form',
      ['file', survey[1]],
      'What came with it could not be read. Load the page again, then add it once more.',
      {
        besides: async (page) => {
          await page.route('**/files/upload', (route) =>
            route.continue({ headers: { ...route.request().headers(), 'x-mearing-file': '%7B' } }),
          )
        },
        says: 'What came with it could not be read. Load the page again, then add it once more.',
      },
    ),
    {
      what: 'neither a file nor what it shows is chosen',
      refuses: ['fileSentRefusals.none', 'fileSentRefusals.noKind'],
      at: '/files',
      typed: (page) => captionField(page).fill(caption),
      press: pressed(add),
      says: ['Choose a file first.', 'Choose what it shows.'],
      keeps: [[captionField, caption]],
      names: { file: 'Choose a file first.', kind: 'Choose what it shows.' },
      form: 'upload',
    },
    {
      what: 'one is sent from a browser that is out since',
      refuses: 'fileSentRefusals.shutOut',
      at: '/files',
      typed: async (page) => {
        await chosen(...survey)(page)
        cookies = await page.context().cookies()
        await page.context().clearCookies()
      },
      press: pressed(add),
      answer: refusedFile,
      says: 'You are not let in to this notebook in this browser any more. Come in by your link again.',
      keeps: [[captionField, caption]],
      after: (table) => table.a.page.context().addCookies(cookies),
    },
    file(
      'one for which there is no room',
      'notebook-full',
      survey,
      'The files of this notebook may take up 500 MB in all',
      // The last row: what was on disk once counts for good.
      { given: (table) => onRecord(table, { size: 500_000_000, name: 'all.pdf' }) },
    ),
  ],
}
