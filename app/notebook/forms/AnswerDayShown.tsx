'use client'

import { earliestAnswerDay, emptyLetter } from '../../../lib/core/agreement/firstLetter.ts'
import { isCalendarDay } from '../../../lib/core/amounts/calendarDay.ts'
import { noticeEnds } from '../../../lib/words/letter/letterFaultText.ts'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { getAt } from '../../ui/draft/draftPath.ts'

/** The end of the notice as the form stands, while it is typed. */
export function AnswerDayShown() {
  const { draft } = useDraft()
  const [on, noticeDays] = [getAt(draft, 'letter.on'), getAt(draft, 'letter.noticeDays')]
  const day =
    typeof on === 'string' && typeof noticeDays === 'string' && isCalendarDay(on)
      ? earliestAnswerDay({ ...emptyLetter, on, noticeDays })
      : undefined
  return (
    <p className="field-reading" role="status">
      {day === undefined ? '' : noticeEnds(day)}
    </p>
  )
}
