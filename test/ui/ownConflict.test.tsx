import { expect, test } from 'vitest'
import { ConflictChoice } from '../../app/ui/draft/ConflictChoice.tsx'
import { MergeChoice } from '../../app/ui/draft/MergeChoice.tsx'
import type { Conflict } from '../../app/ui/draft/saveAnswer.ts'
import { shownMarkup } from '../shownMarkup.ts'

const rows = [{ label: 'Infill', theirs: 'sheep wire', yours: 'boards' }]
const saved: Conflict = { theirs: {}, theirsBase: 'x', rows, by: 'no. 14', when: '4 March 2027' }
const nothing = () => undefined

function shown(conflict: Conflict): string {
  const common = { conflict, waiting: false, attempt: 1, onTakeTheirs: nothing }
  const merging = {
    draft: {},
    isTheirs: false,
    taken: ['Height'],
    clashes: [
      { path: 'infill', label: 'Infill', theirs: 'sheep wire', mine: 'boards', theirValue: 'sheep wire' },
    ],
  }
  const html = shownMarkup(
    <>
      <ConflictChoice {...common} removing={false} onWriteOver={nothing} />
      <MergeChoice {...common} merging={merging} form="f" onSave={nothing} />
    </>,
  )
  return html.replace(/<[^>]+>/g, ' ')
}

test('what one’s own household saved in another window is not called theirs', () => {
  const own = shown({ ...saved, own: true })
  expect(own).toContain('This was saved in another window of yours on 4 March 2027')
  expect(own).toContain('Saved in another window of yours   sheep wire')
  expect(own).toContain('Typed here   boards')
  expect(own).not.toMatch(/theirs|\bthey\b|no\. 14/i)
})

test('what the other household saved is called theirs, and whose it is', () => {
  const theirs = shown(saved)
  expect(theirs).toContain('no. 14 saved this on 4 March 2027')
  expect(theirs).toContain('Theirs   sheep wire')
  expect(theirs).not.toContain('another window')
})
