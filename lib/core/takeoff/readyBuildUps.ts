/**
 * Four build-ups to begin with, as they stand in a notebook file: each for a section and for a gate in it. Sizes and
 * counts are common practice, no source, unless said otherwise: change them to what you have. Holes and depths are
 * rules of thumb and not a design.
 */

export type ReadyBuildUp = {
  readonly key: 'steel-welded-wire' | 'steel-woven-strips' | 'timber-board' | 'farm-wire'
  readonly section: Readonly<Record<string, unknown>>
  readonly gate: Readonly<Record<string, unknown>>
}

// 2⅜ in by 0.154 in is pipe of nominal size 2, schedule 40 (ASME B36.10M).
const pipe = { shape: 'round', outside: '2 3/8 in', wall: '0.154 in', material: 'steel' }
const gatePipe = { shape: 'round', outside: '2 7/8 in', wall: '0.203 in', material: 'steel', stock: '21 ft' }
// 1.660 in by 0.140 in is nominal size 1¼, schedule 40.
const framePipe = { shape: 'round', outside: '1.66 in', wall: '0.14 in', material: 'steel' }

// Bag yields are those on the labels of packaged concrete (ASTM C387): 80 lb make 0.60 ft³.
const bags = {
  fill: 'concrete',
  overbreak: '10',
  bagYield: { figure: '0.6', unit: 'cu ft' },
  bagWeight: { figure: '80', per: 'lb each' },
}

const paint = {
  what: 'primer and paint',
  of: 'members',
  coverage: '350',
  coverageUnit: 'sq ft',
  unit: 'gal',
  coats: '2',
}

const steelPosts = {
  what: 'pipe for posts',
  ...pipe,
  stock: '21 ft',
  kerf: '1/8 in',
  reclaimed: true,
  spacing: '8 ft',
  layout: 'equal',
  // ASTM F567-07: a hole of four post widths, 30 in deep for 6 ft of fence.
  hole: '9 1/2 in',
  depth: '30 in',
  gravel: '4 in',
  top: 'saddle',
  deduction: '1 3/4 in',
}

const steelRails = {
  what: 'pipe for rails',
  ...pipe,
  stock: '21 ft',
  kerf: '1/8 in',
  reclaimed: true,
  count: '2',
  joints: 'posts',
  welded: true,
  temperatureRange: '100',
  slip: '1/2 in',
}

const steelGatePosts = { what: 'pipe for gate posts', ...gatePipe, hole: '12 in', depth: '36 in' }

const weldedWire = {
  kind: 'roll',
  what: 'welded wire mesh, 2 in by 4 in',
  ground: '2 in',
  roll: '100 ft',
  lap: '4 in',
  wrap: '6 in',
  weight: { figure: '0.45', per: 'lb/sq ft' },
  // Steel wire of 0.137 in weighs that much and stops 1 − (1 − 0.137/2)·(1 − 0.137/4) of the wind.
  solid: '10',
}

const mesh = {
  kind: 'roll',
  what: 'welded mesh, 4 in openings',
  ground: '2 in',
  roll: '100 ft',
  lap: '4 in',
  wrap: '6 in',
  weight: { figure: '0.35', per: 'lb/sq ft' },
  // Steel wire of 0.148 in weighs that much and stops 1 − (1 − 0.148/4)² of the wind.
  solid: '7.3',
}

const strips = {
  kind: 'strip',
  what: 'steel strip, woven',
  ground: '2 in',
  opening: '4 in',
  width: '3 in',
  thickness: '0.03 in',
  material: 'steel',
  takeUp: '1.02',
  coilWidth: '6 in',
  coil: '250 ft',
  waste: '5',
}

const steelSection = {
  slope: 'raked',
  posts: steelPosts,
  gatePosts: steelGatePosts,
  rails: steelRails,
  infill: [weldedWire],
  ties: { what: 'wire ties', perPost: '6', perRail: '5' },
  footing: bags,
  finishes: [paint],
}

const steelGate = {
  leaves: '1',
  clearances: { hinge: '3/4 in', latch: '1/2 in', middle: '1 in', ground: '2 in' },
  frame: { what: 'pipe for the frame', ...framePipe, stock: '21 ft', kerf: '1/8 in' },
  brace: 'compression',
  infill: [{ ...weldedWire, ground: '', roll: '', lap: '', wrap: '' }],
  hinges: { what: 'weld-on barrel hinge', perLeaf: '2', apart: '4 ft' },
  latch: 'gravity latch',
  posts: steelGatePosts,
  footing: bags,
  finishes: [paint],
}

const stoutPost = {
  what: 'round timber post, 6 in',
  shape: 'round',
  outside: '6 in',
  material: 'wood',
  density: '550',
  stock: '12 ft',
  depth: '42 in',
  hole: '12 in',
}

