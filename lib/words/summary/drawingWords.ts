import type { Notebook } from '../../core/agreement/notebook.ts'
import type { Millimetres } from '../../core/amounts/length.ts'
import type { Household } from '../../core/people/household.ts'
import { householdName } from '../labels.ts'
import { lengthWords } from '../length.ts'
import { lookWords } from '../statusText.ts'
import { exaggeration } from './drawingExaggeration.ts'
import { builtDrawingWords } from './drawingPostWords.ts'
import { typedLength } from './typedLength.ts'
import { unbroken } from './unbroken.ts'

/** Every text on the drawing of the line: what `lineDrawing` asks for as `words`. */
export function drawingWords(notebook: Notebook) {
  return {
    length: (length: Millimetres) => unbroken(lengthWords(length, notebook.units)),
    typed: (length: string) => typedLength(notebook, length),
    landOf: (household: Household) => `Land of ${householdName(notebook, household)}`,
    groundOf: (household: Household) => `ground of ${householdName(notebook, household)}`,
    plan: 'From above',
    elevation: 'From the side',
    boundaryLine: 'boundary line',
    fence: 'middle of the fence',
    post: 'post at an end or a gate',
    setbacksDrawnWider: (times: number) => exaggeration('Distances off the line', 'wider', 'narrower', times),
    heightsDrawnHigher: (times: number) => exaggeration('Heights', 'higher', 'lower', times),
    gateKey: (index: number) => `Gate\u00A0${index + 1}`,
    sectionLine: (index: number) => sectionLine(notebook, index),
    gateLine: (index: number) => gateLine(notebook, index),
    leftOut: (count: number) =>
      `${count === 1 ? 'One label or swing' : `${count} labels or swings`} found no room here. The tables have them all.`,
    nothing: 'Nothing to draw yet',
    standing: lookWords,
    ...builtDrawingWords(notebook),
  }
}

/** The scale of a drawing on paper, at one point (1/72 in) a unit: "1 : 160, printed at full size". */
export function paperScaleWords(millimetresPerUnit: number): string {
  const ratio = millimetresPerUnit / (25.4 / 72)
  const rounded = Number(ratio.toPrecision(2))
  return `About 1 : ${rounded.toLocaleString('en-US')} along the line, when printed at full size.`
}

function sectionLine(notebook: Notebook, index: number): string {
  const section = notebook.sections[index]
  if (section === undefined) return ''
  const name = section.name.trim() === '' ? '' : ` ${section.name.trim()}`
  return `${index + 1}${name}: ${typedLength(notebook, section.from)} to ${typedLength(notebook, section.to)}`
}

function gateLine(notebook: Notebook, index: number): string {
  const gate = notebook.gates[index]
  if (gate === undefined) return ''
  const name = gate.name.trim() === '' ? '' : ` ${gate.name.trim()}`
  const wide = gate.opening === '' ? '' : `, ${typedLength(notebook, gate.opening)} wide`
  const land = {
    line: ', on the line',
    a: `, on the land of ${householdName(notebook, 'a')}`,
    b: `, on the land of ${householdName(notebook, 'b')}`,
    '': '',
  }[gate.stands]
  return `Gate\u00A0${index + 1}${name}${wide}${land}`
}
