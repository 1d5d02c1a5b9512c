import type { Gate, Keeper, MeasuredFrom, Notebook, Section } from '../core/agreement/notebook.ts'
import { compareLengths, lengthOf } from '../core/amounts/length.ts'
import { setbackAlong } from '../core/boundary/setbackAlong.ts'
import { sharedUses } from '../core/shares/passages.ts'
import { subtractRatios } from '../core/takeoff/exact.ts'
import { postsBySection } from '../core/takeoff/measuredPosts.ts'
import type { TakeOff } from '../core/takeoff/takeOff.ts'
import { householdName } from './labels.ts'
import { lengthWords } from './length.ts'
import { setbackRange } from './summary/buildBlocks.ts'
import { householdsNamed } from './summary/householdsNamed.ts'
import { capitalised, itemTitle } from './summary/names.ts'
import { typedLength } from './summary/typedLength.ts'

/** A fact of a part of the drawing, as a pair to read. */
export type LookRow = { readonly term: string; readonly text: string }

const notSaid = 'not said yet'

/** What a section is, in short. `found` is the take-off, where anything has a build-up. */
export function sectionRows(
  notebook: Notebook,
  index: number,
  found: TakeOff | undefined,
): readonly LookRow[] {
  const section = notebook.sections[index]
  if (section === undefined) return []
  return rows([
    ['Where', sectionPlace(notebook, section)],
    ['Height', heightWords(notebook, section.height.agreed, section.height.measuredFrom)],
    ['Infill', section.infill.trim() || notSaid],
    ['Drainage', householdsNamed(notebook, section.drainage).trim()],
    ['Posts and bays', countsOf(notebook, index, found)],
    ['Off the line', setbackOf(notebook, section.from, section.to)],
    ['Kept up by', keeperWords(notebook, section.upkeep)],
  ])
}

export function gateRows(notebook: Notebook, index: number): readonly LookRow[] {
  const gate = notebook.gates[index]
  if (gate === undefined) return []
  return rows([
    ['Where', gatePlace(notebook, gate)],
    ['Passages a week', usesWords(notebook, gate)],
    ['Opens', householdsNamed(notebook, gate.opens).trim() || notSaid],
    ['Latch', householdsNamed(notebook, gate.latch).trim() || notSaid],
    ['Keys', householdsNamed(notebook, gate.keys).trim()],
    ['Kept up by', keeperWords(notebook, gate.upkeep)],
  ])
}

export function stationRows(notebook: Notebook, index: number): readonly LookRow[] {
  const station = notebook.line.stations[index]
  if (station === undefined) return []
  const { at, gradeA, gradeB, gradeFence, angle } = station
  const grade = (typed: string) => (typed === '' ? notSaid : typedLength(notebook, typed))
  return rows([
    ['From the start', at === '' ? notSaid : typedLength(notebook, at)],
    ['Off the line', at === '' ? '' : setbackOf(notebook, at, at)],
    [`Ground of ${householdName(notebook, 'a')}`, grade(gradeA)],
    [`Ground of ${householdName(notebook, 'b')}`, grade(gradeB)],
    ['Ground under the fence', gradeFence === '' ? '' : typedLength(notebook, gradeFence)],
    ['Turn', angle === undefined || angle.degrees === '' ? '' : turnWords(notebook, angle)],
  ])
}

/** A post by its place in the take-off's list. */
export function postRows(notebook: Notebook, found: TakeOff, place: number): readonly LookRow[] {
  const built = found.posts[place]
  if (built === undefined) return []
  const { post, size, piece } = built
  const long = (length: { over: bigint; under: bigint }) => lengthWords(length, notebook.units)
  const moved = compareLengths(post.at, post.planned) !== 0
  const along = setbackAlong(notebook.line.stations, post.at, post.at)
  return rows([
    [
      'From the start',
      `${long(post.at)}${moved ? `, measured on site; planned at ${long(post.planned)}` : ''}`,
    ],
    [
      'Off the line',
      along === undefined ? 'no station says it' : setbackRange(notebook, along.least, along.most),
    ],
    ['Hole', size.hole.over > 0n ? `${long(size.hole)} wide, ${long(piece.depth)} deep` : 'none'],
    ['Length to cut', piece.length === undefined ? 'not known until a height is agreed' : long(piece.length)],
    ['Borne by', bearersOf(notebook, found, place)],
  ])
}

