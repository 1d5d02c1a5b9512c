/** What an element is, by the standard types of ISO 32000-1, 14.8.4. */
export type StructureRole =
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'Caption'
  | 'THead'
  | 'TBody'
  | 'TFoot'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'
  | 'Sect'

/**
 * One element of a paper's structure, for whoever has the paper read aloud. It is known by itself: marks that name the
 * same element belong together, on one page or on several. Elements stand in the order in which they are painted.
 */
export type StructureElement = {
  readonly role: StructureRole
  /** The element around it; none around those that stand directly in the document. */
  readonly parent?: StructureElement
  /** Of a figure: the same in words. */
  readonly alternative?: string
  /** Of a cell that heads others: which ones. */
  readonly scope?: 'Column' | 'Row'
}

/** What a mark belongs to: an element, or the head and foot of its page. A mark without any is ornament. */
export type Tag = StructureElement | 'pagination'

/** The element that stands directly in the document and holds this one. */
export function rootOf(element: StructureElement): StructureElement {
  let root = element
  while (root.parent !== undefined) root = root.parent
  return root
}
