import { lookOf, statusLooks } from '../../../../lib/core/agreement/itemStatus.ts'
import { lookWords } from '../../../../lib/words/statusText.ts'
import { StatusGlyph } from '../../../ui/Status.tsx'
import type { Opened } from '../opened.ts'
import { type SinceSigned, statusOf } from '../statusOf.ts'

const counted = ['section', 'gate', 'common']

/** How many sections, gates and common costs stand how: the signs of the drawing, with their words. */
export function StandingCounts({ opened, since }: { opened: Opened; since: SinceSigned | undefined }) {
  const looks = opened.standings
    .filter(({ item }) => counted.includes(item.kind))
    .map((standing) => lookOf(statusOf(standing, since)))
  return (
    <ul className="standing-counts" aria-label="How sections, gates and common costs stand">
      {statusLooks
        .map((look) => ({ look, count: looks.filter((one) => one === look).length }))
        .filter(({ count }) => count > 0)
        .map(({ look, count }) => (
          <li key={look}>
            <StatusGlyph kind={look} />
            {count} {lookWords[look]}
          </li>
        ))}
    </ul>
  )
}
