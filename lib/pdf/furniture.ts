import { paperWords } from '../words/summary/paperWords.ts'
import type { Standing } from '../words/summary/summaryInput.ts'
import { shortened } from './breakLines.ts'
import type { Faces } from './faces.ts'
import { box, type Mark, rule, tagged } from './mark.ts'
import type { PageSize } from './pageSize.ts'

/** What stands on every page around the content. */
export type Furniture = {
  readonly title: string
  readonly standing: Standing
  /** What a paper that is no agreement calls itself, how far it binds, and what its hash is of. */
  readonly words?: FurnitureWords | undefined
}
export type FurnitureWords = {
  readonly standing: string
  readonly force: string
  readonly hashLabel: string
}

/** Under the content: the faint mark across a draft, which must not hinder reading. */
export function underMarks(standing: Standing, faces: Faces, page: PageSize): Mark[] {
  if (standing.kind !== 'draft') return []
  const [text, size, angle] = [paperWords.draftMark, 150, 52]
  const half = faces.widthOf(text, size, 'semibold') / 2
  const turn = (angle * Math.PI) / 180
  // The middle of the word lies in the middle of the page; 0.35 of the size is half the height of capitals.
  const x = page.width / 2 - half * Math.cos(turn) + 0.35 * size * Math.sin(turn)
  const y = page.height / 2 + half * Math.sin(turn) + 0.35 * size * Math.cos(turn)
  return [
    { kind: 'text', text, at: { x, y }, size, weight: 'semibold', ink: 'faint', angle, tag: 'pagination' },
  ]
}

/** Head and foot: title and standing; the hash in one piece, so that it can be searched for; the page's number. */
export function furnitureMarks(
  { title, standing, words }: Furniture,
  faces: Faces,
  page: PageSize,
  number: number,
  of: number,
): Mark[] {
  const small = (text: string, x: number, y: number, weight: 'regular' | 'semibold', size = 7.5): Mark => ({
    kind: 'text',
    text,
    at: { x, y },
    size,
    weight,
    ink: weight === 'semibold' ? 'ink' : 'quiet',
  })
  const kind = words?.standing ?? paperWords.standing(standing)
  const force = words?.force ?? paperWords.force(standing)
  const forceWidth = faces.widthOf(force, 7.5, 'regular')
  const kindWidth = faces.widthOf(kind, 7.5, 'semibold')
  const room = page.right - page.left - forceWidth - kindWidth - 30
  const shownTitle = shortened(title, room, (text) => faces.widthOf(text, 7.5, 'regular'))
  const pageWords = paperWords.page(number, of)
  const headY = 36
  const footY = page.height - 30
  const marks: Mark[] = [
    ...(standing.kind === 'draft'
      ? [
          {
            kind: 'polygon' as const,
            points: box(page.left - 8, headY - 12, page.right - page.left + 16, 18),
            fill: 'band' as const,
          },
        ]
      : [rule({ x: page.left, y: headY + 7 }, { x: page.right, y: headY + 7 })]),
    small(kind, page.left, headY, 'semibold'),
    small(force, page.left + kindWidth + 8, headY, 'regular'),
    small(shownTitle, page.right - faces.widthOf(shownTitle, 7.5, 'regular'), headY, 'regular'),
    rule({ x: page.left, y: footY - 12 }, { x: page.right, y: footY - 12 }),
    small(
      `${words?.hashLabel ?? paperWords.hashLabel}: ${standing.sha256}`,
      page.left,
      footY,
      'regular',
      6.5,
    ),
    small(pageWords, page.right - faces.widthOf(pageWords, 7.5, 'semibold'), footY, 'semibold'),
  ]
  return marks.map((mark) => tagged(mark, 'pagination'))
}
