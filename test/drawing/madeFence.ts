/** An invented metric line with turns, limits, a stated error, measured posts, brace bays, a stepped and a raked section and one without a build-up. */
const halves = { together: { principle: 'equal' } }
const pipe = {
  shape: 'round',
  outside: '60.3 mm',
  wall: '3.9 mm',
  material: 'steel',
  stock: '6.4 m',
  kerf: '3 mm',
}
const posts = { ...pipe, spacing: '2.4 m', hole: '25 cm', depth: '76 cm', top: 'saddle' }

export const heronBank = {
  units: 'metric',
  households: { a: { name: 'Heron House' }, b: { name: 'Bank Cottage' } },
  line: {
    error: '5 cm',
    limits: [
      {
        from: '0 m',
        to: '20 m',
        limit: '2 m',
        measuredFrom: 'lower',
        saidBy: 'permit desk of Oldmere',
        on: '2027-02-03',
      },
      { from: '30 m', to: '', limit: '1.5 m', measuredFrom: '', saidBy: '' },
    ],
    stations: [
      { at: '0 m', setback: { side: 'a', distance: '12 cm' }, gradeA: '0 cm', gradeB: '-20 cm' },
      {
        at: '14 m',
        setback: { side: 'a', distance: '8 cm' },
        gradeA: '30 cm',
        gradeB: '10 cm',
        angle: { degrees: '35', toward: 'a' },
      },
      {
        at: '27 m',
        setback: { side: 'b', distance: '4 cm' },
        gradeA: '80 cm',
        gradeB: '70 cm',
        angle: { degrees: '60', toward: 'b' },
      },
      { at: '48 m', setback: { side: 'b', distance: '9 cm' }, gradeA: '140 cm', gradeB: '90 cm' },
    ],
  },
  sections: [
    {
      id: 's1',
      name: 'Lane side',
      from: '0 m',
      to: '20 m',
      height: { agreed: '1.8 m', measuredFrom: 'higher' },
      buildUp: {
        slope: 'stepped',
        posts,
        rails: { ...pipe, count: '2' },
        cornerPosts: { outside: '88.9 mm', depth: '1 m', hole: '35 cm' },
        gatePosts: { outside: '88.9 mm', depth: '95 cm', hole: '30 cm' },
      },
      measured: [{ post: '3', at: '4.9 m', depth: '60 cm', why: 'rock' }],
      share: halves,
    },
    {
      id: 's2',
      name: 'Field',
      from: '20 m',
      to: '40 m',
      height: { agreed: '1.4 m', measuredFrom: 'a' },
      buildUp: {
        slope: 'raked',
        posts: { ...posts, spacing: '3.2 m' },
        rails: { ...pipe, count: '1' },
        endPosts: { brace: { span: '2 m', assemblies: '1' } },
        cornerPosts: { brace: { span: '2 m' } },
      },
      share: halves,
    },
    {
      id: 's3',
      name: 'Old hedge bank',
      from: '40 m',
      to: '48 m',
      height: { agreed: '1.2 m', measuredFrom: 'b' },
      share: halves,
    },
  ],
  gates: [
    {
      id: 'g1',
      name: 'Cart gate',
      at: '9 m',
      opening: '3 m',
      opens: 'both ways',
      buildUp: {
        leaves: '2',
        clearances: { hinge: '2 cm', latch: '1 cm', middle: '2 cm', ground: '5 cm' },
        frame: pipe,
        brace: 'compression',
        header: { ...pipe, clear: '2.6 m' },
      },
      share: halves,
    },
    { id: 'g2', name: 'Wicket', at: '33 m', opening: '1 m', opens: 'toward household b', share: halves },
  ],
}
