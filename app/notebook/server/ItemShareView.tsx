import { hoursText } from '../../../lib/core/amounts/hours.ts'
import type { ItemShares } from '../../../lib/core/shares/itemShares.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { itemShareSentences, type ShareNames } from '../../../lib/words/shareText.ts'
import { capitalised } from '../../../lib/words/summary/names.ts'
import { ShareBar } from '../../ui/ShareBar.tsx'

/** What an item asks of each household: a bar, the figures, and the result in words for each pot. */
export function ItemShareView({ item, names }: { item: ItemShares; names: ShareNames }) {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const gifts = item.hours.gifts
  return (
    <div className="share-view">
      <ShareBar
        a={Number(item.a)}
        b={Number(item.b)}
        aText={money(item.a)}
        bText={money(item.b)}
        nameA={names.a}
        nameB={names.b}
        label={`Asked for, of ${money(item.total)} in all`}
      />
      {itemShareSentences(item, names).map(({ pot, sentence }) => (
        <p key={pot}>
          <strong>{pot}.</strong> {sentence}
        </p>
      ))}
      {item.hours.hours > 0n ? (
        <p>
          <strong>Hours.</strong> {hoursText(item.hours.hours)} are planned, the same work counted in hours:{' '}
          {hoursText(item.hours.a)} fall to {names.a} and {hoursText(item.hours.b)} to {names.b}.
        </p>
      ) : null}
      {gifts.a > 0n || gifts.b > 0n ? (
        <p>
          <strong>Given freely.</strong> {giftWords(gifts.a, names.a)}
          {gifts.a > 0n && gifts.b > 0n ? ' ' : ''}
          {giftWords(gifts.b, names.b)}
        </p>
      ) : null}
    </div>
  )
}

function giftWords(hours: bigint, name: string): string {
  return hours === 0n
    ? ''
    : `${capitalised(name)} gives ${hoursText(hours)} hours that are in no sum. Thank you.`
}
