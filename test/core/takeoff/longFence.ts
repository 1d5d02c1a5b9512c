/** A notebook file's data with so many sections of 100 m, five stations and a gate to each five of them. Invented figures. */
export function longFence(sections: number): Record<string, unknown> {
  const share = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }
  const pipe = {
    what: 'pipe',
    shape: 'round',
    outside: '60.3 mm',
    wall: '3.9 mm',
    material: 'steel',
    stock: '6.4 m',
    kerf: '3 mm',
  }
  const posts = {
    ...pipe,
    spacing: '3.1 m',
    hole: '25 cm',
    depth: '76 cm',
    gravel: '10 cm',
    top: 'saddle',
  }
  return {
    format: 'mearing-notebook',
    version: 1,
    currency: 'EUR',
    units: 'metric',
    households: { a: {}, b: {} },
    line: {
      error: '5 cm',
      limits: [{ limit: '2 m', measuredFrom: 'lower', saidBy: 'permit office' }],
      stations: Array.from({ length: 5 * sections + 1 }, (_, at) => ({
        at: `${at * 20} m`,
        setback: { side: at % 7 < 4 ? 'a' : 'b', distance: `${at % 5}.5 cm` },
        gradeA: `${(at * 37) % 90} cm`,
        gradeB: `${(at * 23) % 70} cm`,
        ...(at % 40 === 17 ? { angle: { degrees: '9', toward: 'a' } } : {}),
      })),
    },
    sections: Array.from({ length: sections }, (_, at) => ({
      id: `s${at}`,
      from: `${at * 100} m`,
      to: `${at * 100 + 100} m`,
      height: { agreed: '1.8 m', measuredFrom: 'higher' },
      buildUp: {
        slope: at % 2 === 0 ? 'raked' : 'stepped',
        posts,
        rails: { ...pipe, count: '2', welded: true },
        infill: [
          {
            kind: 'roll',
            roll: '25 m',
            lap: '10 cm',
            wrap: '10 cm',
            weight: { figure: '2', per: 'kg/sq m' },
          },
        ],
        ties: { perPost: '6', perRail: '4' },
        footing: {
          fill: 'concrete',
          bagYield: { figure: '12', unit: 'L' },
          bagWeight: { figure: '25', per: 'kg each' },
        },
        finishes: [{ coverage: '10', coverageUnit: 'sq m', unit: 'L', coats: '2' }],
        lines: [{ what: 'clips', basis: 'bay', factor: '4', pack: '50' }],
      },
      share,
    })),
    gates: Array.from({ length: Math.floor(sections / 5) }, (_, at) => ({
      id: `g${at}`,
      at: `${at * 500 + 250} m`,
      opening: '1.2 m',
      opens: 'toward household a',
      buildUp: {
        clearances: { hinge: '2 cm', latch: '1 cm', ground: '5 cm' },
        frame: pipe,
        brace: 'compression',
      },
      share,
    })),
  }
}
