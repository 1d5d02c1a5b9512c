import Link from 'next/link'
import type { Spread } from '../../../lib/core/agreement/notebook.ts'
import type { ItemSideBySide, ItemWay } from '../../../lib/core/shares/sideBySide.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { itemFaultTexts } from '../../../lib/words/shareFaultText.ts'
import type { ShareNames } from '../../../lib/words/shareText.ts'
import {
  apartWords,
  staysWords,
  unusableWords,
  wayMeaning,
  wayWords,
} from '../../../lib/words/sideBySideText.ts'
import { waysRestWords } from '../../../lib/words/spreadText.ts'
import { type PressAction, PressForm } from '../../ui/draft/PressForm.tsx'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { ItemShareView } from './ItemShareView.tsx'
import { ProposeWay } from './ProposeWay.tsx'
import { WaysOnAxis } from './WaysOnAxis.tsx'
import { proposeWayHref } from './wayShares.ts'

type Props = {
  found: ItemSideBySide
  names: ShareNames
  id: string
  notebookId: string
  fingerprint: string
  choose: PressAction
}

/**
 * The ways to share one item, drawn and in a table, each to be chosen or to be proposed with one press; and those that
 * can't be used.
 */
export function ItemWays({ found, names, id, notebookId, fingerprint, choose }: Props) {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const { ways, chosen, range, total, unusable, laid } = found
  if (laid !== undefined) return <WaysRest laid={laid} chosen={chosen} names={names} />
  const rows = ways.map((one) => ({ ...figures(one, names), ways: one }))
  const other = chosen.ok && !ways.some((one) => one.chosen) ? chosen.value : undefined
  const asNow = other ? [{ label: 'As it is now', a: other.a, b: other.b, chosen: true }] : []
  return (
    <>
      <WaysOnAxis
        rows={[...asNow, ...rows]}
        names={names}
        range={range}
        total={total}
        label="What each way asks of the two households"
        before={
          chosen.ok
            ? null
            : itemFaultTexts(names, chosen.faults).map((text) => (
                <p key={text}>As it is chosen now it can’t be shared: {text}</p>
              ))
        }
      />
      <Panel heading="The same in figures">
        <FigureTable
          caption="Ways to share this item"
          columns={[
            { label: 'Way' },
            { label: names.a, figures: true },
            { label: names.b, figures: true },
            { label: 'Choose, or propose' },
          ]}
          rows={[
            ...asNow.map((row) => [row.label, money(row.a), money(row.b), 'Chosen now']),
            ...rows.map((row) => [
              <WayName key="name" way={row.ways} label={row.label} apart={apartWords(row.ways.way, names)} />,
              money(row.a),
              money(row.b),
              row.chosen ? (
                'Chosen now'
              ) : (
                <div key="choose" className="button-row">
                  <PressForm action={choose} label="Choose this" labelFor={row.label}>
                    <input type="hidden" name="id" value={id} />
                    <input type="hidden" name="way" value={row.ways.way} />
                    <input type="hidden" name="fingerprint" value={fingerprint} />
                  </PressForm>
                  <ProposeWay href={proposeWayHref(notebookId, row.ways.way, id)} what={row.label} />
                </div>
              ),
            ]),
          ]}
          foot={range ? [['The middle', money(range.middle.a), money(range.middle.b), '']] : []}
        />
        <p>
          Choosing another way changes the item: both marks come off it, as with any change. Figures that only
          the way before it needs go out of the item; What changed still shows them. Proposing one changes
          nothing until the other household accepts.
        </p>
      </Panel>
      {unusable.length === 0 ? null : (
        <Panel heading="Ways that can’t be used here">
          <ul>
            {unusable.map((one) => (
              <li key={one.way}>
                <strong>{wayWords(one.way, names)}.</strong> {unusableWords(one)}{' '}
                {one.because === 'no figures' ? (
                  <Link href={proposeWayHref(notebookId, one.way, id)} prefetch={false}>
                    Or propose it with figures.
                  </Link>
                ) : null}
              </li>
            ))}
          </ul>
        </Panel>
      )}
    </>
  )
}

/** A common cost that is laid on the sections and gates: what it asks for, and why no way is chosen here. */
function WaysRest({
  laid,
  chosen,
  names,
}: Pick<ItemSideBySide, 'chosen'> & { laid: Spread; names: ShareNames }) {
  return (
    <Panel heading="Laid on the sections and gates">
      <p>{waysRestWords(laid)}</p>
      {chosen.ok ? (
        <ItemShareView item={chosen.value} names={names} />
      ) : (
        itemFaultTexts(names, chosen.faults).map((text) => <p key={text}>It can’t be shared yet: {text}</p>)
      )}
    </Panel>
  )
}

function figures(one: ItemWay, names: ShareNames) {
  return { label: wayWords(one.way, names), a: one.shares.a, b: one.shares.b, chosen: one.chosen }
}

function WayName({ way, label, apart }: { way: ItemWay; label: string; apart: string | undefined }) {
  const stays = staysWords(way)
  return (
    <>
      {label}
      <span className="choice-hint">
        {wayMeaning(way.way)}
        {stays ? ` ${stays}` : ''}
        {apart ? ` ${apart}` : ''}
      </span>
    </>
  )
}
