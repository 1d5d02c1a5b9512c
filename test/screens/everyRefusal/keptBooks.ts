/** A line of the plan that is bought. */
const line = (what: string, unitPrice: string) => ({ what, quantity: '1', unitPrice, suppliedBy: 'bought' })
const halves = { together: { principle: 'equal' } }
const on = '2026-05-20'
const both = { a: { on }, b: { on } }

const spentOn = (item: string, what: string, place: string, amount: string) => [
  { item, pot: 'materials', what, place, amount },
]
/** Goods whose amount is above what they are worth by weight. */
const worth = { documented: '90.00', weight: '100', unit: 'lb', yardPrice: '0.40', saidBy: 'the yard' }
const entry = (household: 'a' | 'b', kind: string, amount: string, note: string, more: object = {}) => ({
  household,
  kind,
  amount,
  date: on,
  ...(kind === 'transfer' ? { means: 'in cash' } : { for: 's1' }),
  note,
  enteredBy: household,
  ...more,
})

/** The line of a receipt that the plan no longer has. */
const gone = (amount: string) => ({ lines: spentOn('s1', 'barbed wire', '9', amount) })

/** Where each entry of the books below stands. */
export const places = { wireOfB: 3, barnRails: 5, loftTiles: 6, paidByB: 7, paidByA: 8, struck: 9 } as const

/**
 * An invented fence whose books hold what can be pressed: receipts for lines that stand and for one that is gone, goods above
 * their value, a payment of each household that waits, an entry that was taken back, a leftover that one has marked. The
 * rails came to 170.00, and building alone was to cost 160.00.
 */
export const keptBooks = {
  format: 'mearing-notebook',
  version: 1,
  title: 'Heron Bank',
  currency: 'USD',
  households: {
    a: { name: 'Heron House', parties: [{ name: 'Petra Quillon', capacity: 'owner' }] },
    b: { name: 'Bank Cottage', parties: [{ name: 'Emrys Vant', capacity: 'owner' }] },
  },
  sections: [
    {
      id: 's1',
      name: 'Along the bank',
      materials: [line('mesh', '60.00'), line('posts', '40.00')],
      labour: [
        { task: 'set the posts', hours: '10', rate: '20.00', by: 'a', ceiling: '12' },
        { task: 'clear the bank', hours: '2', rate: '20.00', by: 'b', counts: false },
      ],
      share: halves,
    },
    {
      id: 's2',
      name: 'Up the slope',
      materials: [line('rails', '100.00')],
      share: {
        together: {
          principle: 'saving',
          aloneA: '80.00',
          aloneB: '80.00',
          sourceA: 'an offer',
          sourceB: 'an offer',
        },
      },
    },
  ],
  gates: [{ id: 'g1', name: 'Willow gate', materials: [line('hinge', '20.00')], share: halves }],
  contributions: [
    entry('a', 'cash', '60.00', 'mesh, first roll', { lines: spentOn('s1', 'mesh', '1', '60.00') }),
    entry('a', 'cash', '170.00', 'rails', { for: 's2', lines: spentOn('s2', 'rails', '1', '170.00') }),
    entry('a', 'cash', '9.00', 'wire of a', gone('9.00')),
    entry('b', 'cash', '8.00', 'wire of b', gone('8.00')),
    entry('a', 'material', '90.00', 'pipe from the yard', { valuation: worth }),
    entry('a', 'material', '90.00', 'rails from the barn', { valuation: { ...worth, marks: both } }),
    entry('b', 'material', '90.00', 'tiles from the loft', {
      enteredBy: 'a',
      valuation: { ...worth, marks: both },
    }),
    entry('b', 'transfer', '20.00', 'a part of b', { waits: true }),
    entry('a', 'transfer', '15.00', 'a part of a', { waits: true }),
    entry('a', 'cash', '12.00', 'staples', { struck: { on, by: 'a', why: 'entered twice' } }),
  ],
  books: {
    bought: [
      { item: 's2', pot: 'materials', what: 'rails', place: '1', amount: '170.00', marks: { b: { on } } },
    ],
    things: [
      {
        kind: 'leftover',
        what: 'mesh, 12 ft',
        item: 's1',
        household: 'b',
        value: '20.00',
        marks: { a: { on } },
      },
    ],
  },
} as const

/** An entry more, for the mesh. */
export const meshEntry = (kind: 'cash' | 'refund', amount: string) =>
  entry('b', kind, amount, 'mesh once more', { lines: spentOn('s1', 'mesh', '1', amount) })

/** The same entries with one of them changed. */
export const withEntry =
  (place: number, change: (entry: Record<string, unknown>) => Record<string, unknown>) =>
  (entries: readonly Record<string, unknown>[]) =>
    entries.map((one, at) => (at === place ? change(one) : one))

/** Who marked what in the books. */
export { both, on, spentOn }
