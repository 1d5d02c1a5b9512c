import { expect, test } from 'vitest'
import { WayBars } from '../../app/ui/WayBars.tsx'
import { beforeCapsWords } from '../../lib/words/sideBySideText.ts'
import { shownMarkup } from '../shownMarkup.ts'

const names = { a: 'no. 12', b: 'no. 14' }
const bar = { label: 'Halves', a: 600, b: 400, aText: '$6.00', bText: '$4.00', chosen: true }

function drawn(before: { a: number; text: string } | undefined): string {
  return shownMarkup(
    <WayBars
      bars={[
        { ...bar, before },
        { ...bar, label: 'By length', chosen: false },
      ]}
      middle={undefined}
      nameA={names.a}
      nameB={names.b}
      label="What each way asks"
      zeroText="$0.00"
      totalText="$10.00"
    />,
  )
}

test('each figure of a way stands with the household that it is asked of', () => {
  expect(drawn(undefined).replaceAll(/<[^>]*>/g, '')).toContain('no. 12 $6.00 no. 14 $4.00')
})

test('a way that a cap moves shows where it would divide without caps, and says so', () => {
  const text = beforeCapsWords('$5.00', '$5.00', names)
  const html = drawn({ a: 500, text })
  expect(html).toContain('Without caps: no. 12 $5.00, no. 14 $5.00.')
  expect(html).toMatch(/<svg x="50%"[^>]*><path class="way-bar-before"/)
  expect(html.match(/way-bar-before/g)).toHaveLength(1)
  expect(html).toContain('Dashed line: where it would be divided without caps.')
  expect(drawn(undefined)).not.toContain('Dashed line')
})
