import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { structureTextOf } from './pdfTools.ts'

export type Element = {
  readonly role: string
  readonly alternative?: string
  /** Left, bottom, right and top, in points. */
  readonly box?: readonly number[]
  /** Numbers of the marked content that it holds itself, and elements, in order. */
  readonly kids: readonly (string | Element)[]
}
/** Text that was painted between a beginning and an end of marked content: of an element, by its number, or an artifact. */
export type PlacedText = { readonly text: string; readonly content?: string; readonly artifact: boolean }
export type StructuredPage = {
  readonly width: number
  readonly height: number
  readonly tree: Element
  readonly texts: readonly PlacedText[]
}
export type Structure = {
  readonly title: unknown
  readonly language: unknown
  readonly marked: boolean
  readonly titleShown: unknown
  readonly pages: readonly StructuredPage[]
}

type RawNode = {
  readonly role: string
  readonly alt?: string
  readonly bbox?: readonly number[]
  readonly children: readonly (RawNode | { readonly type: string; readonly id: string })[]
}

/** Reads the structure of a PDF back, page by page, with another program than the one that wrote it: pdf.js. */
export async function readStructure(pdf: Uint8Array): Promise<Structure> {
  const loading = getDocument({ data: new Uint8Array(pdf), isEvalSupported: false, verbosity: 0 })
  const document = await loading.promise
  const info = (await document.getMetadata()).info as Record<string, unknown>
  const preferences = (await document.getViewerPreferences()) as Record<string, unknown> | null
  const pages: StructuredPage[] = []
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number)
    const [, , width = 0, height = 0] = page.view
    const { items } = await page.getTextContent({ includeMarkedContent: true })
    const open: { tag: string; id: string | null }[] = []
    const texts = items.flatMap((item): PlacedText[] => {
      if (!('str' in item)) {
        const { type, tag = '', id = null } = item as { type: string; tag?: string; id?: string | null }
        if (type === 'endMarkedContent') open.pop()
        else open.push({ tag, id })
        return []
      }
      if (item.str.trim() === '') return []
      const content = open.findLast(({ id }) => id !== null)?.id
      const artifact = open.some(({ tag }) => tag === 'Artifact')
      return [{ text: item.str, artifact, ...(content ? { content } : {}) }]
    })
    pages.push({ width, height, tree: elementOf((await page.getStructTree()) as RawNode), texts })
  }
  const marked = (await document.getMarkInfo())?.Marked === true
  await loading.destroy()
  return {
    title: info.Title,
    language: info.Language,
    marked,
    titleShown: preferences?.DisplayDocTitle,
    pages,
  }
}

function elementOf({ role, alt, bbox, children }: RawNode): Element {
  return {
    role,
    ...(alt === undefined ? {} : { alternative: alt }),
    ...(bbox === undefined ? {} : { box: bbox }),
    kids: children.map((kid) => ('role' in kid ? elementOf(kid) : kid.id)),
  }
}

/** An element and all under it, in reading order. */
export function elementsIn(element: Element): Element[] {
  return [element, ...element.kids.flatMap((kid) => (typeof kid === 'string' ? [] : elementsIn(kid)))]
}

/** Text that neither belongs to an element of its page nor is an artifact, or is both. */
export function textsOutside({ pages }: Structure): string[] {
  return pages.flatMap(({ tree, texts }) => {
    const known = new Set(
      elementsIn(tree).flatMap(({ kids }) => kids.filter((kid) => typeof kid === 'string')),
    )
    return texts
      .filter(({ content, artifact }) => (content !== undefined && known.has(content)) === artifact)
      .map(({ text }) => text)
  })
}

/** The text of an element of a page and of all under it, with one space between pieces and for each blank. */
export function textIn(element: Element, { texts }: StructuredPage): string {
  return elementsIn(element)
    .flatMap(({ kids }) => kids.filter((kid) => typeof kid === 'string'))
    .flatMap((one) => texts.filter(({ content }) => content === one).map(({ text }) => text))
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim()
}

/** An element of the whole document as poppler reads it. */
export type PopplerElement = {
  readonly role: string
  /** Such as "/Scope /Row". */
  readonly attributes: string[]
  readonly texts: string[]
  readonly kids: PopplerElement[]
}

/** The structure of the whole document, whatever pages it is on: what `pdfinfo` says about it, by its indentation. */
export async function popplerStructure(pdf: Uint8Array, withText = false): Promise<PopplerElement> {
  const root: PopplerElement = { role: 'Root', attributes: [], texts: [], kids: [] }
  const open: PopplerElement[] = [root]
  for (const line of (await structureTextOf(pdf, withText)).split('\n')) {
    const [, blanks = '', said = ''] = /^( *)(.*)$/.exec(line) ?? []
    if (said === '') continue
    const role = /^([A-Z][A-Za-z0-9]*)(?: \((?:block|inline)\))?:?$/.exec(said)?.[1]
    const around = open.slice(0, blanks.length / 2 + 1).at(-1) ?? root
    if (role === undefined) {
      if (said.startsWith('"')) around.texts.push(said.slice(1, -1))
      else around.attributes.push(said.trim())
      continue
    }
    const element: PopplerElement = { role, attributes: [], texts: [], kids: [] }
    around.kids.push(element)
    open.splice(blanks.length / 2 + 1, Number.POSITIVE_INFINITY, element)
  }
  return root
}

/** All elements of a role, in reading order. */
export function popplerElements(element: PopplerElement, role: string): PopplerElement[] {
  const inside = element.kids.flatMap((kid) => popplerElements(kid, role))
  return element.role === role ? [element, ...inside] : inside
}

/** Rows that have not as many cells as the first row of their table, which is its head. */
export function unevenRows(root: PopplerElement): string[] {
  return popplerElements(root, 'Table').flatMap((table) => {
    const [head, ...rows] = popplerElements(table, 'TR')
    return rows
      .filter((row) => row.kids.length !== head?.kids.length)
      .map((row) => row.kids.flatMap(({ texts }) => texts).join(' | '))
  })
}
