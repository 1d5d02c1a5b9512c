import { describe, expect, test } from 'vitest'
import { brokenHistoryAdvice, historyHeadWords, sealedHistoryWords } from '../../lib/words/happeningText.ts'
import {
  messageKindMeaning,
  messageStart,
  unansweredObjections,
  unansweredWords,
} from '../../lib/words/messageText.ts'
import {
  endOfDay,
  lastDayOf,
  readerContentWords,
  readerLinkState,
  shownRevisionWords,
  typedTextCaution,
  untilWords,
} from '../../lib/words/readerText.ts'
import { readingGrade } from './readingGrade.ts'

describe('an objection', () => {
  const objection = (id: number) => ({ id, kind: 'objection', itemKey: 'line' }) as const
  const answer = (id: number, answers: number) => ({ id, kind: 'answer', itemKey: 'line', answers }) as const

  test('waits until it is answered; what asks for nothing does not wait', () => {
    const messages = [
      objection(1),
      { id: 2, kind: 'remark', itemKey: 'line' } as const,
      objection(3),
      answer(4, 1),
      objection(5),
    ]
    expect(unansweredObjections(messages).map(({ id }) => id)).toEqual([3, 5])
    expect(unansweredObjections([...messages, answer(6, 3), answer(7, 5), answer(8, 5)])).toEqual([])
  })

  test('is counted in words', () => {
    expect(unansweredWords(1)).toBe('1 objection not answered')
    expect(unansweredWords(2)).toBe('2 objections not answered')
  })
})

test('a long message is told by its beginning, on one line', () => {
  expect(messageStart(' Too\n high. ')).toBe('Too high.')
  expect(messageStart('x'.repeat(61))).toBe(`${'x'.repeat(59)}…`)
})

describe('the days of a link', () => {
  test('are those of UTC, the last one included', () => {
    const expiresAt = endOfDay('2028-02-29')
    expect(expiresAt.toISOString()).toBe('2028-03-01T00:00:00.000Z')
    expect(lastDayOf(expiresAt)).toBe('2028-02-29')
    expect(untilWords(expiresAt)).toBe('29 February 2028, world time')
  })

  test('and its end say whether it works', () => {
    const link = { expiresAt: endOfDay('2027-01-01') }
    expect(readerLinkState(link, new Date('2027-01-01T23:59:59.999Z'))).toBe('open')
    expect(readerLinkState(link, new Date('2027-01-02T00:00:00Z'))).toBe('run out')
    const ended = { ...link, revokedAt: new Date('2026-01-01T00:00:00Z') }
    expect(readerLinkState(ended, new Date('2026-06-01T00:00:00Z'))).toBe('ended')
  })
})

test('what readers and households are told reads at grade 8 or below, sentence by sentence', () => {
  const texts = [
    ...Object.values(readerContentWords).flatMap(({ holds, toReader }) => [holds, toReader]),
    ...Object.values(messageKindMeaning),
    typedTextCaution,
    shownRevisionWords(2, 'summary'),
    shownRevisionWords(undefined, 'summary'),
    shownRevisionWords(undefined, 'everything'),
    historyHeadWords({ entry: 4 }),
    sealedHistoryWords(2, 14, true),
    sealedHistoryWords(2, 14, false),
    brokenHistoryAdvice,
  ]
  expect(texts.filter((text) => text.split(' ').length >= 8 && readingGrade(text) > 8)).toEqual([])
})