/** What a post is called: its number in the section that it is counted with, and its kind. */
export function postTitle(notebook: Notebook, found: TakeOff, place: number, kind: string): string {
  const post = found.posts[place]?.post
  if (post === undefined) return ''
  const section = post.item.list === 'sections' ? post.item.index : post.sections[0]
  const number =
    section === undefined ? -1 : (postsBySection(found.layout.posts).get(section) ?? []).indexOf(place)
  const name = section === undefined ? '' : (notebook.sections[section]?.name ?? '')
  return section === undefined || number < 0
    ? capitalised(kind)
    : `Post ${number + 1} of ${itemTitle('section', section, name)}, ${kind}`
}

function rows(pairs: readonly (readonly [string, string])[]): readonly LookRow[] {
  return pairs.flatMap(([term, text]) => (text === '' ? [] : [{ term, text }]))
}

function sectionPlace(notebook: Notebook, { from, to }: Section): string {
  if (from === '' || to === '') return notSaid
  const reach = `${typedLength(notebook, from)} to ${typedLength(notebook, to)}`
  const length = subtractRatios(lengthOf(to), lengthOf(from))
  return length.over > 0n ? `${reach}, ${lengthWords(length, notebook.units)} long` : reach
}

function gatePlace(notebook: Notebook, { at, opening, stands }: Gate): string {
  const land = {
    line: 'in the fence on the line',
    a: `on the land of ${householdName(notebook, 'a')}`,
    b: `on the land of ${householdName(notebook, 'b')}`,
    '': '',
  }[stands]
  return [
    at === '' ? notSaid : `its middle at ${typedLength(notebook, at)}`,
    opening === '' ? '' : `${typedLength(notebook, opening)} clear`,
    land,
  ]
    .filter(Boolean)
    .join(', ')
}

function heightWords(notebook: Notebook, agreed: string, from: MeasuredFrom): string {
  if (agreed === '') return notSaid
  const ground = {
    a: `from the ground of ${householdName(notebook, 'a')}`,
    b: `from the ground of ${householdName(notebook, 'b')}`,
    higher: 'from the higher ground',
    lower: 'from the lower ground',
    '': 'but from whose ground is not said yet',
  }[from]
  return `${typedLength(notebook, agreed)}, ${ground}`
}

function countsOf(notebook: Notebook, section: number, found: TakeOff | undefined): string {
  if (notebook.sections[section]?.buildUp === undefined || found === undefined)
    return 'no build-up yet, so none are laid out'
  const posts = postsBySection(found.layout.posts).get(section)?.length ?? 0
  const bays = found.tops.bays.filter((bay) => bay.section === section).length
  const shared = found.sharedPosts.filter(({ post }) =>
    found.posts[post]?.post.sections.includes(section),
  ).length
  const which = shared === 0 ? '' : `, ${shared} of them shared with a neighbour`
  return `${posts} ${posts === 1 ? 'post' : 'posts'}${which}; ${bays} ${bays === 1 ? 'bay' : 'bays'}`
}

function setbackOf(notebook: Notebook, from: string, to: string): string {
  if (from === '' || to === '') return ''
  const along = setbackAlong(notebook.line.stations, lengthOf(from), lengthOf(to))
  return along === undefined ? 'no station says it' : setbackRange(notebook, along.least, along.most)
}

function usesWords(notebook: Notebook, gate: Gate): string {
  const uses = sharedUses(gate)
  if (uses?.apart) return 'counted by each household apart, and not settled yet'
  if (uses === undefined || (uses.a === '' && uses.b === '')) return 'not counted yet'
  return `${uses.a || '0'} by ${householdName(notebook, 'a')}, ${uses.b || '0'} by ${householdName(notebook, 'b')}`
}

function keeperWords(notebook: Notebook, keeper: Keeper): string {
  return keeper === '' ? notSaid : keeper === 'both' ? 'both households' : householdName(notebook, keeper)
}

function bearersOf(notebook: Notebook, found: TakeOff, place: number): string {
  const shared = found.sharedPosts.find(({ post }) => post === place)
  const title = ({ list, index }: { readonly list: 'sections' | 'gates'; readonly index: number }) =>
    itemTitle(list === 'sections' ? 'section' : 'gate', index, notebook[list][index]?.name ?? '')
  const item = found.posts[place]?.post.item
  if (shared) return `${title(shared.item)} and ${title(shared.other)}, half each`
  return item === undefined ? '' : title(item)
}

function turnWords(
  notebook: Notebook,
  { degrees, toward }: NonNullable<Notebook['line']['stations'][number]['angle']>,
): string {
  return `${degrees}°${toward === '' ? '' : ` toward the land of ${householdName(notebook, toward)}`}`
}
