import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { mattersOn } from '../../app/notebook/server/mattersOn.ts'
import { entryOf, notebookPages } from '../../app/notebook/server/pages.ts'
import { openMattersWords } from '../../lib/words/openMattersText.ts'

const folder = path.join(import.meta.dirname, '../../app/notebook/[notebookId]')
const pages = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => path.basename(file) === 'page.tsx')
  .map((file) => ({
    place: path.dirname(file) === '.' ? '' : path.dirname(file),
    source: readFileSync(path.join(folder, file), 'utf8'),
  }))

/** The label of the entry that the menu marks while a page is shown. */
function marked(page: string): string | undefined {
  const { href } = entryOf('n1', page)
  return notebookPages('n1').find((entry) => entry.href === href)?.label
}

describe('the menu', () => {
  test.each(pages)('is told by the page “$place” where it is', ({ place, source }) => {
    const named = place.replaceAll(/\[(itemId|kind)\]/g, (_, name) => `\${${name}}`)
    expect(source).toContain(named === place ? `page="${place}"` : `page={\`${named}\`}`)
  })

  test.each([
    ['', 'The line'],
    ['item/s1', 'The line'],
    ['links', 'The line'],
    ['cut-plan', 'Materials'],
    ['build-up/s1', 'Materials'],
    ['side-by-side', 'Shares'],
    ['side-by-side/s1', 'Shares'],
    ['proposals/new', 'Shares'],
    ['books', 'Money and hours'],
    ['dates', 'Ask first'],
    ['paper', 'Sign'],
    ['changes', 'Record'],
  ])('marks on the page “%s” the entry %s', (page, label) => {
    expect(marked(page)).toBe(label)
  })

  test('says of its ten entries alone that they are the page itself', () => {
    const exact = pages.filter(({ place }) => entryOf('n1', place).exact).map(({ place }) => marked(place))
    expect(exact.sort()).toEqual(
      notebookPages('n1')
        .map(({ label }) => label)
        .sort(),
    )
  })
})

describe('what is still open', () => {
  const matters = [
    { text: 'a signature', href: '/notebook/n1/sign' },
    { text: 'a line of the books', href: '/notebook/n1/books?line=2#came-to' },
    { text: 'the account', href: '/notebook/n1/final-account' },
    { text: 'a question', href: '/notebook/n1/ask-first' },
  ]
  const order = (page: string) => mattersOn(matters, 'n1', page).map(({ text }) => text)

  test('begins with what is settled on the page, then with what stands under the same entry', () => {
    expect(order('ask-first')).toEqual(['a question', 'a signature', 'a line of the books', 'the account'])
    expect(order('final-account')).toEqual([
      'the account',
      'a line of the books',
      'a signature',
      'a question',
    ])
    expect(order('terms')).toEqual(matters.map(({ text }) => text))
  })

  test('knows which of it is settled on the page, whatever its address asks', () => {
    const here = mattersOn(matters, 'n1', 'books').filter((matter) => matter.here)
    expect(here.map(({ text }) => text)).toEqual(['a line of the books'])
  })

  test.each([
    [1, 0, '1 matter is open'],
    [1, 1, '1 matter is open here'],
    [3, 0, '3 matters are open'],
    [5, 2, '5 matters are open, 2 here'],
    [2, 2, '2 matters are open here'],
  ])('is told in one line: %i open, %i of them here', (count, here, words) => {
    expect(openMattersWords(count, here)).toBe(words)
  })
})
