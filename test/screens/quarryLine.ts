import { startingChecks } from '../../lib/words/startingChecks.ts'
import { startingTerms } from '../../lib/words/startingTerms.ts'

/**
 * An invented fence between two invented households, as the two type it on screen. What is typed is exactly what the
 * notebook file holds afterwards. All figures that the walk expects are worked out by hand beside the test that uses them.
 */

export const names = { a: 'Larkspur Cottage', b: 'The Mill House' } as const

export const heading = {
  title: 'Quarry Field line',
  currency: 'USD',
  units: 'ft-in',
  households: {
    a: {
      name: names.a,
      parties: [
        { name: 'Odile Farnsby', capacity: 'owner', address: '3 Quarry Field', parcel: 'lot 21' },
        { name: 'Jory Tallåsen', capacity: 'tenant', address: '3 Quarry Field', parcel: 'lot 21' },
      ],
    },
    b: { name: names.b },
  },
} as const

/** Household b adds its own party once it has come in. */
export const partyOfB = {
  name: 'Wenna Prideaux-Łoś',
  capacity: 'trustee',
  address: '5 Quarry Field',
  parcel: 'lot 22',
} as const

export const line = {
  start: 'iron pin at the road',
  end: 'concrete monument at the brook',
  evidence: 'marks',
  stations: [
    {
      at: '0 ft',
      setback: { side: 'a', distance: '1¾ in' },
      gradeA: '0 in',
      gradeB: '-6 in',
      gradeFence: '-2 in',
    },
    {
      at: `40' 6"`,
      setback: { side: 'a', distance: '2 in' },
      gradeA: '10 in',
      gradeB: '4 in',
      gradeFence: '7 in',
    },
    {
      at: '24.5 m',
      setback: { side: 'b', distance: '3 cm' },
      gradeA: '0.61 m',
      gradeB: '0.52 m',
      gradeFence: '0.55 m',
    },
  ],
} as const

const sectionOne = {
  name: 'Road to the oak',
  from: '0 ft',
  to: `40' 6"`,
  height: { agreed: `5' 10-1/4"`, measuredFrom: 'higher' },
  infill: 'welded wire mesh, 2 in by 4 in',
  face: 'the same on both sides',
  drainage: 'falls toward the road',
  owner: 'both',
  upkeep: 'both',
  notes: 'The oak keeps 4 ft of clear ground.',
  materials: [
    {
      what: 'reclaimed pipe, 10 ft',
      quantity: '40',
      unit: 'each',
      unitPrice: '18.50',
      taxPercent: '',
      suppliedBy: 'bought',
    },
    {
      what: 'mesh, 6 ft high',
      quantity: '81',
      unit: 'ft',
      unitPrice: '6.20',
      taxPercent: '7.25',
      suppliedBy: 'bought',
    },
    {
      what: 'post caps',
      quantity: '14',
      unit: 'each',
      unitPrice: '2.45',
      taxPercent: '',
      suppliedBy: 'a',
    },
    {
      what: 'old wire, sold as scrap',
      quantity: '1',
      unit: 'lot',
      unitPrice: '45.00',
      taxPercent: '',
      suppliedBy: 'bought',
      credit: true,
    },
  ],
  labour: [
    { task: 'dig post holes', hours: '12', rate: '25.00', by: 'a' },
    { task: 'weld the rails', hours: '7.5', rate: '34', by: 'a' },
    { task: 'auger operator', hours: '3', rate: '41.50', by: 'hired' },
    { task: 'paint the rails', hours: '5', rate: '22', by: 'b', counts: false },
  ],
  share: {
    materials: {
      principle: 'difference',
      basic: '900.00',
      basicShare: { principle: 'equal' },
      upgradeShare: { principle: 'one', household: 'a' },
    },
    labour: { principle: 'percent', a: '60', b: '40' },
  },
} as const

const sectionTwo = {
  name: 'Oak to the paddock',
  from: `40' 6"`,
  to: '18 m',
  height: { agreed: '1.83 m', measuredFrom: 'b' },
  infill: 'boards, 1 in gap',
  face: 'smooth side toward household b',
  drainage: 'a 2 in gap under the lowest board',
  owner: 'both',
  upkeep: 'a',
  materials: [
    {
      what: 'boards',
      quantity: '20',
      unit: 'each',
      unitPrice: '31.00',
      taxPercent: '',
      suppliedBy: 'bought',
    },
  ],
  labour: [{ task: 'fix the boards', hours: '10', rate: '30', by: 'b' }],
  share: {
    materials: { principle: 'length', a: '12 m', b: '8.5 m' },
    labour: { principle: 'benefit', a: '3', b: '2' },
  },
} as const

const sectionThree = {
  name: 'Paddock end',
  from: '18 m',
  to: '24.5 m',
  height: { agreed: '4 ft', measuredFrom: 'lower' },
  infill: 'sheep wire',
  owner: 'b',
  upkeep: 'b',
  materials: [
    {
      what: 'sheep wire and staples',
      quantity: '1',
      unit: 'lot',
      unitPrice: '500',
      taxPercent: '',
      suppliedBy: 'bought',
    },
  ],
  labour: [{ task: 'stretch the wire', hours: '20', rate: '15', by: 'b' }],
  share: {
    together: {
      principle: 'saving',
      aloneA: '700.00',
      aloneB: '500.00',
      sourceA: 'an offer of 2 March',
      sourceB: 'own reckoning',
    },
  },
} as const

