import type { Notebook } from '../../core/agreement/notebook.ts'
import type { Millimetres } from '../../core/amounts/length.ts'
import { setbackAt, setbackPoints } from '../../core/boundary/setbackAlong.ts'
import { paysDifference } from '../../core/shares/basicFence.ts'
import type { HeightLimit } from '../../core/takeoff/buildUp.ts'
import { sizeOf } from '../../core/takeoff/exact.ts'
import type { PostKind } from '../../core/takeoff/runEdges.ts'
import type { BuiltPost } from '../../core/takeoff/sectionParts.ts'
import type { Answer } from '../../core/takeoff/setbacks.ts'
import { dayWords } from '../day.ts'
import { householdName } from '../labels.ts'
import { lengthWords, stationWords } from '../length.ts'
import { exaggeration } from './drawingExaggeration.ts'
import { householdsNamed } from './householdsNamed.ts'
import { capitalised, itemTitle } from './names.ts'
import { typedLength } from './typedLength.ts'
import { unbroken } from './unbroken.ts'

/** A post as the drawing has it, and whether its hole reaches across the line. */
type SeenPost = { readonly built: BuiltPost; readonly crosses: Answer }
type Numbered = { readonly section: number; readonly number: number } | undefined

export const postKindWords: Readonly<Record<PostKind, string>> = {
  line: 'line post',
  end: 'end post',
  corner: 'corner post',
  gate: 'gate post',
  brace: 'brace post',
}

/** What the drawing says of posts, bays, holes, limits and the stated error: a part of `drawingWords`. */
export function builtDrawingWords(notebook: Notebook) {
  const long = (length: Millimetres) => unbroken(lengthWords(length, notebook.units))
  const along = (at: Millimetres) => unbroken(stationWords(at, notebook.units))
  const points = setbackPoints(notebook.line.stations)
  const offLine = (setback: Millimetres | undefined) =>
    setback === undefined
      ? 'no station says how far off the line'
      : setback.over === 0n
        ? 'on the line'
        : `${long(sizeOf(setback))} off the line on the land of ${householdName(notebook, setback.over > 0n ? 'a' : 'b')}`
  return {
    postKind: (kind: PostKind) => postKindWords[kind],
    hole: 'hole',
    braceBay: 'bay with a brace',
    statedError: (typed: string) => `the line may lie ${typedLength(notebook, typed)} to either side`,
    limitKey: (index: number) => `Limit\u00A0${index + 1}`,
    limitLine: (index: number) => limitLine(notebook, index),
    heightLimit: 'height limit',
    basicKey: (typed: string) => `basic\u00A0${typedLength(notebook, typed)}`,
    basicHeight: 'height of the basic fence',
    alike: (count: number, text: string) => `${count}\u00A0×\u00A0${text}`,
    clear: (opening: Millimetres) => `${long(opening)}\u00A0clear`,
    offLine: (setback: Millimetres) =>
      setback.over === 0n ? 'on\u00A0line' : `${long(sizeOf(setback))}\u00A0off`,
    acrossDrawnWider: (times: number) =>
      exaggeration('Holes and distances across the line', 'wider', 'narrower', times),
    depthRule: 'A hole without a figure is as deep as the one before it. Signs of posts are not to scale.',
    postsTooClose: (count: number) =>
      `${count === 1 ? 'One line post stands' : `${count} line posts stand`} too close to draw here. The drawings of single items have them.`,
    turns: 'With its turns, to scale',
    turn: (degrees: string, at: string) => `${degrees}°\u00A0at\u00A0${typedLength(notebook, at)}`,
    sectionKey: (index: number) => `Section\u00A0${index + 1}`,
    sheet: (title: string, number: number, of: number) =>
      of === 1 ? title : `${title}, sheet ${number} of ${of}`,
    sheetReach: (from: Millimetres, to: Millimetres) => `From ${along(from)} to ${along(to)}`,
    acrossTitle: 'One post, to scale both ways',
    acrossLines: ({ built, crosses }: SeenPost, number: number | undefined) => {
      const { post, size } = built
      return [
        `${number === undefined ? 'Post' : `Post ${number}`}, ${postKindWords[post.kind]}, at ${along(post.at)}`,
        `Middle ${offLine(setbackAt(points, post.at))}`,
        `Post ${long(size.outside)} wide`,
        ...(size.hole.over > 0n ? [`Hole ${long(size.hole)} wide`] : []),
        ...(notebook.line.error === ''
          ? []
          : [`The line may lie ${typedLength(notebook, notebook.line.error)} to either side`]),
        crossesWords[crosses],
      ]
    },
    sectionName: (index: number) => sectionName(notebook, index),
    gateName: (index: number) => gateName(notebook, index),
    stationName: (index: number) => stationName(notebook, index),
    postName: ({ built, crosses }: SeenPost, place: Numbered) => {
      const { post, size, piece } = built
      const of =
        place === undefined
          ? 'Post'
          : `Post ${place.number} of ${itemTitle('section', place.section, notebook.sections[place.section]?.name ?? '')}`
      return [
        of,
        `${postKindWords[post.kind]} at ${along(post.at)}`,
        ...(size.hole.over > 0n
          ? [
              `hole ${long(size.hole)} wide and ${long(piece.depth)} deep`,
              crossesWords[crosses].toLocaleLowerCase('en-US'),
            ]
          : []),
        ...(post.measured ? ['measured on site'] : []),
      ].join(', ')
    },
  }
}

