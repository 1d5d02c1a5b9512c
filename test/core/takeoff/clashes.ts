import { bought, documentWith, halves } from '../madeNotebook.ts'
import { fence, gateAt, pipe, steelBuildUp, steelPosts } from './madeFence.ts'

type Data = Record<string, unknown>

/** Something typed that can't be, with what the finding has to say of it. */
export type Clash = {
  readonly what: string
  readonly sections: readonly Data[]
  readonly gates?: readonly Data[]
  readonly path: string
  readonly kind: string
  /** Every figure that clashes, as the sentence gives it. */
  readonly figures: readonly string[]
}

const built = (posts: Data, rails: Data = {}, more: Data = {}) => ({
  buildUp: {
    ...steelBuildUp,
    posts: { ...steelPosts, ...posts },
    rails: { ...steelBuildUp.rails, ...rails },
  },
  ...more,
})

/** What the take-off has to name and survive; the line runs from 0 to 40 ft. */
export const clashes: readonly Clash[] = [
  {
    what: 'sections that overlap',
    sections: [fence('0 ft', '24 ft'), fence('20 ft', '40 ft')],
    path: 'sections[1]',
    kind: 'sections-overlap',
    figures: ['20 ft', '40 ft', '0 in', '24 ft'],
  },
  {
    what: 'a gate that reaches past the end of the line',
    sections: [fence('0 ft', '40 ft')],
    gates: [gateAt('39 ft', '4 ft')],
    path: 'gates[0].at',
    kind: 'gate-past-the-end',
    figures: ['37 ft', '41 ft', '40 ft'],
  },
  {
    what: 'a gate that begins before the line does',
    sections: [fence('0 ft', '40 ft')],
    gates: [gateAt('1 ft', '4 ft')],
    path: 'gates[0].at',
    kind: 'gate-past-the-end',
    figures: ['−1 ft', '3 ft', '40 ft'],
  },
  {
    what: 'a gate that overlaps another',
    sections: [fence('0 ft', '40 ft')],
    gates: [gateAt('20 ft', '4 ft'), gateAt('22 ft', '4 ft')],
    path: 'gates[1]',
    kind: 'gates-overlap',
    figures: ['20 ft', '24 ft', '18 ft', '22 ft'],
  },
  {
    what: 'an opening that lies only in part in its section',
    sections: [fence('0 ft', '20 ft')],
    gates: [gateAt('19 ft', '4 ft')],
    path: 'gates[0].at',
    kind: 'gate-partly-outside',
    figures: ['17 ft', '21 ft', '0 in', '20 ft'],
  },
  {
    what: 'measured positions out of order',
    sections: [fence('0 ft', '40 ft', { measured: [{ post: '2', at: '17 ft', why: 'rock' }] })],
    path: 'sections[0].measured[0].at',
    kind: 'measured-out-of-order',
    figures: ['17 ft', '0 in', '16 ft'],
  },
  {
    what: 'a hole narrower than its post',
    sections: [fence('0 ft', '40 ft', built({ hole: '2 in' }))],
    path: 'sections[0].buildUp.posts.hole',
    kind: 'hole-narrower',
    figures: ['2 in', '2 3/8 in'],
  },
  {
    what: 'a rail longer than its stock with joints only over posts',
    sections: [fence('0 ft', '40 ft', built({}, { stock: '6 ft', joints: 'posts' }))],
    path: 'sections[0].buildUp.rails.stock',
    kind: 'rail-longer-than-stock',
    // √(96² + 4²) in are 8 ft and a twelfth of an inch, to the nearest sixteenth.
    figures: ['8 ft 1/16 in', '6 ft'],
  },
  {
    what: 'a spacing of zero',
    sections: [fence('0 ft', '40 ft', built({ spacing: '0 ft' }))],
    path: 'sections[0].buildUp.posts.spacing',
    kind: 'zero',
    figures: ['"0 ft"'],
  },
  {
    what: 'a welded panel on a slope',
    sections: [
      fence('0 ft', '40 ft', {
        buildUp: { ...steelBuildUp, infill: [{ kind: 'panel', width: '8 ft', rakes: false }] },
      }),
    ],
    path: 'sections[0].buildUp.infill[0]',
    kind: 'panel-on-a-slope',
    figures: ['4 in', '8 ft'],
  },
  {
    what: 'a wall thicker than half its tube',
    sections: [fence('0 ft', '40 ft', built({ wall: '2 in' }, pipe))],
    path: 'sections[0].buildUp.posts.wall',
    kind: 'wall-too-thick',
    figures: ['2 in', '2 3/8 in'],
  },
]

/** The line of all clashes: 40 ft that rise by 4 in with each bay of 8 ft. */
const line = {
  stations: [
    { at: '0 ft', gradeA: '0 in', gradeB: '0 in' },
    { at: '40 ft', gradeA: '20 in', gradeB: '20 in' },
  ],
}

/** Prices, hours and shares that have nothing to do with where the fence stands. */
const priced = (items: readonly Data[]) =>
  items.map((item, at) => ({
    ...item,
    materials: [bought(`${at + 1}.${at}7`)],
    labour: [{ task: 'dig', hours: '2.5', rate: '25.00', by: at % 2 ? 'b' : 'a', counts: true }],
    share: { ...halves, labour: { principle: 'percent', a: '33.3333', b: '66.6667' } },
  }))

export function clashDocument({ sections, gates = [] }: Pick<Clash, 'sections' | 'gates'>, on: Data = line) {
  return documentWith({ line: on, sections: priced(sections), gates: priced(gates) })
}

/** The same notebook with nothing in it that a take-off reads. */
export function withoutPlaces({ sections, gates = [] }: Pick<Clash, 'sections' | 'gates'>) {
  const bare = (items: readonly Data[]) => priced(items.map(({ id }) => ({ id })))
  return documentWith({ sections: bare(sections), gates: bare(gates) })
}

/** All clashes one after the other, each 100 ft further along the line, with ids of their own. */
export function allClashes() {
  const place = ({ what }: Clash) => (what.includes('before') ? 0 : what.includes('past') ? 2 : 1)
  const inOrder = [...clashes].sort((left, right) => place(left) - place(right))
  const moved = (items: readonly Data[] | undefined, at: number) =>
    (items ?? []).map(
      (item, index): Data => ({ ...furtherBy(100 * at, item), id: `${at} ${index} ${item.id}` }),
    )
  return {
    sections: inOrder.flatMap(({ sections }, at) => moved(sections, at)),
    gates: inOrder.flatMap(({ gates }, at) => moved(gates, at)),
    line: {
      stations: inOrder.flatMap((_, at) => line.stations.map((station) => furtherBy(100 * at, station))),
    },
  }
}

/** The same thing so many feet further along the line. */
function furtherBy(feet: number, thing: Data): Data {
  return Object.fromEntries(
    Object.entries(thing).map(([key, value]) => {
      if (key === 'measured' && Array.isArray(value)) return [key, value.map((one) => furtherBy(feet, one))]
      return ['from', 'to', 'at'].includes(key)
        ? [key, `${Number.parseInt(String(value), 10) + feet} ft`]
        : [key, value]
    }),
  )
}
