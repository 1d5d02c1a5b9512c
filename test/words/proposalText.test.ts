import { describe, expect, test } from 'vitest'
import type { ProposalRefusal } from '../../lib/core/agreement/proposalRefusal.ts'
import { distanceBetween } from '../../lib/core/shares/distance.ts'
import { distanceCauses } from '../../lib/core/shares/plansBetween.ts'
import { proposalEnds } from '../../lib/store/proposalRows.ts'
import {
  apartInAllWords,
  apartWords,
  capsSentence,
  causeWords,
  distanceSentences,
  itemStepSentences,
  movesWords,
  stepSentences,
  stepsNote,
} from '../../lib/words/distanceText.ts'
import {
  acceptQuestion,
  endWords,
  proposalRefusalWords,
  proposalWords,
  proposedChangeWords,
  sinceProposedWords,
  thenProposedWords,
  waitingProposalsWords,
} from '../../lib/words/proposalText.ts'
import { shareNames } from '../../lib/words/shareText.ts'
import { bought, halves, notebookWith } from '../core/madeNotebook.ts'
import { readingGrade } from './readingGrade.ts'

const names = shareNames(notebookWith())
const said = { first: 'what no. 12 proposes', second: 'what no. 14 proposes' }
const titleOfAny = () => 'Lane'

function apart(one: Record<string, unknown>, other: Record<string, unknown>) {
  const found = distanceBetween(notebookWith(one), notebookWith(other))
  if (!found.ok) throw new Error('both can be shared')
  return found.value
}

/** One section of 100.00, or of another price, shared in these parts. */
const shared = (a: string, b: string, price = '100', more: Record<string, unknown> = {}) => ({
  sections: [
    {
      id: 's1',
      materials: [bought(price)],
      share: { ...halves, materials: { principle: 'percent', a, b } },
    },
  ],
  ...more,
})

describe('a distance, in words', () => {
  test('in one figure where both plans cost the same', () => {
    const distance = apart(shared('50', '50'), shared('60.01', '39.99'))
    expect(distanceSentences(distance, said, names, titleOfAny)).toEqual([
      'For the whole fence, after caps, what no. 12 proposes asks $50.00 of no. 12 and $50.00 of no. 14; what no. 14 proposes asks $60.01 of no. 12 and $39.99 of no. 14.',
      'That is $10.01 apart.',
      'Halfway is $55.01 for no. 12 and $44.99 for no. 14.',
      'The odd $0.01 goes to no. 12.',
    ])
    expect(stepSentences(distance.steps, names)).toEqual([
      'How it is shared: asks no. 12 for $10.01 more and no. 14 for $10.01 less.',
    ])
  })

  test('in two figures where they cost differently', () => {
    const distance = apart(shared('50', '50'), shared('60', '40', '200'))
    expect(distanceSentences(distance, said, names, titleOfAny)).toContain(
      'The two cost differently. They are apart by $70.00 for no. 12, $30.00 for no. 14.',
    )
    expect(stepSentences(distance.steps, names)).toEqual([
      'Prices and tax: asks no. 12 for $50.00 more and no. 14 for $50.00 more.',
      'How it is shared: asks no. 12 for $20.00 more and no. 14 for $20.00 less.',
    ])
  })

  test('none, where both ask for the same; and where only the caps make it the same', () => {
    const plan = shared('50', '50')
    expect(distanceSentences(apart(plan, plan), said, names, titleOfAny)).toEqual([
      'For the whole fence both ask for the same, after caps: $50.00 of no. 12 and $50.00 of no. 14.',
    ])
    const caps = { caps: { b: '40' } }
    const evened = apart(shared('50', '50', '100', caps), shared('30', '70', '100', caps))
    expect(distanceSentences(evened, said, names, titleOfAny)).toEqual([
      'For the whole fence both ask for the same, after caps: $60.00 of no. 12 and $40.00 of no. 14.',
      'Item by item they still differ: Lane by $20.00. The caps even it out.',
    ])
    expect(apartInAllWords(evened, names)).toBe('The same in all, 1 item apart')
    expect(apartInAllWords(apart(plan, plan), names)).toBe('Both ask for the same')
    expect(apartInAllWords(apart(plan, shared('60', '40')), names)).toBe('$10.00 apart')
    expect(capsSentence(evened.caps, names)).toBe(
      'Caps: asks no. 12 for $20.00 more and no. 14 for $20.00 less.',
    )
    expect(capsSentence({ a: 0n, b: 0n }, names)).toBeUndefined()
  })

  test('an item that nobody proposes anything for follows from the others', () => {
    const [item] = apart(shared('50', '50'), shared('60', '40')).items
    if (item === undefined) throw new Error('it moves')
    expect(itemStepSentences(item, false, names)).toEqual([
      'It follows from the other items, and asks no. 12 for $10.00 more and no. 14 for $10.00 less.',
    ])
    expect(itemStepSentences(item, true, names)).toHaveLength(1)
  })

  test('each household is named only where it is asked for something else', () => {
    expect(movesWords({ a: 0n, b: -250n }, names)).toBe('asks no. 14 for $2.50 less')
    expect(movesWords({ a: 0n, b: 0n }, names)).toBeUndefined()
    expect(apartWords({ a: 5n, b: -5n }, names)).toBe('$0.05')
  })

  test('every kind of difference has words of its own, and they stand in the order that the note gives', () => {
    const words = distanceCauses.map((cause) => causeWords[cause])
    expect(new Set(words).size).toBe(distanceCauses.length)
    const places = words.map((one) => stepsNote.indexOf(one))
    expect(places).toEqual([...places].sort((left, right) => left - right))
    expect(places.every((place) => place >= 0)).toBe(true)
  })
})

