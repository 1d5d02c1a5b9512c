import { shortNotebook } from '../shortNotebook.ts'
import { choose, put, trySaving } from '../typing.ts'
import { pressed } from './pressing.ts'
import type { RefusalGroup, RefusalRow } from './refusalRow.ts'
import { given, withKeys } from './storeBeside.ts'

type Page = Parameters<RefusalRow['press']>[0]

const [section] = shortNotebook.sections
const [gate] = shortNotebook.gates
const halves = { principle: 'equal' }
const shared = (id: string, name: string, share: object, more: object = {}) => ({
  ...section,
  id,
  name,
  share,
  ...more,
})
const saving = (aloneA: string, aloneB: string) => ({
  together: { principle: 'saving', aloneA, aloneB, sourceA: 'an offer', sourceB: 'an offer' },
})
const auger = {
  id: 'c1',
  name: 'Auger hire',
  materials: [{ what: 'auger', quantity: '1', unitPrice: '90.00', suppliedBy: 'bought' }],
  share: { together: halves },
  spread: 'cost',
}
const putUp = { at: '/sign', press: pressed('Put revision 1 up for signing') }

const agreed = {
  at: '/arrangements',
  press: (page: Page) => trySaving(page, 'Save what is agreed'),
}
const plan = 'arrangements.instalments'
/** Begins a payment plan of these parts. */
const inParts = async (page: Page, total: string, parts: readonly (readonly [string, string])[]) => {
  await page.getByRole('button', { name: 'One household pays in instalments' }).click()
  await put(page, `${plan}.total`, total)
  for (const [at, [on, amount]] of parts.entries()) {
    if (at > 0) await page.getByRole('button', { name: 'Add an instalment' }).click()
    await put(page, `${plan}.parts[${at}].on`, on)
    await put(page, `${plan}.parts[${at}].amount`, amount)
  }
}

