import { longestMessage } from '../../../lib/words/messageText.ts'
import { longestNeedNote, longestOwnNeed } from '../../../lib/words/needText.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { put, trySaving } from '../typing.ts'
import { all, pressed, rewriting, sending } from './pressing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'
import { meanwhile, withList } from './storeBeside.ts'

type Page = Parameters<RefusalRow['press']>[0]

const needs = { at: '/needs', form: 'needs', press: (page: Page) => trySaving(page, 'Keep our needs') }
const addOwn = (page: Page) => page.getByRole('button', { name: 'Add a need of our own' }).click()
const note = 'y'.repeat(longestNeedNote + 1)
const ownNeed = 'z'.repeat(longestOwnNeed + 1)

const passages = {
  at: '/item/g1',
  form: 'passages',
  press: (page: Page) => trySaving(page, 'Keep our count'),
}
const counting = async (page: Page) => {
  const fold = page.locator('summary', { hasText: /^(Count again|Correct your count)/ })
  if ((await fold.count()) > 0) await fold.first().click()
}

/** One of the five answers; each has its words and, where it asks for one, a day or what it is about. */
const answer = (name: string, fields?: Readonly<Record<string, string>>) => ({
  by: 'b' as const,
  at: '/welcome',
  ...(fields ? { typed: sending(name, fields) } : {}),
  press: pressed(name),
})
const question = 'Answer: a question'
const notNow = 'Answer: not now'
/** A day that is not past yet. */
const soon = new Date(Date.now() + 30 * 86_400_000).toISOString().slice(0, 10)
const within = (page: Page, name: string) => page.locator('form', { has: page.getByRole('button', { name }) })
const words = (page: Page) => within(page, question).locator('textarea')
const day = (page: Page) => within(page, notNow).locator('input[name=until]')

