import fc from 'fast-check'
import { currencyDigits } from '../../lib/core/amounts/currency.ts'
import { moneyText } from '../../lib/core/amounts/money.ts'
import { type NotebookDocument, readDocument } from '../../lib/forms/readNotebook.ts'
import { house, type Json, labourWorth, materialsWorth, randomLines, typedNumber } from './randomLines.ts'
import { randomShare } from './randomShares.ts'
import { gateInPlace, randomInventory, randomLine, savedBuildUps, sectionInPlace } from './randomTakeOff.ts'

const day = fc.constantFrom('2027-03-02', '2028-02-29', '2027-12-31')

/**
 * Any notebook whose statement can be worked out: every principle, every currency's digits, caps, a book, and in every
 * other one whatever a take-off reads.
 */
export const randomNotebook: fc.Arbitrary<NotebookDocument> = fc
  .constantFrom('USD', 'USD', 'JPY', 'KWD', 'HUF', 'CLF')
  .chain((currency) => {
    const digits = currencyDigits(currency) ?? 0
    return fc
      .record({
        sections: fc.array(item(digits, false), { maxLength: 3 }),
        gates: fc.array(item(digits, true), { maxLength: 2 }),
        common: fc.array(item(digits, false), { maxLength: 2 }),
      })
      .chain((lists) => {
        const ids = [...named(lists.sections, 's'), ...named(lists.gates, 'g'), ...named(lists.common, 'c')]
        const whole = ids.reduce((sum, one) => sum + one.worth, 0n)
        const of = (letter: string) =>
          ids.filter((one) => one.id.startsWith(letter)).map(({ id, item }) => ({ id, ...item }))
        return fc.record({
          format: fc.constant('mearing-notebook'),
          version: fc.constant(1),
          title: fc.constantFrom('Orchard line', 'Grenze “Süd”', ''),
          currency: fc.constant(currency),
          households: fc.constant({ a: { name: 'no. 12' }, b: { name: 'no. 14', parties: [] } }),
          ...inPlace(of('s'), of('g')),
          common: fc.constant(of('c')),
          caps: caps(whole, digits),
          contributions: fc.array(
            contribution(
              digits,
              ids.map(({ id }) => id),
            ),
            { maxLength: 5 },
          ),
          terms: fc.constantFrom([], [{ topic: 'line', text: 'used by permission' }]),
          checks: fc.constantFrom([], [{ what: 'Permit office asked', who: 'a', on: '', done: true }]),
          decisions: fc.constantFrom([], [{ on: '2027-02-12', text: 'The old hazel stays.' }]),
        })
      })
  })

/** The line, sections and gates with or without all that the take-off reads. */
function inPlace(sections: readonly Json[], gates: readonly Json[]): Record<string, fc.Arbitrary<unknown>> {
  const each = (items: readonly Json[], places: fc.Arbitrary<Json>) =>
    fc.tuple(
      ...items.map((item) =>
        fc.oneof(
          fc.constant(item),
          places.map((more) => ({ ...more, ...item })),
        ),
      ),
    )
  return {
    line: fc.oneof(fc.constant({}), randomLine),
    sections: each(sections, sectionInPlace),
    gates: each(gates, gateInPlace),
    inventory: fc.oneof(fc.constant([]), randomInventory),
    buildUps: fc.oneof(fc.constant([]), savedBuildUps),
  }
}

type MadeItem = { readonly item: Json; readonly worth: bigint }

function item(digits: number, onGate: boolean): fc.Arbitrary<MadeItem> {
  const uses = fc
    .record({ a: typedNumber(20, 1), b: typedNumber(20, 1) })
    .map(({ a, b }) => (/[1-9]/.test(a + b) ? { a, b } : { a: '1', b }))
  return fc.tuple(randomLines(digits), uses).chain(([lines, passages]) => {
    const given = onGate ? passages : undefined
    const materials = materialsWorth(lines.materials, digits)
    const labour = labourWorth(lines.labour, digits)
    return randomShare(materials, labour, digits, given).map((share) => ({
      item: { ...lines, ...(given ? { uses: given } : {}), share },
      worth: materials + labour,
    }))
  })
}

function named(items: readonly MadeItem[], letter: string) {
  return items.map((one, index) => ({ ...one, id: `${letter}${index + 1}` }))
}

/** None, one, or two that just suffice or do so amply. */
function caps(whole: bigint, digits: number): fc.Arbitrary<Json> {
  return fc
    .record({
      a: fc.bigInt({ min: 0n, max: whole }),
      spare: fc.bigInt({ min: 0n, max: whole }),
      kept: fc.constantFrom('neither', 'a', 'b', 'both'),
    })
    .map(({ a, spare, kept }) => ({
      ...(kept === 'a' || kept === 'both' ? { a: moneyText(a, digits) } : {}),
      ...(kept === 'b' ? { b: moneyText(spare, digits) } : {}),
      ...(kept === 'both' ? { b: moneyText(whole - a + (spare % 3n), digits) } : {}),
    }))
}

function contribution(digits: number, ids: readonly string[]): fc.Arbitrary<Json> {
  const amount = fc.bigInt({ min: 0n, max: 200_000n }).map((minor) => moneyText(minor, digits))
  const struck = fc.record({ on: day, by: house, why: fc.constant('entered twice') })
  const entry = { household: house, date: day, note: fc.constantFrom('pipe', '') }
  const what = ids.length === 0 ? {} : { for: fc.constantFrom(...ids) }
  const kept = { requiredKeys: ['household', 'date', 'kind', 'amount'] as const }
  return fc.oneof(
    fc.record(
      { ...entry, kind: fc.constantFrom('cash', 'material', 'transfer', 'refund'), amount, struck, ...what },
      { requiredKeys: [...kept.requiredKeys] },
    ),
    fc.record(
      { ...entry, kind: fc.constant('hours'), hours: typedNumber(40, 6), rate: typedNumber(60, 2), ...what },
      { requiredKeys: ['household', 'date', 'kind', 'hours'] },
    ),
  )
}

/** The notebook as the rules read it. */
export function readMade(document: NotebookDocument) {
  const read = readDocument(document)
  if (!read.ok) throw new Error(`a made notebook does not hold: ${JSON.stringify(read.faults)}`)
  return read.value.notebook
}
