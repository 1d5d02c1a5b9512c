import type { Gate, Keeper, MeasuredFrom, Notebook, Section } from '../../core/agreement/notebook.ts'
import { lengthOf, type Millimetres } from '../../core/amounts/length.ts'
import { ratio } from '../../core/amounts/ratio.ts'
import { setbackAlong } from '../../core/boundary/setbackAlong.ts'
import { householdName } from '../labels.ts'
import { lengthWords } from '../length.ts'
import { meetsWords } from '../needText.ts'
import type { Block } from './block.ts'
import { householdsNamed } from './householdsNamed.ts'
import { householdStart, itemTitle, typedSentence } from './names.ts'
import { unbroken } from './unbroken.ts'

/** What will stand on the line: one paragraph for each section and gate, and what the common costs are. */
export function buildBlocks(notebook: Notebook): Block[] {
  const { sections, gates, common } = notebook
  return [
    { kind: 'heading', level: 1, id: 'build', text: 'What will stand on the line' },
    ...(sections.length + gates.length > 0
      ? []
      : [{ kind: 'paragraph' as const, text: 'No section and no gate has been laid out yet.' }]),
    ...sections.flatMap((section, index): Block[] => [
      {
        kind: 'heading',
        level: 2,
        id: `build-section-${index + 1}`,
        text: itemTitle('section', index, section.name),
      },
      { kind: 'paragraph', text: sectionWords(notebook, section) },
    ]),
    ...gates.flatMap((gate, index): Block[] => [
      { kind: 'heading', level: 2, id: `build-gate-${index + 1}`, text: itemTitle('gate', index, gate.name) },
      { kind: 'paragraph', text: gateWords(notebook, gate) },
    ]),
    ...(common.length === 0
      ? []
      : [
          { kind: 'heading' as const, level: 2 as const, id: 'build-common', text: 'Common costs' },
          { kind: 'paragraph' as const, text: 'These costs belong to no one section or gate.' },
          {
            kind: 'list' as const,
            items: common.map((cost, index) =>
              [typedSentence(itemTitle('common', index, cost.name)), typedSentence(cost.notes)]
                .filter(Boolean)
                .join(' '),
            ),
          },
        ]),
  ]
}

function sectionWords(notebook: Notebook, section: Section): string {
  const { from, to, height } = section
  return sentences([
    from === '' || to === ''
      ? 'Where it begins and ends has not been said yet.'
      : `It runs from ${unbroken(from)} to ${unbroken(to)} along the line.`,
    heightWords(notebook, height.agreed, height.measuredFrom),
    from === '' || to === ''
      ? ''
      : setbackSentence(notebook, 'The middle of the fence', lengthOf(from), lengthOf(to)),
    labelled('Face', householdsNamed(notebook, section.face)),
    labelled('Infill', section.infill),
    labelled('Drainage', householdsNamed(notebook, section.drainage)),
    keepingWords(notebook, section),
    labelled('Meets', meetsWords(notebook, section.meets)),
    labelled('Notes', section.notes),
  ])
}

function heightWords(notebook: Notebook, agreed: string, from: MeasuredFrom): string {
  if (agreed === '') return 'Its height has not been agreed yet.'
  const ground = {
    a: `measured from the ground of ${householdName(notebook, 'a')}`,
    b: `measured from the ground of ${householdName(notebook, 'b')}`,
    higher: 'measured from the higher ground of the two',
    lower: 'measured from the lower ground of the two',
    '': 'but from whose ground has not been said yet',
  }[from]
  return `It is ${unbroken(agreed)} high, ${ground}.`
}

/** How far from the line the middle of the fence stands, from the stations. */
function setbackSentence(notebook: Notebook, subject: string, from: Millimetres, to: Millimetres): string {
  const along = setbackAlong(notebook.line.stations, from, to)
  if (along === undefined) return 'No station says how far from the line it stands.'
  const rest = along.whole
    ? ''
    : ' Part of it lies past the stations, and for that part nothing has been said.'
  return `${subject} stands ${setbackRange(notebook, along.least, along.most)}.${rest}`
}

