import type { Notebook, Units } from '../../core/agreement/notebook.ts'
import type { Millimetres } from '../../core/amounts/length.ts'
import { never } from '../../core/assert.ts'
import { lateralUnits, windUnits } from '../../core/takeoff/buildUp.ts'
import type { FindingFacts } from '../../core/takeoff/finding.ts'
import type { HalfOfSite } from '../../core/takeoff/siteFigures.ts'
import { householdName } from '../labels.ts'
import { lengthWords } from '../length.ts'
import { askedDepthWords, many } from './figures.ts'
import { groundWords } from './heightText.ts'
import { catchesText } from './windText.ts'

/** The sentence for one finding: what clashes, with the numbers, and what would help. The path is shown beside it. */
export function findingText(notebook: Notebook, finding: FindingFacts): string {
  const units: Units = notebook.units
  const long = (length: Millimetres) => lengthWords(length, units)
  const section = (index: number) => named('section', index, notebook.sections[index]?.name)
  const gate = (index: number) => named('gate', index, notebook.gates[index]?.name)
  switch (finding.kind) {
    case 'sections-overlap':
      return `From ${long(finding.from)} to ${long(finding.to)} overlaps ${section(finding.other)}, from ${long(finding.otherFrom)} to ${long(finding.otherTo)}.`
    case 'gates-overlap':
      return `The opening from ${long(finding.from)} to ${long(finding.to)} overlaps that of ${gate(finding.other)}, from ${long(finding.otherFrom)} to ${long(finding.otherTo)}.`
    case 'section-backwards':
      return `It runs from ${long(finding.from)} to ${long(finding.to)}; the end has to lie further along the line than the beginning.`
    case 'section-past-the-end':
      return `It reaches to ${long(finding.to)}, past the last station at ${long(finding.end)}.`
    case 'gate-past-the-end':
      return `The opening reaches from ${long(finding.from)} to ${long(finding.to)}; the line runs from 0 to ${long(finding.end)}.`
    case 'gate-partly-outside':
      return `The opening from ${long(finding.from)} to ${long(finding.to)} lies only in part in ${section(finding.other)}, from ${long(finding.otherFrom)} to ${long(finding.otherTo)}. An opening belongs inside one section, or between two.`
    case 'angle-in-gate':
      return `The line turns at ${long(finding.at)}, between the posts of ${gate(finding.gate)}; a turn needs a post to stand on.`
    case 'angle-too-large':
      return `A turn of ${finding.degrees} degrees leads back along the line; it has to be less than 180.`
    case 'missing':
      return 'The take-off needs this dimension; it is not said yet.'
    case 'zero':
      return `"${finding.typed}" is zero; the take-off needs more than zero here, or nothing at all.`
    case 'half-said':
      return halfSaid(finding.lacks, finding.said)
    case 'posts-too-close':
      return `Only ${long(finding.apart)} are left between two posts that are ${long(finding.post)} wide; no fence is laid out there.`
    case 'brace-does-not-fit':
      return `A run of ${long(finding.run)} has no room for brace assemblies of ${long(finding.braces)}; it is laid out without them.`
    case 'measured-unknown':
      return `Post "${finding.post}" was measured, but the section has ${many(finding.posts, 'post')}.`
    case 'measured-twice':
      return `Post ${finding.post} was measured already, at ${long(finding.at)}; the first measure is used.`
    case 'measured-out-of-order':
      return `Post ${finding.post} was measured at ${long(finding.at)}, but its neighbours stand at ${long(finding.before)} and ${long(finding.after)}; the plan is used instead.`
    case 'opening-narrowed':
      return `As measured, the posts leave ${long(finding.left)} of a clear opening of ${long(finding.opening)}.`
    case 'bay-too-wide':
      return `The bay from ${long(finding.at)} is ${long(finding.bay)} wide; the largest spacing is ${long(finding.spacing)}.`
    case 'hole-narrower':
      return `A hole of ${long(finding.hole)} is narrower than its post, which is ${long(finding.post)} across.`
    case 'gravel-fills-hole':
      return `A gravel bed of ${long(finding.gravel)} is higher than the hole of ${long(finding.depth)} is deep.`
    case 'wall-too-thick':
      return `A wall of ${long(finding.wall)} does not fit into a tube of ${long(finding.outside)}.`
    case 'deduction-outside':
      return `With a saddle the deduction lies between half a rail, ${long(finding.least)}, and a whole rail, ${long(finding.most)}; ${long(finding.deduction)} stands here.`
    case 'post-too-short':
      return `Nothing would be left of the post at ${long(finding.at)}: check its height, its depth and the deduction.`
    case 'post-longer-than-stock':
      return `${many(finding.posts, 'post')}, the longest ${long(finding.piece)}, can't be cut from a stock length of ${long(finding.stock)}.`
    case 'rail-longer-than-stock':
      return `The rails of ${many(finding.bays, 'bay')}, the longest ${long(finding.rail)}, are longer than any length at hand, ${long(finding.stock)}, and joints may lie only over posts: set posts closer, take longer stock, or allow spliced pieces.`
    case 'panel-on-a-slope':
      return `Welded panels can't follow a slope: ${many(finding.bays, 'bay')} rise, the steepest ${long(finding.rise)} over ${long(finding.bay)}. Step the section, or take an infill that rakes.`
    case 'lap-longer-than-roll':
      return `A lap of ${long(finding.lap)} is as long as a roll of ${long(finding.roll)}.`
    case 'strip-wider-than-coil':
      return `Strip of ${long(finding.strip)} can't be slit from a coil ${long(finding.coil)} wide.`
    case 'layer-without-height':
      return `${long(finding.ground)} left open below leave nothing of a height of ${long(finding.agreed)}.`
    case 'leaf-nothing-left':
      return `Clearances of ${long(finding.clearances)} leave no leaf in an opening of ${long(finding.opening)}.`
    case 'header-below-leaf':
      return `Under the header ${long(finding.clear)} are clear; the top of the leaf is at ${long(finding.leaf)}.`
    case 'swings-uphill':
      return `It opens uphill: toward ${householdName(notebook, finding.household)} the ground lies ${long(finding.rise)} higher than under the fence, and the leaf clears ${long(finding.clearance)}. Let it open the other way, hang it higher, or use hinges that lift it.`
    case 'shallower-than-wind-asks':
      return `A hole ${long(finding.depth)} deep is shallower than the look at wind and soil asks for, ${askedDepthWords(finding.needed, finding.depth, units)}. Have the fence designed by a licensed engineer.`
    case 'shallower-than-frost':
      return `A hole ${long(finding.depth)} deep does not reach below the frost, ${long(finding.frost)}${said(finding.saidBy)}.`
    case 'catches-wind':
      return `${catchesText({ kind: finding.layer, times: finding.times })} Have the fence designed by a licensed engineer.`
    case 'over-limit':
      return `At ${long(finding.at)} the fence is ${long(finding.height)} high over ${groundWords(notebook, finding.from)}; the limit is ${long(finding.limit)}${said(finding.saidBy)}.`
    default:
      return never(finding)
  }
}

function named(kind: string, index: number, name: string | undefined): string {
  return name?.trim() ? `${kind} ${index + 1} (${name.trim()})` : `${kind} ${index + 1}`
}

function halfSaid(lacks: HalfOfSite, typed: string): string {
  switch (lacks) {
    case 'wind speed':
      return `Exposure ${typed} is said, but no wind speed; the look at wind needs both.`
    case 'wind unit':
      return `A wind speed of ${typed} is said without its unit: ${windUnits.join(', ')}.`
    case 'exposure':
      return `A wind of ${typed} is said, but not what stands around the fence; the look at wind needs both.`
    case 'soil unit':
      return `What the soil bears is said as ${typed} without its unit: ${lateralUnits.join(', ')}.`
    default:
      return never(lacks)
  }
}

function said(by: string): string {
  return by.trim() === '' ? '' : `, as said by ${by.trim()}`
}
