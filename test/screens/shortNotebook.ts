const halves = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }

/** A short notebook of an invented fence: one section, one gate, and one entry in the book that speaks of the section. */
export const shortNotebook = {
  format: 'mearing-notebook',
  version: 1,
  title: 'Heron Bank',
  currency: 'USD',
  units: 'ft-in',
  households: {
    a: { name: 'Heron House', parties: [{ name: 'Petra Quillon', capacity: 'owner' }] },
    b: { name: 'Bank Cottage', parties: [{ name: 'Emrys Vant', capacity: 'owner' }] },
  },
  line: { start: 'gatepost', end: 'willow', evidence: 'plan', stations: [{ at: '0 ft' }, { at: '60 ft' }] },
  sections: [
    {
      id: 's1',
      name: 'Along the bank',
      from: '0 ft',
      to: '60 ft',
      height: { agreed: '5 ft', measuredFrom: 'higher' },
      infill: 'mesh',
      materials: [{ what: 'mesh', quantity: '60', unit: 'ft', unitPrice: '5.00', suppliedBy: 'bought' }],
      labour: [{ task: 'set the posts', hours: '10', rate: '20.00', by: 'a' }],
      share: halves,
    },
  ],
  gates: [
    {
      id: 'g1',
      name: 'Willow gate',
      at: '30 ft',
      opening: '4 ft',
      stands: 'line',
      uses: { a: '7', b: '3' },
      materials: [{ what: 'gate', quantity: '1', unitPrice: '250.01', suppliedBy: 'bought' }],
      labour: [{ task: 'hang it', hours: '5', rate: '20.00', by: 'b' }],
      share: halves,
    },
  ],
  contributions: [
    {
      household: 'a',
      kind: 'cash',
      amount: '120.00',
      date: '2027-05-04',
      for: 's1',
      note: 'mesh, first roll',
    },
  ],
} as const