export const sections = [sectionOne, sectionTwo, sectionThree] as const

const orchardGate = {
  name: 'Orchard gate',
  at: '15 m',
  opening: '4 ft',
  stands: 'line',
  uses: { a: '7', b: '3' },
  opens: 'toward household a',
  latch: 'gravity latch, both sides',
  keys: 'none',
  owner: 'both',
  upkeep: 'both',
  notes: 'Closed at dusk.',
  materials: [
    {
      what: 'gate, hinges, latch',
      quantity: '1',
      unit: 'set',
      unitPrice: '250.00',
      taxPercent: '',
      suppliedBy: 'bought',
    },
  ],
  labour: [{ task: 'hang the gate', hours: '4', rate: '20', by: 'b' }],
  share: { materials: { principle: 'use' }, labour: { principle: 'one', household: 'b' } },
} as const

const cartGate = {
  name: 'Cart gate',
  at: '5 m',
  opening: `3' 6"`,
  stands: 'a',
  uses: { a: '12', b: '0' },
  opens: 'toward household a',
  latch: 'slide bolt',
  keys: 'one padlock',
  owner: 'a',
  upkeep: 'a',
  materials: [
    {
      what: 'cart gate, second hand',
      quantity: '1',
      unit: 'each',
      unitPrice: '180.00',
      taxPercent: '',
      suppliedBy: 'a',
    },
  ],
  labour: [],
  share: { together: { principle: 'one', household: 'a' } },
} as const

const millGate = {
  name: 'Mill gate',
  at: '21 m',
  opening: '1.2 m',
  stands: 'b',
  uses: { a: '0', b: '20' },
  opens: 'toward household b',
  latch: 'latch with a lock',
  keys: 'two, both at The Mill House',
  owner: 'b',
  upkeep: 'b',
  materials: [
    {
      what: 'gate, welded to measure',
      quantity: '1',
      unit: 'each',
      unitPrice: '166.67',
      taxPercent: '',
      suppliedBy: 'b',
    },
  ],
  labour: [{ task: 'set the gate posts', hours: '2', rate: '20', by: 'a' }],
  share: {
    together: {
      principle: 'difference',
      basic: '100.00',
      basicShare: { principle: 'equal' },
      upgradeShare: { principle: 'one', household: 'b' },
    },
  },
} as const

export const gates = [orchardGate, cartGate, millGate] as const

const augerHire = {
  name: 'Auger hire',
  notes: 'Two days, with fuel.',
  materials: [
    {
      what: 'auger',
      quantity: '2',
      unit: 'day',
      unitPrice: '95.00',
      taxPercent: '',
      suppliedBy: 'bought',
    },
  ],
  labour: [],
  share: { materials: { principle: 'percent', a: '70', b: '30' }, labour: { principle: 'equal' } },
} as const

const survey = {
  name: 'Survey of the line',
  materials: [
    {
      what: 'licensed surveyor',
      quantity: '1',
      unit: 'visit',
      unitPrice: '385.55',
      taxPercent: '',
      suppliedBy: 'bought',
    },
  ],
  labour: [],
  share: { materials: { principle: 'equal' }, labour: { principle: 'equal' } },
} as const

/** In the order in which they are typed; on screen the survey is moved up. */
export const common = [augerHire, survey] as const

/** Typed, and removed again. */
export const skipHire = {
  name: 'Skip hire',
  materials: [
    {
      what: 'skip',
      quantity: '1',
      unit: 'each',
      unitPrice: '210.00',
      taxPercent: '',
      suppliedBy: 'bought',
    },
  ],
  labour: [],
  share: { materials: { principle: 'equal' }, labour: { principle: 'equal' } },
} as const

export const caps = { b: '1800.00' } as const

/** What is edited in the starting terms: a wording of our own, another of the wordings offered, a topic taken out, one added. */
export const termEdits = {
  ownWords: {
    topic: 'Damage',
    text: 'Whoever breaks it mends it within thirty days; a fallen limb is the care of the land it stood on.',
  },
  otherWording: {
    topic: 'Passage through gates on the line',
    label: 'No passage',
    text: 'The gates on the line are for upkeep and emergencies only.',
  },
  takenOut: 'The end of its life',
  added: { topic: 'Dogs', text: 'Neither household ties a dog to the fence.' },
} as const

/** The terms as they stand after those edits. */
export function editedTerms(): { topic: string; text: string }[] {
  const edited = startingTerms()
    .filter(({ topic }) => topic !== termEdits.takenOut)
    .map((term) => {
      if (term.topic === termEdits.ownWords.topic) return { ...termEdits.ownWords }
      if (term.topic !== termEdits.otherWording.topic) return term
      return { topic: term.topic, text: termEdits.otherWording.text }
    })
  return [...edited, { ...termEdits.added }]
}

/** The one check of the starting set that stays open. */
export const openCheck = startingChecks.findIndex((what) => what.startsWith('Buried services'))
/** Taken out, since it concerns neither household. */
export const checkTakenOut = startingChecks.findIndex((what) => what.startsWith('Pools'))

export const permitAnswer = {
  who: 'a',
  on: '2027-02-10',
  answer: 'No permit needed under 6 ft 6 in here. By phone.',
  reference: 'note of the call, 10 February',
} as const

export const decisions = [
  { on: '2027-02-12', text: 'The oak stays; both may prune it on their own side.' },
  { on: '2027-02-20', text: 'The rails are painted dark grey.' },
] as const
