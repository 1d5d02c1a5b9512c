/** A notebook file's text of a given size: for every gate ten sections and two hundred cost lines. Invented figures. */
export function largeNotebook(gates: number): string {
  const twoPots = {
    materials: {
      principle: 'difference',
      basic: '100.00',
      basicShare: { principle: 'equal' },
      upgradeShare: { principle: 'percent', a: '33.3333', b: '66.6667' },
    },
    labour: { principle: 'benefit', a: '3', b: '4' },
  }
  const sections = Array.from({ length: 10 * gates }, (_, at) => ({
    id: `s${at}`,
    name: `Section ${at}`,
    from: `${at * 10} ft`,
    to: `${at * 10 + 10} ft`,
    height: { agreed: '6 ft', measuredFrom: 'higher' },
    materials: Array.from({ length: 20 }, (_line, line) => ({
      what: `stock ${line}`,
      quantity: String(line + 1),
      unit: 'each',
      unitPrice: `${line + 1}.${10 + line}`,
      taxPercent: '8.25',
      suppliedBy: line % 3 === 0 ? 'a' : 'bought',
    })),
    labour: [
      { task: 'dig', hours: '12.5', rate: '25.00', by: 'a', counts: true },
      { task: 'weld', hours: '3.3', rate: '31.00', by: 'b', counts: true },
    ],
    share: twoPots,
  }))
  const gateList = Array.from({ length: gates }, (_, at) => ({
    id: `g${at}`,
    name: `Gate ${at}`,
    at: `${at * 100 + 5} ft`,
    opening: '4 ft',
    uses: { a: '3', b: '4' },
    materials: [],
    labour: [{ task: 'hang', hours: '2', rate: '25.00', by: 'b', counts: true }],
    share: { together: { principle: 'use' } },
  }))
  return JSON.stringify({
    format: 'mearing-notebook',
    version: 1,
    currency: 'USD',
    households: { a: {}, b: {} },
    sections,
    gates: gateList,
  })
}
