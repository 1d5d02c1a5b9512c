import { describe, expect, test } from 'vitest'
import type { FileRefusal } from '../../lib/core/agreement/fileRefusal.ts'
import {
  fileDamageText,
  fileKindHeadings,
  fileKindWords,
  fileRefusalText,
  sizeWords,
} from '../../lib/words/fileText.ts'
import { historyChainText } from '../../lib/words/historyText.ts'
import { type PackContents, recordPackText } from '../../lib/words/recordPackText.ts'
import { readingGrade } from './readingGrade.ts'

const formats = ['heic', 'avif', 'gif', 'svg', 'tiff', 'bmp', 'zip', 'text', 'unknown'] as const
const refusals: readonly FileRefusal[] = [
  { kind: 'empty' },
  { kind: 'too-large', limit: 20_000_000 },
  { kind: 'too-large', limit: 20_000_000, bytes: 31_250_000 },
  ...formats.map((format) => ({ kind: 'not-taken', format }) as const),
  { kind: 'broken', mediaType: 'application/pdf' },
  { kind: 'broken', mediaType: 'image/jpeg' },
  { kind: 'too-many-pixels', limit: 110_000_000 },
  { kind: 'moving-picture' },
  { kind: 'took-too-long' },
  { kind: 'there-already' },
  { kind: 'too-many-files', limit: 200 },
  { kind: 'notebook-full', limit: 500_000_000 },
  { kind: 'disk-full' },
  { kind: 'not-written' },
  { kind: 'broke-off' },
  { kind: 'no-such-kind' },
  { kind: 'no-such-item' },
  { kind: 'caption-too-long', limit: 500 },
  { kind: 'unreadable-form' },
]

describe('a refusal', () => {
  test.each(refusals)('names the file and is plain: %j', (refusal) => {
    const text = fileRefusalText('gate.heic', refusal)
    expect(text).toMatch(/^“gate\.heic” was not added\. [A-Z].*\.$/)
    expect(text).not.toMatch(/undefined|NaN|!/)
  })

  test('all of them together read at grade 8 or below', () => {
    const all = refusals.map((refusal) => fileRefusalText('x', refusal)).join('\n')
    expect(readingGrade(all)).toBeLessThanOrEqual(8)
  })

  test.each<[FileRefusal, string]>([
    [
      { kind: 'not-taken', format: 'heic' },
      'set the camera to “most compatible”, or share the photo as a JPEG',
    ],
    [
      { kind: 'too-large', limit: 20_000_000, bytes: 31_250_000 },
      'It has 31 MB. A file can have 20 MB at most.',
    ],
    [{ kind: 'too-large', limit: 20_000_000 }, 'It can have 20 MB at most.'],
    [{ kind: 'disk-full' }, 'Nothing was lost. Ask whoever runs the install to make room'],
  ])('says what would be right: %j', (refusal, said) => {
    expect(fileRefusalText('x', refusal)).toContain(said)
  })
})

test.each([
  [0, '0 bytes'],
  [999, '999 bytes'],
  [1000, '1 kB'],
  [999_499, '999 kB'],
  [999_500, '1 MB'],
  [1_240_000, '1.2 MB'],
  [9_960_000, '10 MB'],
  [20_000_000, '20 MB'],
  [500_000_000, '500 MB'],
])('%i bytes are %s', (bytes, words) => {
  expect(sizeWords(bytes)).toBe(words)
})

test('the other words are plain, too', () => {
  const all = [
    ...(['missing', 'altered', 'unreadable'] as const).map(fileDamageText),
    ...Object.values(fileKindWords).map((words) => `${words}.`),
    ...Object.values(fileKindHeadings).map((words) => `${words}.`),
  ]
  expect(readingGrade(all.join('\n'))).toBeLessThanOrEqual(8)
  expect(readingGrade(historyChainText.join('\n'))).toBeLessThanOrEqual(8)
})