/** What is agreed beside the shares, and shares that can't be worked out, which nobody can sign. */
export const agreedRefusals: RefusalGroup = {
  about: 'what is agreed, and what nobody can sign yet',
  notebook: { ...shortNotebook, contributions: [], arrangements: {} },
  rows: [
    {
      ...agreed,
      what: 'a quote of nobody and of a day to come, a tolerance beyond all, and instalments of neither household',
      refuses: [
        'arrangementRefusals.quoteSource',
        'arrangementRefusals.quoteDay',
        'fault.percent-range',
        'pressRefusals.unchosen',
      ],
      typed: async (page) => {
        await put(page, 'arrangements.rates.skilled.quote', '46.50')
        await put(page, 'arrangements.rates.plain.on', '2093-01-20')
        await put(page, 'arrangements.tolerance', '101')
        await inParts(page, '100.00', [['2027-05-01', '100.00']])
      },
      says: [
        'Needed: who gave this quote, such as “a welding shop in town, by phone”.',
        '20 January 2093 is yet to come: today is ',
        '"101" is more than 100; a percentage lies between 0 and 100.',
        'Needed: choose one of the answers.',
      ],
      keeps: [
        ['arrangements.rates.skilled.quote', '46.50'],
        [`${plan}.parts[0].amount`, '100.00'],
      ],
      names: {
        'arrangements.rates.skilled.quoteFrom':
          'who gave this quote, such as “a welding shop in town, by phone”.',
        'arrangements.rates.plain.on': 'Enter the day on which the quote was given.',
        'arrangements.tolerance': '"101" is more than 100; a percentage lies between 0 and 100.',
        [`${plan}.from`]: 'choose one of the answers.',
      },
    },
    {
      ...agreed,
      what: 'instalments that fall short of their total, one before the one above it',
      refuses: ['fault.instalments-sum', 'fault.instalments-order'],
      typed: async (page) => {
        await inParts(page, '100.00', [
          ['2027-05-01', '60.00'],
          ['2027-04-01', '30.00'],
        ])
        await choose(page, `${plan}.from`, 'b')
      },
      says: [
        'The instalments add to 90.00, 10.00 less than the total of 100.00; they have to add to exactly the total.',
        '1 April 2027 lies before 1 May 2027, the day of the instalment above it; put the instalments in the order of their days.',
      ],
      keeps: [[`${plan}.parts[1].amount`, '30.00']],
    },
    {
      ...agreed,
      what: 'instalments of a total that the plan does not ask for',
      refuses: 'arrangementRefusals.total',
      typed: async (page) => {
        await inParts(page, '1.00', [['2027-05-01', '1.00']])
        await choose(page, `${plan}.from`, 'b')
      },
      says: 'than this total of $1.00. Change the total, or tick that it is meant.',
      keeps: [[`${plan}.total`, '1.00']],
      names: 'totalIsMeant',
    },
    {
      ...putUp,
      what: 'a notebook is put up that lacks parties, and whose shares can’t be worked out for many reasons',
      refuses: [
        'signingRefusals.notYet',
        'obstacle.not agreed',
        'obstacle.no party',
        'obstacle.party unnamed',
        'obstacle.party without capacity',
        'obstacle.unknown key',
        'obstacle.fault',
        'fault.saving-dearer',
        'fault.saving-outside',
        'fault.weights-zero',
        'fault.pot-below-zero',
        'fault.spread-waits',
      ],
      ...given(
        withKeys({
          hedge: 'privet',
          households: {
            a: { name: 'Heron House', parties: [{ name: '', capacity: '' }] },
            b: { name: 'Bank Cottage', parties: [] },
          },
          sections: [
            shared('s1', 'Along the bank', saving('200.00', '199.00')),
            shared('s2', 'Up the slope', saving('900.00', '100.00')),
            shared('s3', 'By the willow', {
              together: { principle: 'length', a: '0 ft', b: '0 ft' },
            }),
            shared(
              's4',
              'Behind the shed',
              { together: halves },
              {
                materials: [
                  { what: 'old rails', quantity: '1', unitPrice: '9.00', suppliedBy: 'bought', credit: true },
                ],
                labour: [],
              },
            ),
          ],
          gates: [{ ...gate, uses: {}, share: { together: { principle: 'use' } } }],
          common: [auger],
        }),
      ),
      says: [
        'It can’t be put up for signing yet. The file has a key that this program does not know: hedge.',
        'Building together (500.00) costs 101.00 more than building alone (399.00 in all), so there is no saving to share; correct the figures',
        'nobody can be asked for less than nothing or more than the pot; correct the figures for building alone',
        'There is something to share by length, but both figures are zero; enter a figure above zero',
        'Credits take the pot 9.00 below zero; a pot may not be less than nothing. Lower the credits',
        'This cost is laid on the sections and gates, and some can\'t be shared yet: "Along the bank"',
        'Party 1 of Heron House has no name.',
        'Party 1 of Heron House has not said yet as what it signs, such as “owner”.',
        'Bank Cottage has no party yet who could sign: name a person who does.',
        'not marked as agreed by Heron House and Bank Cottage.',
      ],
    },
    {
      ...putUp,
      what: 'a notebook is put up with nothing to build, and a cost that is to be laid on what is built',
      refuses: ['obstacle.nothing to build', 'fault.spread-nowhere'],
      ...given(withKeys({ sections: [], gates: [], common: [auger] })),
      says: [
        'This cost is to be laid on the sections and gates, but there is none yet; add one, or share this cost by itself.',
        'There is no section and no gate yet.',
      ],
    },
    {
      ...putUp,
      what: 'a notebook is put up whose caps leave a part of the cost to nobody',
      refuses: 'fault.caps-short',
      ...given(withKeys({ caps: { a: '100.00', b: '50.00' } })),
      says: ['fall ', 'short of the total of ', 'raise one of them or take it away.'],
    },
  ],
}