/** What each household says apart: what it needs, how often it passes, what it answers first. */
export const saidApartRefusals: RefusalGroup = {
  about: 'what each household says for itself',
  notebook: {
    ...shortNotebook,
    gates: [
      { ...shortNotebook.gates[0], uses: {} },
      {
        ...shortNotebook.gates[0],
        id: 'g2',
        name: 'Upper gate',
        at: '50 ft',
        uses: {},
        passages: { a: { a: '7', b: '3' }, b: { a: '5', b: '5' } },
      },
    ],
  },
  rows: [
    {
      ...needs,
      what: 'a household says no need at all',
      refuses: 'needFaults.nothing',
      says: 'Needed: say at least one need, above or in your own words.',
    },
    {
      ...needs,
      what: 'needs without their weight, twice, too long, or among the six',
      refuses: [
        'needFaults.unmeant',
        'needFaults.noteTooLong',
        'needFaults.words',
        'needFaults.weight',
        'needFaults.ofTheSix',
        'needFaults.twice',
        'needFaults.ownTooLong',
      ],
      typed: async (page) => {
        await put(page, 'kinds.privacy.words', 'the terrace', 'needs')
        await put(page, 'kinds.light.words', note, 'needs')
        for (const [at, text] of ['', 'privacy', 'a seat', 'a seat', ownNeed].entries()) {
          await addOwn(page)
          await put(page, `own[${at}].words`, text, 'needs')
        }
      },
      says: [
        'You wrote something here. Choose must have or would like, or take the words out.',
        `At most ${longestNeedNote} characters; this has ${longestNeedNote + 1}.`,
        'Needed: what your household needs, in a few words.',
        'Needed: must have, or would like.',
        'This is one of the six above; choose it there.',
        'This need stands above already; say it once.',
        `At most ${longestOwnNeed} characters; this has ${longestOwnNeed + 1}.`,
      ],
      keeps: [
        ['kinds.privacy.words', 'the terrace'],
        ['own[3].words', 'a seat'],
        ['own[4].words', ownNeed],
      ],
      names: {
        'kinds.light.words': `At most ${longestNeedNote} characters; this has ${longestNeedNote + 1}.`,
        'own[0].words': 'what your household needs, in a few words.',
        'own[1].words': 'This is one of the six above; choose it there.',
        'own[3].words': 'This need stands above already; say it once.',
      },
    },
    {
      ...needs,
      what: 'more needs of its own than there is room for, where a browser sends them all the same',
      refuses: 'needFaults.tooMany',
      typed: all(
        rewriting('{"words":"a seat","weight":""}', Array(13).fill('{"words":"s","weight":"must"}').join()),
        async (page) => {
          await addOwn(page)
          await put(page, 'own[0].words', 'a seat', 'needs')
        },
      ),
      says: 'At most 12 needs of your own; put some of them together.',
      keeps: [['own[0].words', 'a seat']],
    },
    {
      ...passages,
      what: 'passages that are left out, or no figure',
      refuses: ['countFaults.needed', 'fault.number-form'],
      typed: async (page) => {
        await counting(page)
        await put(page, 'b', 'often', 'passages')
      },
      says: [
        'Needed: a number of passages a week; 0 if there are none.',
        '"often" can\'t be read as a number',
      ],
      keeps: [['b', 'often']],
      names: {
        a: 'a number of passages a week; 0 if there are none.',
        b: '"often" can\'t be read as a number',
      },
    },
    {
      ...passages,
      what: 'passages of a gate that was removed meanwhile',
      refuses: 'countFaults.gateGone',
      ...meanwhile(withList('gates', (gates) => gates.slice(1))),
      typed: async (page) => {
        await counting(page)
        await put(page, 'a', '7', 'passages')
        await put(page, 'b', '3', 'passages')
      },
      says: 'This gate was removed in the meantime.',
      keeps: [['b', '3']],
    },
    {
      what: 'one of two counts is taken after they were changed',
      refuses: 'countFaults.changed',
      at: '/item/g2',
      ...meanwhile(withList<object>('gates', ([first, second]) => [first, { ...second, notes: 'oiled' }])),
      press: pressed('We take our own count'),
      says: 'The counts were changed since you opened the page. Load the page again, and look at them as they are now.',
    },
    {
      ...answer(question),
      what: 'a question without words',
      refuses: 'firstAnswerRefusals.question',
      says: 'Your question: needed, what you want to ask.',
    },
    {
      ...answer(question, { text: 'x'.repeat(longestMessage + 1) }),
      what: 'a question that is too long, where a browser sends it all the same',
      refuses: 'firstAnswerRefusals.tooLong',
      says: `Your words: at most ${longestMessage} characters; this has ${longestMessage + 1}.`,
      keeps: [[words, 'x'.repeat(longestMessage + 1)]],
    },
    {
      ...answer(question, { text: 'Is it to stay?', about: 'item:g1' }),
      what: 'a question about a gate that was removed meanwhile',
      refuses: 'firstAnswerRefusals.about',
      ...meanwhile(withList('gates', (gates) => gates.slice(1))),
      says: 'What it is about: this item was removed in the meantime. Choose another, or the whole fence.',
      keeps: [[words, 'Is it to stay?']],
    },
    {
      ...answer(notNow),
      what: 'not now, without a day',
      refuses: 'firstAnswerRefusals.day',
      says: 'The day: needed, when to ask again.',
    },
    {
      ...answer(notNow, { until: '2020-02-03' }),
      what: 'not now, but on a day that is past',
      refuses: 'firstAnswerRefusals.past',
      says: 'The day: it is past. Choose today or a later day.',
      keeps: [[day, '2020-02-03']],
    },
    {
      ...answer(notNow, { until: '2093-02-03' }),
      what: 'not now, but in many years',
      refuses: 'firstAnswerRefusals.tooFar',
      says: 'The day: at most two years from now, so ',
      keeps: [[day, '2093-02-03']],
    },
    {
      ...answer(notNow),
      what: 'not now, but on no day of the calendar, where a browser sends it all the same',
      refuses: 'firstAnswerRefusals.noDay',
      typed: all(rewriting(soon, '2027-02-30'), sending(notNow, { until: soon })),
      says: 'The day: this is no day of the calendar. Choose one that is.',
      keeps: [[day, soon]],
    },
    {
      ...answer(notNow, { answer: 'perhaps' }),
      what: 'an answer that is none of the five, where a browser sends it all the same',
      refuses: ['firstAnswerRefusals.unknown', 'pressRefusals.unreadable'],
      says: 'This press could not be read. Load the page again.',
    },
    {
      ...answer(question, { text: 'May I?' }),
      what: 'the household that invited answers from a page that it opened as the other',
      refuses: 'firstAnswerRefusals.notInvited',
      meanwhile: async ({ a, b }) => {
        const own = await b.page.context().cookies()
        await b.page.context().addCookies(await a.page.context().cookies())
        seat = own
      },
      says: 'Only the invited household answers; you are in as the first.',
      keeps: [[words, 'May I?']],
      after: ({ b }) => b.page.context().addCookies(seat),
    },
  ],
}

/** By what the second household is let in, while its browser is in as the first. */
let seat: Awaited<ReturnType<ReturnType<Page['context']>['cookies']>> = []