const hash = (digit: string) => digit.repeat(64)
const pack: PackContents = {
  title: 'Boundary fence, 12 and 14 Example Lane',
  households: ['The Oakshotts', 'Ines Vandermolen'],
  madeAt: new Date('2027-05-01T10:00:00Z'),
  revisions: [
    {
      number: 1,
      standing: 'locked',
      summary: 'summaries/revision-1-locked.pdf',
      agreement: 'agreements/revision-1.json',
      sha256: hash('1'),
    },
    {
      number: 2,
      standing: 'waiting',
      summary: 'summaries/revision-2.pdf',
      agreement: 'agreements/revision-2.json',
      sha256: hash('2'),
    },
    { number: 3, standing: 'not signed by all', agreement: 'agreements/revision-3.json', sha256: hash('3') },
  ],
  accounts: [
    {
      number: 1,
      paper: 'accounts/final-account-1.pdf',
      text: 'accounts/final-account-1.json',
      sha256: hash('4'),
      signedByAll: true,
    },
  ],
  draft: 'summaries/draft.pdf',
  notebook: 'notebook.json',
  letter: 'letter/first-letter.txt',
  history: { name: 'history.json', entries: 12, hash: hash('a') },
  sums: 'sha256sums.txt',
  files: [
    {
      name: 'files/before/001-gate.jpg',
      given: 'gate.jpg',
      kind: 'before',
      caption: 'From the lane',
      item: 'Gate',
      by: 'The Oakshotts',
      at: new Date('2027-04-01T10:00:00Z'),
      size: 1_000_000,
      sha256: hash('b'),
    },
    {
      damage: 'missing',
      given: 'letter.pdf',
      kind: 'permit',
      caption: '',
      by: 'Ines Vandermolen',
      at: new Date('2027-04-02T10:00:00Z'),
      size: 2000,
      sha256: hash('c'),
    },
  ],
}

describe('the text of a record pack', () => {
  const text = recordPackText(pack)

  test('names everything that is in it', () => {
    for (const name of [
      ...pack.revisions.flatMap(({ summary, agreement, sha256 }) => [
        summary ?? agreement,
        agreement,
        sha256,
      ]),
      ...pack.accounts.flatMap(({ paper, text: account, sha256 }) => [paper, account, sha256]),
      pack.draft,
      pack.notebook,
      pack.letter ?? 'the letter',
      pack.history.name,
      pack.history.hash,
      pack.sums,
      'files/before/001-gate.jpg',
    ])
      expect(text).toContain(name)
  })

  test('says how to check it', () => {
    expect(text).toContain('     sha256sum -c sha256sums.txt\n')
    expect(text).toContain('     npm run -s check-record -- THE-PATH-TO/summaries/revision-1-locked.pdf\n')
    expect(text.replace(/\s+/g, ' ')).toContain('RFC 8785')
  })

  test('says what could not be put in, and why', () => {
    expect(text).toContain('“letter.pdf”')
    expect(text.replace(/\s+/g, ' ')).toContain(`Its hash was ${hash('c')}`)
    expect(text.replace(/\s+/g, ' ')).toContain('it is gone from the data folder')
  })

  test('warns of what it holds, and gives no legal advice', () => {
    const flat = text.replace(/\s+/g, ' ')
    expect(flat).toContain('It holds names, costs, hours and what was said.')
    expect(flat).toContain('It does not show who held the pen or the phone when a name was signed.')
    expect(flat).toContain('no legal advice')
  })

  test('has no long line but where a hash stands', () => {
    expect(text.split('\n').filter((line) => line.length > 78 && !/[0-9a-f]{64}|\//.test(line))).toEqual([])
    expect(text.endsWith('\n')).toBe(true)
  })

  test('reads at grade 8 or below, without names and hashes', () => {
    const sentences = text
      .replace(/[0-9a-f]{64}|\S+\.(pdf|json|txt|jpg)\b|-c|^[=-]+$/gm, ' ')
      .replace(/\n(?! *\n)/g, ' ')
    expect(readingGrade(sentences)).toBeLessThanOrEqual(8)
  })

  test('explains a pack of a notebook in which nothing is signed', () => {
    const empty = recordPackText({
      ...pack,
      revisions: [],
      files: [],
      history: { name: 'history.json', entries: 0, hash: hash('0') },
    })
    const flat = empty.replace(/\s+/g, ' ')
    expect(flat).toContain('Nothing has been put up for signing yet')
    expect(flat).toContain('There are no photos or papers.')
    expect(flat).toContain('There is no locked copy here yet.')
    expect(flat).not.toContain('undefined')
  })
})
