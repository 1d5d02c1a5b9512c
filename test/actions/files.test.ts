import { describe, expect, test, vi } from 'vitest'
import { GET as notebookFile } from '../../app/notebook/[notebookId]/notebook.json/route.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { putUpForSigning } from '../../app/notebook/server/signActions.ts'
import { startFromFile } from '../../app/start/actions.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { findNotebook } from '../../lib/store/notebooks.ts'
import { everyTable, newRows } from './everyTable.ts'
import { formOf, formWithFile } from './givenForms.ts'
import { outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

const text = documentText(exampleDocument())
const bytes = (content: string) => new TextEncoder().encode(content)

/** The example, with blanks at its end to be this many bytes long. */
function paddedTo(length: number): string {
  return text + ' '.repeat(length - bytes(text).byteLength)
}

/** What household a downloads as its notebook file. */
async function exported(notebookId: string): Promise<Uint8Array<ArrayBuffer>> {
  const response = await notebookFile(new Request('http://localhost/'), {
    params: Promise.resolve({ notebookId }),
  })
  return new Uint8Array(await response.arrayBuffer())
}

/** Where the first section begins; a limit of the line may begin there too. */
const firstFrom = /("name": "Lane to the gardens",\s*)"from": "0 ft"/

function replaced(find: string | RegExp, by: string): string {
  const next = text.replace(find, by)
  expect(next).not.toBe(text)
  return next
}

describe('a file is refused, with the path of every fault, and nothing is changed, where it', () => {
  const files: readonly (readonly [string, () => FormData, readonly (string | RegExp)[]])[] = [
    ['was not chosen', () => new FormData(), ["The file can't be read: no file was chosen, or it is empty."]],
    ['is empty', () => formWithFile(''), ["The file can't be read: no file was chosen, or it is empty."]],
    ['is no file but text', () => formOf({ file: text }), [/^The file can't be read/]],
    ['is no JSON', () => formWithFile(text.slice(0, -40)), [/^This is not a notebook file: /]],
    [
      'is no UTF-8',
      () => formWithFile(new Uint8Array([0x7b, 0xff, 0x7d])),
      ['This is not a notebook file: it is not UTF-8 text.'],
    ],
    ['is a list', () => formWithFile('[]'), [/it has to be an object\.$/]],
    [
      'is larger than 2 MB',
      () => formWithFile(paddedTo(2_000_001)),
      ['The file has 2000001 bytes; at most 2000000 are taken.'],
    ],
    ['is of another format', () => formWithFile(replaced('"mearing-notebook"', '"other"')), [/^format: /]],
    [
      'is of another version',
      () => formWithFile(replaced('"version": 1', '"version": 2')),
      [/^version: The version is "2"; this program reads version 1/],
    ],
    [
      'has its version as text',
      () => formWithFile(replaced('"version": 1', '"version": "1"')),
      [/^version: /],
    ],
    [
      'has a key twice',
      () => formWithFile(replaced('"currency": "USD"', '"currency": "USD", "currency": "EUR"')),
      ['currency: The key "currency" stands twice in the same object; keep one.'],
    ],
    [
      'has a key twice, once in disguise',
      () => formWithFile(replaced(firstFrom, '$1"from": "0 ft", "\\u0066rom": "1 ft"')),
      [/^sections\[0\]\.from: The key "from" stands twice/],
    ],
    [
      'has an id twice',
      () => formWithFile(replaced('"id": "c1"', '"id": "s1"')),
      [/^common\[0\]\.id: The id "s1" is taken already/],
    ],
    [
      'nests too deep',
      () => formWithFile(replaced('"units"', `"extra": ${'['.repeat(70)}${']'.repeat(70)}, "units"`)),
      [/^Lists and objects lie more than 64 deep/],
    ],
    [
      'nests so deep that it would exhaust a reader',
      () => formWithFile('['.repeat(900_000) + ']'.repeat(900_000)),
      [/^Lists and objects lie more than 64 deep/],
    ],
    [
      'holds half a character',
      () => formWithFile(replaced('iron pin', '\\ud800')),
      [/^.*half of a character/],
    ],
    [
      'holds a number without end',
      () => formWithFile(replaced('"units"', '"extra": -1e999, "units"')),
      [/^.*too large to be kept/],
    ],
    [
      'has several faults',
      () =>
        formWithFile(
          replaced(firstFrom, '$1"from": "0"')
            .replace('"quantity": "4"', '"quantity": 4')
            .replace('"b": "4200.00"', '"b": "4200.005"'),
        ),
      [/^sections\[0\]\.from: /, /^sections\[0\]\.materials\[0\]\.quantity: /, /^caps\.b: /],
    ],
    [
      'would be larger than 2 MB as it is written out',
      // One line as sent; written out, every entry stands on lines of its own.
      () =>
        formWithFile(
          JSON.stringify({
            ...exampleDocument(),
            terms: Array.from({ length: 80_000 }, () => ({ topic: 'x' })),
          }),
        ),
      [/The file has [0-9]{7} bytes; at most 2000000 are taken\.$/],
    ],
  ]

  test.each(files)('%s', async (_what, form, faults) => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const before = await everyTable()
    for (const act of [() => replaceByFile(id, {}, form()), () => startFromFile({}, form())]) {
      const lines = refusalOf(await outcomeOf(act)).split('\n')
      expect(lines).toEqual(
        faults.map((fault) => (typeof fault === 'string' ? fault : expect.stringMatching(fault))),
      )
      expect(await everyTable()).toEqual(before)
    }
  })

  test('and a file of just 2 MB is taken', async () => {
    browseAs(world(), 'a')
    const whole = formWithFile(paddedTo(2_000_000))
    expect(await outcomeOf(() => startFromFile({}, whole))).toMatchObject({ kind: 'redirect' })
  })
})

describe('an import of what was exported', () => {
  const files: readonly (readonly [string, string])[] = [
    ['the example', text],
    [
      'one with keys in another order',
      documentText(Object.fromEntries(Object.entries(exampleDocument()).reverse())),
    ],
    [
      'one with keys that the format does not know',
      replaced('"units"', '"1": [1, -0.5, null, {"é": "\\u0001 ½ 🌳"}], "units"'),
    ],
    ['one on a single line', JSON.stringify(exampleDocument())],
    ['one with a byte order mark', `\ufeff${text}`],
    [
      'one that says only what must be there',
      JSON.stringify({
        format: 'mearing-notebook',
        version: 1,
        currency: 'JPY',
        households: { a: {}, b: {} },
      }),
    ],
  ]

  test.each(files)('is the identical file: %s', async (_what, file) => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    await outcomeOf(() => replaceByFile(id, {}, formWithFile(file)))
    const first = await exported(id)
    expect(JSON.parse(new TextDecoder().decode(first))).toEqual(JSON.parse(file.replace('\ufeff', '')))

    // In its own place it changes nothing at all, not even marks.
    await markEverything(id)
    const before = await everyTable()
    expect(await outcomeOf(() => replaceByFile(id, {}, formWithFile(first)))).toEqual({
      kind: 'redirect',
      to: `/notebook/${id}/record`,
    })
    expect(await everyTable()).toEqual(before)

    // In a notebook of its own it is exported again byte for byte.
    const end = await outcomeOf(() => startFromFile({}, formWithFile(first)))
    const started = /^\/notebook\/([A-Za-z0-9_-]{22})\/links$/.exec((end as { to: string }).to)?.[1] ?? ''
    expect(Buffer.from(await exported(started)).equals(Buffer.from(first))).toBe(true)
  })

  test('is what is stored, byte for byte', async () => {
    const { id } = world().notebook
    browseAs(world(), 'b')
    expect(await exported(id)).toEqual(bytes((await findNotebook(id))?.document ?? ''))
  })
})

describe('a file that is put in the notebook’s place', () => {
  type Entry = Readonly<Record<string, unknown>>
  const book = exampleDocument().contributions as readonly Entry[]
  const struck = { on: '2027-04-01', by: 'a', why: 'x' }

  test.each<[string, readonly Entry[], boolean]>([
    ['lacks an entry', book.slice(1), true],
    ['lacks them all', [], true],
    [
      'has another figure in one',
      book.map((entry, index) => (index === 0 ? { ...entry, amount: '1.00' } : entry)),
      true,
    ],
    ['has them in another order', book.toReversed(), true],
    ['has one more', [...book, { household: 'a', kind: 'cash', amount: '1.00', date: '2027-04-01' }], true],
    ['has one taken back', book.map((entry, index) => (index === 0 ? { ...entry, struck } : entry)), true],
    ['is the same', book, false],
  ])('is on record, by whom it was, where its book %s: %s', async (_what, contributions, rewritten) => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const before = await everyTable()
    await outcomeOf(() =>
      replaceByFile(id, {}, formWithFile(documentText({ ...exampleDocument(), contributions }))),
    )
    const record = newRows(before, await everyTable(), 'Change')
    expect(record).toMatchObject(
      rewritten ? [{ itemKey: 'contributions', household: 'a', before: JSON.stringify(book) }] : [],
    )
    expect((await findNotebook(id))?.document).toBe(documentText({ ...exampleDocument(), contributions }))
  })

  test('cannot give back an entry that was taken back without its being on record', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const taken = book.map((entry, index) => (index === 0 ? { ...entry, struck } : entry))
    await outcomeOf(() =>
      replaceByFile(id, {}, formWithFile(documentText({ ...exampleDocument(), contributions: taken }))),
    )
    const before = await everyTable()
    await outcomeOf(() => replaceByFile(id, {}, formWithFile(text)))
    expect(newRows(before, await everyTable(), 'Change')).toMatchObject([{ itemKey: 'contributions' }])
  })

  test('takes the marks off what it changes, and brings none; revisions and keys stay', async () => {
    const { id } = world().notebook
    await markEverything(id)
    browseAs(world(), 'a')
    await outcomeOf(() => putUpForSigning(id, {}, new FormData()))
    const before = await everyTable()
    const file = {
      ...exampleDocument(),
      caps: {},
      marks: [{ itemKey: 'line', household: 'b' }],
      signatures: [{ household: 'b', partyIndex: 0 }],
    }
    await outcomeOf(() => replaceByFile(id, {}, formWithFile(documentText(file))))
    const after = await everyTable()
    expect(newRows(after, before, 'Mark').map((mark) => mark.itemKey)).toEqual(['caps', 'caps'])
    expect(newRows(before, after, 'Mark')).toEqual([])
    for (const table of ['Revision', 'Signature', 'EntryKey', 'Session'])
      expect([table, after[table]]).toEqual([table, before[table]])
    expect(newRows(before, after, 'Change')).toMatchObject([
      { itemKey: 'caps', household: 'a' },
      { itemKey: 'file', household: 'a' },
    ])
  })
})