export const crossesWords: Readonly<Record<Answer, string>> = {
  yes: 'Its hole or the post reaches across the line',
  no: 'It does not reach across the line',
  'cannot tell': 'It can’t be told whether it reaches across the line',
}

const limitGround: Readonly<Record<HeightLimit['measuredFrom'], string>> = {
  a: 'over the ground of ',
  b: 'over the ground of ',
  higher: 'over the higher ground',
  lower: 'over the lower ground',
  '': 'over each household’s own ground',
}

function limitLine(notebook: Notebook, index: number): string {
  const limit = notebook.line.limits[index]
  if (limit === undefined) return ''
  const { from, to, measuredFrom, saidBy, on } = limit
  const over =
    measuredFrom === 'a' || measuredFrom === 'b'
      ? `${limitGround[measuredFrom]}${householdName(notebook, measuredFrom)}`
      : limitGround[measuredFrom]
  const where =
    from === '' && to === ''
      ? 'along the whole line'
      : `from ${from === '' ? 'the start' : typedLength(notebook, from)} to ${to === '' ? 'the end' : typedLength(notebook, to)}`
  const who = saidBy.trim() === '' ? 'nobody named' : saidBy.trim()
  return `Limit\u00A0${index + 1}: ${typedLength(notebook, limit.limit)} ${over}, ${where}. Said by ${who}${on === '' ? '' : ` on ${unbroken(dayWords(on))}`}`
}

function sectionName(notebook: Notebook, index: number): string {
  const section = notebook.sections[index]
  if (section === undefined) return ''
  const { agreed } = section.height
  const basic = section.basicFence?.height ?? ''
  const plainer =
    basic !== '' && paysDifference(section.share)
      ? `; the basic fence would be ${typedLength(notebook, basic)} high`
      : ''
  return `${itemTitle('section', index, section.name)}, from ${typedLength(notebook, section.from)} to ${typedLength(notebook, section.to)}${agreed === '' ? '' : `, ${typedLength(notebook, agreed)} high`}${plainer}`
}

function gateName(notebook: Notebook, index: number): string {
  const gate = notebook.gates[index]
  if (gate === undefined) return ''
  const wide = gate.opening === '' ? '' : `, ${typedLength(notebook, gate.opening)} clear`
  return `${itemTitle('gate', index, gate.name)}, at ${typedLength(notebook, gate.at)}${wide}${gate.opens.trim() === '' ? '' : `, opens ${householdsNamed(notebook, gate.opens).trim()}`}`
}

function stationName(notebook: Notebook, index: number): string {
  const station = notebook.line.stations[index]
  if (station === undefined) return ''
  const { setback, angle } = station
  const off =
    setback === undefined || setback.distance === ''
      ? ''
      : `, middle of the fence ${typedLength(notebook, setback.distance)} off the line${setback.side === '' ? '' : ` on the land of ${householdName(notebook, setback.side)}`}`
  const turn =
    angle === undefined || angle.degrees === ''
      ? ''
      : `, the line turns by ${angle.degrees}°${angle.toward === '' ? '' : ` toward the land of ${householdName(notebook, angle.toward)}`}`
  return capitalised(`station ${typedLength(notebook, station.at)}${off}${turn}`)
}
