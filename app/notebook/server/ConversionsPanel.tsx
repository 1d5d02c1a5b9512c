import type { Conversion } from '../../../lib/core/agreement/notebook.ts'
import { countsAlready, turnedMoney, waitsFor } from '../../../lib/core/hours/conversions.ts'
import { agreedRates } from '../../../lib/core/hours/rates.ts'
import { otherHousehold } from '../../../lib/core/people/household.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { conversionsIn } from '../../../lib/forms/conversions.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { conversionBackWords } from '../../../lib/words/againText.ts'
import { dayWords } from '../../../lib/words/day.ts'
import { conversionWords, hoursWords, turnedMoneySentences } from '../../../lib/words/hoursText.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { Status } from '../../ui/Status.tsx'
import { ConversionForm } from '../forms/ConversionForm.tsx'
import { booksHours } from './booksHours.ts'
import { agreeToConversion, askConversion, withdrawConversion } from './conversionActions.ts'
import type { Opened } from './opened.ts'
import { withdrawnLately } from './withdrawnLately.ts'

/** Hours turned into money and money into hours, and the form to ask for it. */
export async function ConversionsPanel({ opened }: { opened: Opened }) {
  const { notebook, notebookId, household } = opened
  const { conversions } = notebook.books
  const { items } = booksHours(opened)
  const rates = agreedRates(notebook.arrangements)
  const back = await withdrawnLately(notebookId, household, new Date())
  const choices = items.map(({ id, kind, name }) => ({
    value: id,
    label: itemTitle({ kind, name, key: `item:${id}` }),
  }))
  const still = items.map(({ id, stillToGive }) => [id, hoursWords(stillToGive[household])])
  return (
    <Panel heading="Money instead of hours, hours instead of money" id="conversions">
      <p>
        What a household is asked for stays the same; how much of it comes in hours changes. It counts once
        the other household has marked it.
      </p>
      {conversions.length === 0 ? null : (
        <ol className="item-rows">
          {conversions.map((conversion, index) => (
            <ConversionView
              // biome-ignore lint/suspicious/noArrayIndexKey: the form of each names its place
              key={index}
              opened={opened}
              conversion={conversion}
              index={index}
              item={choices.find(({ value }) => value === conversion.item)?.label ?? conversion.item}
            />
          ))}
        </ol>
      )}
      {turnedMoneySentences(notebook, turnedMoney(conversions, digitsOf(notebook))).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {back === undefined ? null : <p className="on-screen-only">{conversionBackWords}</p>}
      <div className="on-screen-only">
        <ConversionForm
          key={conversions.length}
          initial={back ?? { to: 'money', item: '', hours: '', rate: rates.plain || rates.skilled, why: '' }}
          save={askConversion.bind(null, notebookId)}
          names={{ ...shareNames(notebook), rates }}
          items={choices}
          stillToGive={Object.fromEntries(still)}
        />
      </div>{' '}
    </Panel>
  )
}

function ConversionView({
  opened,
  conversion,
  index,
  item,
}: {
  opened: Opened
  conversion: Conversion
  index: number
  item: string
}) {
  const { notebook, notebookId, household, document } = opened
  const waits = waitsFor(conversion)
  const canAgree = conversion.marks[household] === undefined
  const canWithdraw =
    conversion.household === household && conversion.marks[otherHousehold(household)] === undefined
  const inputs = (
    <>
      <input type="hidden" name="index" value={index} />
      <input type="hidden" name="fingerprint" value={fingerprintOf(conversionsIn(document)[index])} />
    </>
  )
  return (
    <li className="book-entry">
      <p>
        {countsAlready(conversion) ? (
          <Status kind="agreed" text="Agreed by both" />
        ) : (
          <Status kind="open" text={`Waits for ${householdName(notebook, waits ?? household)}`} />
        )}
      </p>
      <p>{conversionWords(notebook, conversion, item)}.</p>
      <p className="quiet">
        Asked by{' '}
        <HouseholdTag household={conversion.household} name={householdName(notebook, conversion.household)} />
        , {dayWords(conversion.on)}
        {conversion.why.trim() === '' ? '' : `: ${conversion.why.trim()}`}
      </p>
      {canAgree ? (
        <PressForm action={agreeToConversion.bind(null, notebookId)} label="Agree to this" weight="main">
          {inputs}
        </PressForm>
      ) : null}
      {canWithdraw ? (
        <PressForm action={withdrawConversion.bind(null, notebookId)} label="Take it back">
          {inputs}
        </PressForm>
      ) : null}
    </li>
  )
}
