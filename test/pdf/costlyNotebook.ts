import { notebookWith } from './madeSummary.ts'

/**
 * A notebook in which every figure of money, every hour, every share, every need and every name of a cost is one that
 * stands nowhere else, so that it can be looked for.
 */
export function costlyNotebook() {
  return notebookWith(costlyDocument())
}

export function costlyDocument(): Record<string, unknown> {
  return {
    title: 'Weir line',
    caps: { a: '70101010101.01', b: '70202020202.02' },
    households: {
      a: { name: 'Weir House', parties: [{ name: 'Oona Talbrick', capacity: 'owner' }] },
      b: { name: 'Sluice Cottage', parties: [{ name: 'Piers Umber', capacity: 'owner' }] },
    },
    line: { stations: [{ at: '0 ft', setback: { side: 'a', distance: '2 in' } }, { at: '40 ft' }] },
    sections: [
      {
        id: 's1',
        name: 'Beside the mill',
        from: '0 ft',
        to: '20 ft',
        height: { agreed: '5 ft', measuredFrom: 'a' },
        infill: 'split slats',
        notes: 'The slats stand upright.',
        materials: [
          line('quondam pipe', '71101', '71102.13', { taxPercent: '71.91' }),
          line('sidereal scrap', '71103', '1.37', { credit: true }),
        ],
        labour: [
          { task: 'lathering', hours: '71104.25', rate: '71.23', by: 'a' },
          { task: 'giftwork', hours: '71105.75', rate: '71.37', by: 'b', counts: false },
        ],
        share: {
          materials: {
            principle: 'difference',
            basic: '71106.17',
            basicShare: { principle: 'percent', a: '71.071', b: '28.929' },
            upgradeShare: { principle: 'benefit', a: '71.29', b: '71.31' },
          },
          labour: { principle: 'length', a: '71107 ft', b: '71108 ft' },
        },
      },
    ],
    gates: [
      {
        id: 'g1',
        name: 'Lock gate',
        at: '30 ft',
        opening: '4 ft',
        stands: 'line',
        uses: { a: '71109', b: '71110' },
        opens: 'both ways',
        materials: [line('hinge brawn', '71111', '72.19')],
        labour: [{ task: 'hanging', hours: '71112.5', rate: '72.29', by: 'hired' }],
        share: { materials: { principle: 'use' }, labour: { principle: 'one', household: 'a' } },
      },
    ],
    common: [
      {
        id: 'c1',
        name: 'Haulage pool',
        notes: 'Quartered among friends.',
        materials: [line('lorry days', '71113', '73.19')],
        labour: [],
        share: { together: { principle: 'equal' } },
      },
    ],
    contributions: [
      { household: 'a', kind: 'cash', amount: '71114.83', date: '2027-01-02', note: 'till roll' },
      {
        household: 'b',
        kind: 'hours',
        hours: '71115.5',
        rate: '74.19',
        date: '2027-01-03',
        note: 'dawn shift',
      },
    ],
    terms: [{ topic: 'line', text: 'The strip is used by permission.' }],
    checks: [{ what: 'Permit office asked', who: 'a', on: '2027-01-01', answer: 'Up to 6 ft.', done: true }],
    dates: [{ what: 'Marks of buried services run out', on: '2027-02-20', household: 'a' }],
    closing: {
      on: '2027-05-01',
      asBuilt: [{ what: 'Height at the weir', measured: '5 ft 1 in' }],
      upkeep: [{ what: 'Oil the hinges', household: 'b', every: 'year' }],
    },
    decisions: [{ on: '2027-02-12', text: 'The alder stays.' }],
  }
}

function line(what: string, quantity: string, unitPrice: string, more: object = {}) {
  return { what, quantity, unit: 'fardel', unitPrice, suppliedBy: 'bought', ...more }
}

/** What nobody without costs may read: all of it is in `costlyDocument`, and none of it says where or how the fence stands. */
export const costlyWords: readonly string[] = [
  ...['quondam', 'sidereal', 'lathering', 'giftwork', 'hinge brawn', 'hanging', 'Haulage', 'Quartered'],
  ...['lorry', 'till roll', 'dawn shift', 'fardel'],
  ...['70101', '70202', '70,101', '70,202'],
  ...['71.', '72.', '73.', '74.', '28.929', '1.37'],
  // Every other figure of the document begins with 711 and counts on; with and without a comma for the thousands.
  ...['711', '71,1'],
]