export const readyBuildUps: readonly ReadyBuildUp[] = [
  {
    key: 'steel-welded-wire',
    section: { name: 'Steel pipe with welded wire', ...steelSection },
    gate: { name: 'Steel gate with welded wire', ...steelGate },
  },
  {
    key: 'steel-woven-strips',
    section: {
      name: 'Steel pipe with woven strips',
      ...steelSection,
      infill: [mesh, strips],
      lines: [{ what: 'rivets', basis: 'sq ft', factor: '1', unit: 'each', pack: '100', packUnit: 'box' }],
    },
    gate: {
      name: 'Steel gate with woven strips',
      ...steelGate,
      infill: [
        { ...mesh, ground: '', roll: '', lap: '', wrap: '' },
        { ...strips, ground: '', coil: '' },
      ],
    },
  },
  {
    key: 'timber-board',
    section: {
      name: 'Timber boards',
      slope: 'stepped',
      posts: {
        what: 'treated timber post',
        shape: 'square',
        outside: '3 1/2 in',
        material: 'wood',
        // Softwood, air-dry: between about 450 and 600.
        density: '550',
        stock: '10 ft',
        spacing: '8 ft',
        layout: 'equal',
        hole: '10 in',
        depth: '30 in',
        gravel: '4 in',
        top: 'beside',
      },
      rails: {
        what: 'treated timber rail',
        shape: 'rectangular',
        outside: '3 1/2 in',
        thickness: '1 1/2 in',
        material: 'wood',
        density: '550',
        stock: '16 ft',
        kerf: '1/8 in',
        count: '3',
        joints: 'posts',
      },
      infill: [
        {
          kind: 'board',
          what: 'fence board',
          ground: '2 in',
          width: '5 1/2 in',
          thickness: '5/8 in',
          gap: '1/8 in',
          waste: '5',
          weight: { figure: '1.8', per: 'lb/sq ft' },
        },
      ],
      footing: bags,
      finishes: [{ ...paint, what: 'oil', of: 'both', coverage: '200', coats: '1' }],
      lines: [
        {
          what: 'exterior screws for boards',
          basis: 'bay',
          factor: '102',
          unit: 'each',
          pack: '350',
          packUnit: 'box',
        },
        { what: 'rail brackets', basis: 'bay', factor: '6', unit: 'each' },
      ],
    },
    gate: {
      name: 'Timber gate',
      leaves: '1',
      clearances: { hinge: '1/2 in', latch: '1/2 in', middle: '1/2 in', ground: '2 in' },
      frame: {
        what: 'treated timber for the frame',
        shape: 'rectangular',
        outside: '3 1/2 in',
        thickness: '1 1/2 in',
        material: 'wood',
        density: '550',
        stock: '8 ft',
        kerf: '1/8 in',
      },
      brace: 'compression',
      infill: [
        {
          kind: 'board',
          what: 'fence board',
          width: '5 1/2 in',
          thickness: '5/8 in',
          gap: '1/8 in',
          weight: { figure: '1.8', per: 'lb/sq ft' },
        },
      ],
      hinges: { what: 'strap hinge', perLeaf: '3', apart: '5 ft' },
      latch: 'thumb latch',
      posts: {
        what: 'treated timber gate post',
        shape: 'square',
        outside: '5 1/2 in',
        material: 'wood',
        density: '550',
        stock: '12 ft',
        hole: '16 in',
        depth: '36 in',
      },
      footing: bags,
      finishes: [{ ...paint, what: 'oil', of: 'both', coverage: '200', coats: '1' }],
    },
  },
  {
    key: 'farm-wire',
    section: {
      name: 'Farm wire',
      slope: 'raked',
      posts: {
        what: 'round timber post, 4 in',
        shape: 'round',
        outside: '4 in',
        material: 'wood',
        density: '550',
        stock: '8 ft',
        spacing: '12 ft',
        layout: 'equal',
        depth: '30 in',
        top: 'beside',
      },
      endPosts: {
        ...stoutPost,
        bracing: 'one assembly: a second post, a level rail between the two and a twisted wire',
        brace: { span: '8 ft', assemblies: '1', wire: '36 ft' },
      },
      cornerPosts: {
        ...stoutPost,
        bracing: 'one assembly in each direction',
        brace: { span: '8 ft', assemblies: '1', wire: '36 ft' },
      },
      gatePosts: {
        ...stoutPost,
        bracing: 'one assembly away from the gate',
        brace: { span: '8 ft', assemblies: '1', wire: '36 ft' },
      },
      rails: {
        what: 'round timber brace rail, 4 in',
        shape: 'round',
        outside: '4 in',
        material: 'wood',
        density: '550',
        stock: '8 ft',
        count: '0',
      },
      infill: [
        {
          kind: 'roll',
          what: 'woven field wire',
          roll: '330 ft',
          lap: '1 ft',
          wrap: '1 ft',
          weight: { figure: '0.6', per: 'lb/ft' },
          // Ten wires of 0.1 in over 47 in and stays of 0.1 in each 6 in, by eye.
          solid: '4',
        },
      ],
      ties: { what: 'fence staples', perPost: '10' },
      footing: { fill: 'earth' },
      lines: [
        {
          what: 'single strand on top',
          basis: 'ft',
          factor: '1',
          unit: 'ft',
          pack: '1320',
          packUnit: 'roll',
          waste: '3',
        },
      ],
    },
    gate: {
      name: 'Farm gate',
      leaves: '1',
      clearances: { hinge: '3 in', latch: '2 in', middle: '2 in', ground: '4 in' },
      frame: { what: 'tube for the frame', ...framePipe, stock: '21 ft', kerf: '1/8 in' },
      brace: 'tension',
      infill: [
        {
          kind: 'roll',
          what: 'welded mesh, 4 in openings',
          weight: { figure: '0.35', per: 'lb/sq ft' },
          solid: '7.3',
        },
      ],
      hinges: { what: 'through-bolt hinge', perLeaf: '2', apart: '3 ft' },
      latch: 'chain latch',
      posts: { ...stoutPost, what: 'round timber gate post, 8 in', outside: '8 in', hole: '16 in' },
      footing: { fill: 'earth' },
    },
  },
]
