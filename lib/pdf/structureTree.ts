import { type PDFDict, type PDFDocument, PDFHexString, PDFName, type PDFPage, type PDFRef } from 'pdf-lib'
import type { StructureElement } from './structureElement.ts'

/** A piece of marked content: its number on its page (MCID) is its place in the page's list. */
export type TaggedContent = {
  readonly element: StructureElement
  /** Of a figure: left, bottom, right and top on the page, in points. */
  readonly box?: readonly number[]
}
export type TaggedPage = { readonly page: PDFPage; readonly contents: readonly TaggedContent[] }

/** Where an element has content of its own. */
type Place = { readonly page: PDFRef; readonly number: number; readonly box?: readonly number[] | undefined }
type Node = {
  readonly element: StructureElement
  readonly dictionary: PDFDict
  readonly ref: PDFRef
  readonly kids: (Place | Node)[]
}

/**
 * Writes the logical structure of a document (ISO 32000-1, 14.7 and 14.8): one tree of elements in reading order, and for
 * every page the elements of its marked content. Same pages, same objects.
 */
export function writeStructureTree(document: PDFDocument, pages: readonly TaggedPage[]): void {
  const { context, catalog } = document
  const root = context.obj({ Type: 'StructTreeRoot' })
  const rootRef = context.register(root)
  const whole = context.obj({ S: 'Document', P: rootRef })
  const wholeRef = context.register(whole)
  const nodes = new Map<StructureElement, Node>()
  const top: Node[] = []
  const nodeOf = (element: StructureElement): Node => {
    const known = nodes.get(element)
    if (known) return known
    const parent = element.parent && nodeOf(element.parent)
    const dictionary = context.obj({ S: element.role, P: parent?.ref ?? wholeRef })
    const node = { element, dictionary, ref: context.register(dictionary), kids: [] }
    nodes.set(element, node)
    ;(parent?.kids ?? top).push(node)
    return node
  }
  const parents = pages.flatMap(({ page, contents }, index) => {
    page.node.set(PDFName.of('StructParents'), context.obj(index))
    page.node.set(PDFName.of('Tabs'), PDFName.of('S'))
    const refs = contents.map(({ element, box }, number) => {
      const node = nodeOf(element)
      node.kids.push({ page: page.ref, number, box })
      return node.ref
    })
    return [index, context.register(context.obj(refs))]
  })
  for (const node of nodes.values()) complete(document, node)
  whole.set(PDFName.of('K'), context.obj(top.map(({ ref }) => ref)))
  root.set(PDFName.of('K'), context.obj([wholeRef]))
  root.set(PDFName.of('ParentTree'), context.register(context.obj({ Nums: parents })))
  root.set(PDFName.of('ParentTreeNextKey'), context.obj(pages.length))
  catalog.set(PDFName.of('StructTreeRoot'), rootRef)
  catalog.set(PDFName.of('MarkInfo'), context.obj({ Marked: true }))
}

/** Content on the element's own page is named by its number, content on a further page with that page. */
function complete({ context }: PDFDocument, { element, dictionary, kids }: Node): void {
  const places = kids.filter((kid) => 'page' in kid)
  const [first] = places
  if (first) dictionary.set(PDFName.of('Pg'), first.page)
  const named = kids.map((kid) => {
    if (!('page' in kid)) return kid.ref
    return kid.page === first?.page
      ? context.obj(kid.number)
      : context.obj({ Type: 'MCR', Pg: kid.page, MCID: kid.number })
  })
  const [only, ...more] = named
  if (only !== undefined) dictionary.set(PDFName.of('K'), more.length === 0 ? only : context.obj(named))
  if (element.alternative !== undefined)
    dictionary.set(PDFName.of('Alt'), PDFHexString.fromText(alternativeText(element.alternative)))
  if (element.scope !== undefined)
    dictionary.set(PDFName.of('A'), context.obj({ O: 'Table', Scope: element.scope }))
  if (first?.box)
    dictionary.set(PDFName.of('A'), context.obj({ O: 'Layout', Placement: 'Block', BBox: [...first.box] }))
}

/** In characters: whoever reads a record takes no longer text from a file. */
const longestAlternative = 12_000

/** Without control characters, and cut where it would be a text of its own: the tables have it all. */
function alternativeText(text: string): string {
  const plain = text.replace(/[\p{Cc}\p{Cf}\p{Cs}]/gu, ' ').trim()
  if (plain.length <= longestAlternative) return plain
  return `${plain.slice(0, longestAlternative).replace(/[\uD800-\uDBFF]$/, '')}…`
}
