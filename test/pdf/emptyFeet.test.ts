import { describe, expect, test } from 'vitest'
import { facesOf } from '../../lib/pdf/faces.ts'
import { layOut } from '../../lib/pdf/layOut.ts'
import type { Mark } from '../../lib/pdf/mark.ts'
import { columnHeight, pageSize } from '../../lib/pdf/pageSize.ts'
import { styles } from '../../lib/pdf/textPieces.ts'
import { signedExample } from './madePapers.ts'

const { content, drawing, title, standing, fonts } = signedExample

/** Each page's texts between head and foot, from the top. */
function textsOf(units: 'ft-in' | 'metric') {
  const page = pageSize(units)
  const within = (mark: Mark) => mark.kind === 'text' && mark.at.y > page.top && mark.at.y < page.bottom
  return {
    page,
    sheets: layOut(content, drawing, { title, standing }, facesOf(fonts), page).map((marks) =>
      marks
        .filter(within)
        .flatMap((mark) => (mark.kind === 'text' ? [mark] : []))
        .sort((left, right) => left.at.y - right.at.y),
    ),
  }
}

describe.each(['ft-in', 'metric'] as const)('the paper of the signed example, in %s', (units) => {
  const { page, sheets } = textsOf(units)

  test('has no sheet before the last whose foot is empty by more than a fifth', () => {
    const empty = sheets.map((texts) => (page.bottom - (texts.at(-1)?.at.y ?? page.top)) / columnHeight(page))
    expect(sheets.length).toBeGreaterThan(20)
    for (const part of empty.slice(0, -1)) expect(part).toBeLessThan(0.21)
  })

  test('has no heading as the last thing on a sheet', () => {
    const headings: readonly number[] = [styles.chapter.size, styles.part.size]
    const last = sheets.flatMap((texts) => texts.at(-1) ?? [])
    expect(last).toHaveLength(sheets.length)
    expect(last.filter(({ size }) => headings.includes(size))).toEqual([])
  })
})
