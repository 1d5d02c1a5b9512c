import type { Page } from '@playwright/test'

const length = '[0-9]+ ft [0-9]+(?: [0-9]+/[0-9]+)? in'
const mixed = '[0-9]+ [0-9]+/[0-9]+(?: (?:in|ft))?'
const unit = '(?:sq ft|sq m|cu ft|ft|in|mm|cm|m|lb|kg|L|%|h|hours?|days?|mph|psf|kB|MB|[A-Z]{3})(?![A-Za-z])'
const month = '(?:January|February|March|April|May|June|July|August|September|October|November|December)'
const day = `[0-9]{1,2} ${month}(?: [0-9]{4})?|${month} [0-9]{4}`
const money = '[−-]?[$€£][0-9.,]*[0-9]'

/** What may not be torn, written apart from what binds it; any blank will do. */
const figures = `${length}|${mixed}|[0-9½⅓⅔¼¾⅛⅜⅝⅞] ${unit}|${day}|${money}|\\b[Nn]o\\. [0-9]+`.replaceAll(
  ' ',
  '[ \\u00A0\\u202F]',
)

/**
 * Every figure of a page that begins on one line and ends on another, with the words before it. All that is shown is read,
 * piece by piece across the elements of a paragraph; not what a browser sets by itself (choices, fields) and no drawing.
 */
export function tornFigures(page: Page): Promise<string[]> {
  return page.evaluate((pattern) => {
    const paragraphs = new Map<Element, Text[]>()
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
      const parent = text.parentElement
      if (!(text instanceof Text) || parent === null) continue
      if (parent.closest('script, style, noscript, svg, select, textarea, pre, .only-read-out, .skip-link'))
        continue
      if (!parent.checkVisibility({ visibilityProperty: true })) continue
      let paragraph = parent
      while (getComputedStyle(paragraph).display === 'inline' && paragraph.parentElement !== null)
        paragraph = paragraph.parentElement
      paragraphs.set(paragraph, [...(paragraphs.get(paragraph) ?? []), text])
    }
    const torn: string[] = []
    for (const pieces of paragraphs.values()) {
      const whole = pieces.map(({ data }) => data).join('')
      const boxAt = (place: number) => {
        const letter = document.createRange()
        let from = place
        for (const piece of pieces) {
          if (from >= 0 && from < piece.length) {
            letter.setStart(piece, from)
            letter.setEnd(piece, from + 1)
          }
          from -= piece.length
        }
        return letter.getBoundingClientRect()
      }
      for (const { 0: figure, index } of whole.matchAll(new RegExp(pattern, 'g'))) {
        const [first, last] = [boxAt(index), boxAt(index + figure.length - 1)]
        if (last.top >= first.bottom - first.height / 4)
          torn.push(`${whole.slice(Math.max(0, index - 25), index)}[${figure}]`)
      }
    }
    return torn
  }, figures)
}