export function setbackRange(notebook: Notebook, least: Millimetres, most: Millimetres): string {
  const words = (setback: Millimetres) => {
    const size = setback.over < 0n ? ratio(-setback.over, setback.under) : setback
    return unbroken(lengthWords(size, notebook.units))
  }
  const land = (setback: Millimetres) =>
    `on the land of ${householdName(notebook, setback.over > 0n ? 'a' : 'b')}`
  if (least.over === 0n && most.over === 0n) return 'on the line'
  if (least.over < 0n && most.over > 0n) {
    return `on both sides of the line in turn: up to ${words(least)} ${land(least)}, and up to ${words(most)} ${land(most)}`
  }
  const [near, far] = most.over > 0n ? [least, most] : [most, least]
  if (near.over === 0n) return `from the line itself to ${words(far)} off it, ${land(far)}`
  if (words(near) === words(far)) return `${words(far)} off the line, ${land(far)}`
  return `from ${words(near)} to ${words(far)} off the line, ${land(far)}`
}

function gateWords(notebook: Notebook, gate: Gate): string {
  const stands = {
    line: 'It belongs to the fence on the line.',
    a: `It stands on the land of ${householdName(notebook, 'a')}.`,
    b: `It stands on the land of ${householdName(notebook, 'b')}.`,
    '': 'Whose land it stands on has not been said yet.',
  }[gate.stands]
  return sentences([
    gate.at === ''
      ? 'Where it stands along the line has not been said yet.'
      : `Its middle is ${unbroken(gate.at)} from the start of the line.`,
    gate.opening === ''
      ? 'How wide it opens has not been said yet.'
      : `The clear opening is ${unbroken(gate.opening)} wide.`,
    stands,
    gate.at === ''
      ? ''
      : setbackSentence(notebook, 'The middle of the gate', lengthOf(gate.at), lengthOf(gate.at)),
    passageWords(notebook, gate),
    labelled('Opens', householdsNamed(notebook, gate.opens)),
    labelled('Latch', householdsNamed(notebook, gate.latch)),
    labelled('Keys', householdsNamed(notebook, gate.keys)),
    keepingWords(notebook, gate),
    labelled('Notes', gate.notes),
  ])
}

function passageWords(notebook: Notebook, { uses, passages: apart }: Gate): string {
  if (apart !== undefined)
    return 'The passages through it are counted by each household apart, and not settled yet.'
  if (uses.a === '' && uses.b === '') return ''
  const passages = (count: string) => unbroken(count === '1' ? '1 time' : `${count || '0'} times`)
  // No figure follows a name, which may end in a figure itself.
  return `It is used ${passages(uses.a)} a week by ${householdName(notebook, 'a')}, and ${passages(uses.b)} by ${householdName(notebook, 'b')}.`
}

/** Who owns it afterwards, and who keeps it. */
function keepingWords(
  notebook: Notebook,
  { owner, upkeep }: { readonly owner: Keeper; readonly upkeep: Keeper },
): string {
  if (owner === '' && upkeep === '') return 'Who owns it and who keeps it has not been said yet.'
  if (owner !== '' && owner === upkeep) {
    return owner === 'both'
      ? 'Both households own it afterwards and keep it in good order.'
      : `${householdStart(notebook, owner)} owns it afterwards and keeps it in good order.`
  }
  return `${keeperWords(notebook, owner, 'own', 'it afterwards')} ${keeperWords(notebook, upkeep, 'keep', 'it in good order')}`
}

function keeperWords(notebook: Notebook, keeper: Keeper, verb: 'own' | 'keep', what: string): string {
  if (keeper === '')
    return verb === 'own'
      ? 'Who owns it afterwards has not been said yet.'
      : 'Who keeps it in good order has not been said yet.'
  if (keeper === 'both') return `Both households ${verb} ${what}.`
  return `${householdStart(notebook, keeper)} ${verb}s ${what}.`
}

function labelled(label: string, text: string): string {
  return text.trim() === '' ? '' : `${label}: ${typedSentence(text)}`
}

function sentences(parts: readonly string[]): string {
  return parts.filter(Boolean).join(' ')
}