describe('proposals, in words', () => {
  const titleOf = (id: string) => ({ s1: 'Along the lane', g1: 'The gate' })[id] ?? id

  test('every end, and the proposal that brought it', () => {
    expect(proposalEnds.map((kind) => endWords(kind))).toEqual([
      'accepted',
      'not accepted',
      'answered with another',
      'withdrawn',
    ])
    expect(endWords('answered', 3)).toBe('answered with proposal 3')
    expect(endWords('withdrawn', 3)).toBe('withdrawn when proposal 3 took its place')
  })

  test.each<[ProposalRefusal, RegExp]>([
    [{ kind: 'no items' }, /tick at least one item/],
    [{ kind: 'items gone', items: ['s9'] }, /No longer in the notebook: s9/],
    [
      {
        kind: 'items changed',
        items: [
          { id: 's1', keys: ['share', 'height'] },
          { id: 'g1', keys: [] },
        ],
      },
      /: Along the lane \(share, height\); The gate\..*Propose it anew/,
    ],
    [
      { kind: 'sources missing', at: [{ item: 's1', path: 'share.together.sourceA' }] },
      /where this figure comes from.*Missing for Along the lane\./,
    ],
    [{ kind: 'nothing proposed' }, /mark it on its page/],
    [
      { kind: 'does not hold', faults: [{ path: 'x', kind: 'weights-zero', principle: 'benefit' }] },
      /could not be worked out\. \S/,
    ],
    [{ kind: 'too long', length: 4001, limit: 4000 }, /At most 4000 characters; this has 4001/],
    [{ kind: 'closed', revision: 2 }, /closed by revision 2/],
    [{ kind: 'shown otherwise' }, /Load the page again, read what changed/],
    [{ kind: 'no such proposal' }, /no such proposal/],
    [{ kind: 'own' }, /withdraw it/],
    [{ kind: 'ended' }, /ended in the meantime/],
  ])('%j says what is wrong and what would help', (refusal, words) => {
    expect(proposalRefusalWords(refusal, titleOf)).toMatch(words)
  })

  test('what a proposal would have changed', () => {
    expect(thenProposedWords({ label: 'Height', before: '6 ft', after: '5 ft' })).toBe(
      'Height: 6 ft then, 5 ft proposed',
    )
    expect(thenProposedWords({ label: 'Notes', before: '(nothing)', after: 'oak' })).toBe(
      'Notes: oak proposed, nothing then',
    )
    expect(thenProposedWords({ label: 'Notes', before: 'oak', after: '(nothing)' })).toBe(
      'Notes: oak then, left out',
    )
  })

  test('what a proposal would change', () => {
    expect(proposedChangeWords({ label: 'Height', before: '6 ft', after: '5 ft' })).toBe(
      'Height: 6 ft now, 5 ft proposed',
    )
    expect(proposedChangeWords({ label: 'Notes', before: '(nothing)', after: 'oak' })).toBe(
      'Notes: oak proposed, nothing now',
    )
    expect(proposedChangeWords({ label: 'Notes', before: 'oak', after: '(nothing)' })).toBe(
      'Notes: oak now, left out',
    )
  })

  test('how many wait', () => {
    expect(waitingProposalsWords(1, 'no. 14')).toBe('1 proposal of no. 14 waits for your answer')
    expect(waitingProposalsWords(2, 'no. 14')).toBe('2 proposals of no. 14 wait for your answer')
  })

  test('say on which item a household’s figures are, and what has none any more', () => {
    const made = { number: 3, name: 'no. 14', day: '3 December 2026', title: 'Slope' }
    const changed = [{ label: 'Labour 1, hours', before: '17', after: '19' }]
    expect(sinceProposedWords({ since: 'as it was' }, made)).toBeUndefined()
    expect(sinceProposedWords({ since: 'moved on', changed }, made)).toBe(
      'Proposal 3 of no. 14 was made on 3 December 2026 for Slope as it then was. Its figures here are for the item as it is now. Changed since: labour 1, hours.',
    )
    expect(sinceProposedWords({ since: 'changed', changed }, made)).toMatch(
      /no\. 14 has no figure here until/,
    )
    expect(sinceProposedWords({ since: 'gone' }, made)).toMatch(/was removed since, so no\. 14 has no figure/)
  })

  test('say before a press whose mark is set on what', () => {
    expect(acceptQuestion('no. 12', [])).toMatch(/Both households’ marks are then set/)
    expect(acceptQuestion('no. 12', ['Slope'])).toMatch(/No\. 12 has not marked Slope as it stands now\./)
  })

  test('are plain to read', () => {
    const questions = [acceptQuestion('no. 12', []), acceptQuestion('no. 12', ['Slope'])]
    const texts = [...Object.values(proposalWords), ...questions, stepsNote]
    expect(readingGrade(texts.join('\n'))).toBeLessThan(9)
  })
})
