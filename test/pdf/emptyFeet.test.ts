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

test('the heading above the places to sign stands on the page of the first of them, whatever is above', () => {
  const page = pageSize('metric')
  const place = {
    kind: 'signature',
    household: 'a',
    householdName: 'No. 12',
    party: 'Petra Quillon',
    capacity: 'owner',
    state: { kind: 'not signed yet', text: 'Not signed yet.' },
  } as const
  const alone = Array.from({ length: 60 }, (_, count) => {
    const above = Array.from({ length: count }, () => ({ kind: 'paragraph', text: 'A line above.' }) as const)
    const blocks = [
      ...above,
      { kind: 'heading', level: 1, id: 'signatures', text: 'Signatures' } as const,
      { kind: 'paragraph', text: 'Each party signs for itself.' } as const,
      place,
    ]
    const sheets = layOut(blocks, drawing, { title, standing }, facesOf(fonts), page).map((marks) =>
      marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
    )
    const headed = sheets.filter((texts) => texts.includes('Signatures'))
    expect(headed).toHaveLength(1)
    return headed[0]?.includes('Petra Quillon') === true ? [] : [count]
  })
  expect(alone.flat()).toEqual([])
})
